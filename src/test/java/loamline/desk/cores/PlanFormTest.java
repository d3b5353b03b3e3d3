package loamline.desk.cores;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.OptionalInt;
import loamline.units.UnitSystem;
import loamline.yard.PlanOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PlanFormTest {
    private static final PlanForm FORM = PlanForm.of(PlanOptions.USUAL, UnitSystem.US);

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsNotTouchedStaysToTheLastDigit(UnitSystem units) {
        assertThat(PlanForm.of(PlanOptions.USUAL, units)
                        .checked(PlanOptions.USUAL)
                        .options())
                .contains(PlanOptions.USUAL);
    }

    @Test
    void theUsualOptionsAreWrittenInFeetAndInches() {
        assertThat(FORM.text(PlanField.EDGE)).isEqualTo("3 ft");
        assertThat(FORM.text(PlanField.HEADS)).isEqualTo("2 ft");
        assertThat(FORM.text(PlanField.DEPTH)).isEqualTo("4 in");
        assertThat(FORM.text(PlanField.DIAMETER)).isEqualTo("0.75 in");
        assertThat(FORM.text(PlanField.BAGS)).isEmpty();
    }

    @Test
    void whatIsWrittenBecomesOptions() {
        PlanOptions asked = FORM.with(PlanField.BAGS, "3")
                .with(PlanField.CORES, " 14 ")
                .with(PlanField.EDGE, "5 ft")
                .with(PlanField.DEPTH, "6")
                .with(PlanOptions.Place.RANDOM)
                .with(PlanOptions.Rounds.ALL)
                .checked(PlanOptions.USUAL)
                .options()
                .orElseThrow();
        assertThat(asked.kits()).isEqualTo(OptionalInt.of(3));
        assertThat(asked.coresPerComposite()).isEqualTo(14);
        assertThat(asked.edgeBufferM()).isEqualTo(5 * 0.3048);
        assertThat(asked.probe().depthM()).isEqualTo(6 * 0.0254);
        assertThat(asked.place()).isEqualTo(PlanOptions.Place.RANDOM);
        assertThat(asked.walk()).isEqualTo(PlanOptions.Rounds.ALL);
    }

    @ParameterizedTest
    @CsvSource({
        "BAGS, 0, A number of bags is a whole number",
        "CORES, 201, Cores a bag is a whole number from 1 to 200.",
        "CORES, twelve, Cores a bag is a whole number from 1 to 200.",
        "EDGE, -1 ft, A distance from edges is 0 or more.",
        "EDGE, 3 gal, Write a length such as",
        "SPARES, 3, 'Spares a core are 0, 1 or 2.'",
        "SEED, 1.5, A seed is a whole number.",
        "DEPTH, 0, A depth is above 0."
    })
    void whatCannotBeIsRefusedBesideItsFieldAndKept(PlanField field, String text, String complaint) {
        PlanForm form = FORM.with(field, text);
        PlanForm.Checked checked = form.checked(PlanOptions.USUAL);
        assertThat(checked.options()).isEmpty();
        assertThat(checked.complaints()).containsOnlyKeys(field);
        assertThat(checked.complaints().get(field)).contains(complaint);
        assertThat(form.text(field)).isEqualTo(text);
    }

    @Test
    void everyFieldThatIsWrongIsNamed() {
        assertThat(FORM.with(PlanField.CORES, "0")
                        .with(PlanField.EDGE, "")
                        .checked(PlanOptions.USUAL)
                        .complaints())
                .containsOnlyKeys(PlanField.CORES, PlanField.EDGE);
    }

    @Test
    void unitsChangeWhatIsUnderstoodAndLeaveTheRest() {
        PlanForm metric =
                FORM.with(PlanField.TRUNKS, "what").with(PlanField.EDGE, "5 ft").in(UnitSystem.METRIC);
        assertThat(metric.text(PlanField.EDGE)).isEqualTo("1.524 m");
        assertThat(metric.text(PlanField.TRUNKS)).isEqualTo("what");
        assertThat(metric.text(PlanField.CORES)).isEqualTo("12");
        assertThat(metric.checked(PlanOptions.USUAL).complaints())
                .isEqualTo(Map.of(
                        PlanField.TRUNKS,
                        metric.checked(PlanOptions.USUAL).complaints().get(PlanField.TRUNKS)));
    }
}
