package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import loamline.geometry.Point;
import loamline.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypingTest {
    private static final Point FROM = new Point(100, 50);

    /** East of it by 3 m, north by 4 m. */
    private static final Point POINTER = new Point(103, 54);

    private static Typing typed(String text) {
        Typing typing = Typing.NONE;
        for (char c : text.toCharArray()) {
            assertThat(typing.takes(c)).as("%s after %s", c, typing).isTrue();
            typing = typing.with(c);
        }
        return typing;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // text | units | metres east | metres north of the start
                "10 | METRIC | 6 | 8",
                "10 | US | 1.8288 | 2.4384",
                "4.2 m | US | 2.52 | 3.36",
                "12ft | METRIC | 2.19456 | 2.92608",
                "12' 6\" | METRIC | 2.286 | 3.048",
                "12'-6\" | METRIC | 2.286 | 3.048",
                ".5 | METRIC | 0.3 | 0.4",
                "½ | METRIC | 0.3 | 0.4",
                "2 < 90 | METRIC | 2 | 0",
                "2<0 | METRIC | 0 | 2",
                "2@180 | METRIC | 0 | -2",
                "2 < -90 | METRIC | -2 | 0",
                "2 < 450° | METRIC | 2 | 0",
                "2 < | METRIC | 1.2 | 1.6",
                // the pointer tells how far along
                "<0 | METRIC | 0 | 4",
                "@ 90 | METRIC | 3 | 0",
                "<45 | METRIC | 3.5 | 3.5",
            })
    void sizesAndDirectionsGiveTheEndOfASide(String text, UnitSystem units, double east, double north) {
        Target target = typed(text).target(FROM, POINTER, units);

        assertThat(target.refusal()).isEmpty();
        assertThat(target.at().distanceTo(FROM.plus(east, north))).isLessThan(1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 furlongs | “furlongs” at character 4 is not a unit",
                "1..2 | is not a number",
                "0 | above 0",
                "99999999 km | not a unit",
                "99999999 | below 10 km",
                "3 < east | A number is missing",
                // behind the start
                "<225 | above 0",
            })
    void whatCannotBeASideIsRefusedInWords(String text, String words) {
        Target target = typed(text).target(FROM, POINTER, UnitSystem.METRIC);

        assertThat(target.refusal().orElseThrow()).contains(words);
        assertThat(target.at()).isEqualTo(POINTER);
    }

    @Test
    void aLengthAloneNeedsAPointerThatPoints() {
        assertThat(typed("3").target(FROM, FROM, UnitSystem.METRIC).refusal().orElseThrow())
                .contains("Point the way");
        assertThat(typed("3<90").target(FROM, FROM, UnitSystem.METRIC).refusal())
                .isEmpty();
    }

    @Test
    void nothingTypedLeavesThePointerAlone() {
        assertThat(Typing.NONE.target(FROM, POINTER, UnitSystem.US)).isEqualTo(Target.at(POINTER));
    }

    @ParameterizedTest
    @ValueSource(chars = {'f', ' ', '+', '-', '\'', '\t', '\r', '\b', '\u001b'})
    void aNumberBeginsWithADigit(char c) {
        assertThat(Typing.NONE.takes(c)).isFalse();
    }

    @Test
    void tabGoesToTheAngleAndBack() {
        Typing typing =
                typed("12").switched().with('4').with('5').switched().with('.').with('5');

        assertThat(typing).isEqualTo(new Typing("12.5", "45", false));
        assertThat(typing.shown()).isEqualTo("12.5▏ < 45");
        assertThat(typing.switched().shown()).isEqualTo("12.5 < 45▏");
    }

    @Test
    void backspaceEatsTheTextFromItsEnd() {
        Typing typing = typed("7<4");
        assertThat(typing.shortened()).isEqualTo(new Typing("7", "", true));
        assertThat(typing.shortened().shortened()).isEqualTo(new Typing("7", "", false));
        assertThat(typing.shortened().shortened().shortened()).isEqualTo(Typing.NONE);
        assertThat(Typing.NONE.switched().shortened()).isEqualTo(Typing.NONE);
    }

    @Test
    void noTextGrowsBeyondWhatCanBeRead() {
        Typing typing = typed("1".repeat(100));
        assertThat(typing.takes('1')).isFalse();
        assertThat(typing.target(FROM, POINTER, UnitSystem.US).refusal()).isPresent();
    }
}
