package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.Laws;
import loamline.scene.TextMeasure;
import loamline.scene.Type;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class TypesetterTest {
    /** A letter is as wide as its type is high, in tenths of a millimetre a point. */
    private static final TextMeasure TEXT = new TextMeasure() {
        @Override
        public double widthMm(String words, Type type) {
            return 0.1 * type.sizePt() * words.codePointCount(0, words.length());
        }

        @Override
        public double capHeightMm(Type type) {
            return 1;
        }

        @Override
        public double depthMm(Type type) {
            return 1;
        }
    };

    private static final Type TEN = Type.regular(10);

    @Test
    void aNumberStaysWithItsUnit() {
        assertThat(Typesetter.onLines("drier by 28 %; by 3 ft² of 12 cores", TEN, 11, TEXT))
                .containsExactly("drier by", "28 %; by", "3 ft² of 12", "cores");
    }

    @Test
    void linesAreBrokenAtBlanks() {
        assertThat(Typesetter.onLines("one two  three four", TEN, 9, TEXT)).containsExactly("one two", "three", "four");
    }

    @Test
    void aWordTooLongForALineIsBrokenAnywhere() {
        assertThat(Typesetter.onLines("a verylongword b", TEN, 5, TEXT)).containsExactly("a", "veryl", "ongwo", "rd b");
    }

    @Test
    void noWordsAreOneEmptyLine() {
        assertThat(Typesetter.onLines("  ", TEN, 5, TEXT)).containsExactly("");
    }

    @Property(seed = Laws.SEED, tries = 300)
    void everyLineFitsAndNoLetterIsLost(
            @ForAll @StringLength(max = 80) String words, @ForAll @IntRange(min = 1, max = 30) int letters) {
        List<String> lines = Typesetter.onLines(words, TEN, letters, TEXT);
        assertThat(lines).allMatch(line -> TEXT.widthMm(line, TEN) <= letters + 1e-9);
        assertThat(String.join("", lines).replaceAll("\\s", ""))
                .isEqualTo(words.strip().replaceAll("\\s", ""));
    }

    @Test
    void aLongNameIsFirstSetSmallerAndThenCutOff() {
        assertThat(Typesetter.onOneLine("ten letter", TEN, 7, 10, TEXT).type().sizePt())
                .isEqualTo(10);
        assertThat(Typesetter.onOneLine("ten letter", TEN, 7, 8, TEXT).type().sizePt())
                .isEqualTo(8);
        Typesetter.Fitted cut = Typesetter.onOneLine("ten letter", TEN, 7, 5, TEXT);
        assertThat(cut.type().sizePt()).isEqualTo(7);
        assertThat(cut.words()).isEqualTo("ten le…");
    }
}
