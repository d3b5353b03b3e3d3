package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import loamline.Laws;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScaleBarTest {
    private static final Box GROUND = new Box(0, 0, 10, 10);

    @Property(seed = Laws.SEED)
    void theBarIsRoundAndFitsAndIsNotTiny(
            @ForAll @DoubleRange(min = 0.01, max = 100) double metresPerMm, @ForAll UnitSystem units) {
        ScaleBar bar = ScaleBar.of(new View(GROUND, metresPerMm), units, 40);
        assertThat(bar.lengthMm()).isBetween(16 - 1e-9, 40 + 1e-9);
        double shown = Measure.LENGTH.toShown(bar.lengthM(), units);
        double mantissa = shown / Math.pow(10, Math.floor(Math.log10(shown) + 1e-9));
        assertThat(Set.of(1L, 2L, 5L)).contains(Math.round(mantissa));
        assertThat(mantissa).isCloseTo(Math.rint(mantissa), org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void atOneToTwoHundredFortyMillimetresHoldTwentyFeet() {
        ScaleBar bar = ScaleBar.of(View.of(GROUND, 200), UnitSystem.US, 40);
        assertThat(bar.lengthM()).isEqualTo(20 * 0.3048);
        assertThat(bar.lengthMm()).isEqualTo(20 * 0.3048 * 5);
    }

    @Test
    void theNumbersOfTheBarAreItsLengths() {
        SceneOptions options =
                SceneOptions.usual(View.of(GROUND, 250), new EvenText()).with(UnitSystem.METRIC);
        ScaleBar bar = ScaleBar.of(options.view(), UnitSystem.METRIC, 42);
        assertThat(bar.marks(new Point(0, 0), options).stream()
                        .filter(mark -> mark instanceof Mark.Words)
                        .map(mark -> ((Mark.Words) mark).run().words()))
                .containsExactly("0", "5", "10 m");
    }
}
