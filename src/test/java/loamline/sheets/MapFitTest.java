package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import loamline.Laws;
import loamline.geometry.Box;
import loamline.scene.PaperRect;
import loamline.scene.SceneOptions;
import loamline.scene.View;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MapFitTest {
    private static final Furniture BELOW =
            new Furniture(List.of(), SceneOptions.usual(View.of(new Box(0, 0, 1, 1), 100), new Fonts()), false);

    private static MapFit fit(Box ground) {
        return MapFit.largest(
                ground,
                Stream.of(Paper.LETTER.upright(), Paper.LETTER.onItsSide())
                        .map(paper -> new MapFit.Place(paper, Page.body(paper), BELOW)));
    }

    @ParameterizedTest
    @CsvSource({
        "3,100",
        "100,100",
        "100.1,150",
        "151,200",
        "240,250",
        "251,300",
        "301,400",
        "499,500",
        "501,600",
        "700,750",
        "751,1000",
        "1001,1500",
        "2400,2500",
        "7600,10000"
    })
    void scalesAreRound(double least, int denominator) {
        assertThat(MapFit.roundUp(least)).isEqualTo(denominator);
    }

    @Property(seed = Laws.SEED, tries = 200)
    void theGroundLiesInTheWindowAndTheNextLargerScaleWouldNotHoldIt(
            @ForAll @DoubleRange(min = 10, max = 3000) double widthM,
            @ForAll @DoubleRange(min = 10, max = 3000) double heightM) {
        Box ground = new Box(5, -7, 5 + widthM, -7 + heightM);
        MapFit fit = fit(ground);
        PaperRect window = BELOW.window(Page.body(fit.place().paper()));
        assertThat(fit.view().ground().contains(new loamline.geometry.Point(ground.minX(), ground.minY())))
                .isTrue();
        assertThat(fit.view().ground().contains(new loamline.geometry.Point(ground.maxX(), ground.maxY())))
                .isTrue();
        assertThat(fit.view().paper().widthMm()).isCloseTo(window.widthMm(), org.assertj.core.data.Offset.offset(1e-9));
        if (fit.denominator() > 100) {
            double shown = Math.max(widthM / window.widthMm(), heightM / window.heightMm()) * 1000;
            assertThat(shown).isGreaterThan(0.6 * fit.denominator());
        }
    }

    @Test
    void aWideYardLiesOnItsSideAndATallOneStandsUpright() {
        assertThat(fit(new Box(0, 0, 60, 20)).place().paper()).isEqualTo(Paper.LETTER.onItsSide());
        assertThat(fit(new Box(0, 0, 20, 60)).place().paper()).isEqualTo(Paper.LETTER.upright());
        assertThat(fit(new Box(0, 0, 1, 1)).place().paper()).isEqualTo(Paper.LETTER.upright());
    }
}
