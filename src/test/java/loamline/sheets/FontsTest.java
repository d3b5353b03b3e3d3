package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import loamline.geometry.Point;
import loamline.scene.Type;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FontsTest {
    private final Fonts fonts = new Fonts();

    @ParameterizedTest
    @EnumSource
    void wordsAreAsWideAsThePdfSetsThem(Type.Face face) throws IOException {
        String words = "Alder Lane 12 · 7,410 ft² ± 90, office";
        try (PDDocument document = new PDDocument()) {
            double em = new PdfResources(document, fonts).font(face).getStringWidth(words) / 1000;
            Type type = new Type(face, 10);
            assertThat(fonts.widthMm(words, type)).isCloseTo(em * type.sizeMm(), offset(0.01));
        }
    }

    @Test
    void whatTheFamilyLacksBecomesABox() {
        assertThat(fonts.printable("Oak 🌳 中文", Type.Face.REGULAR)).isEqualTo("Oak □ □□");
    }

    @Test
    void whatCannotBeSeenIsDropped() {
        assertThat(fonts.printable("a\u200Db\uFE0Fc\u0007\td\u00A0e\n", Type.Face.BOLD))
                .isEqualTo("abc d e ");
    }

    @Test
    void figuresAreAllOfOneWidth() {
        Type type = Type.regular(9);
        for (char figure = '0'; figure <= '9'; figure++) {
            assertThat(fonts.widthMm(String.valueOf(figure), type)).isEqualTo(fonts.widthMm("0", type));
        }
    }

    @Test
    void lettersStandOnTheirBaselineAndReachCapHeight() {
        Type type = Type.bold(10);
        var points = fonts.letters("H", type, new Point(5, 20)).points().toList();
        double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
        double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
        assertThat(bottom).isCloseTo(20, offset(0.001));
        assertThat(20 - top).isCloseTo(fonts.capHeightMm(type), offset(0.01));
    }
}
