package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import loamline.geometry.Box;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.sheets.Fonts;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import org.junit.jupiter.api.Test;

class ShadingTest {
    private static final View VIEW = View.of(new Box(0, 0, 20, 20), 200);
    private static final SceneOptions OPTIONS = SceneOptions.usual(VIEW, new Fonts());

    private static Grid grid(double... values) {
        return Grid.of(new GridSpec(1, 2, 0.5, 2, values.length / 2), all -> Arrays.setAll(all, i -> values[i]));
    }

    private static Shading shading(UnitSystem units, double... values) {
        return Shading.of(grid(values), Ramp.CIVIDIS, Measure.DEPTH_RATE, units);
    }

    @Test
    void theRampGetsLighterStepByStepSoThatGreyTellsTheSame() {
        double before = -1;
        for (int i = 0; i <= 50; i++) {
            Ink grey = Ramp.CIVIDIS.at(i / 50.0).grey();
            assertThat(grey.red()).isGreaterThan((int) before);
            before = grey.red();
        }
        assertThat(Ramp.CIVIDIS.at(-1)).isEqualTo(Ramp.CIVIDIS.at(0));
        assertThat(Ramp.CIVIDIS.at(7)).isEqualTo(Ramp.CIVIDIS.at(1));
        assertThatThrownBy(() -> new Ramp(List.of(0))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stepsAreRoundInTheUnitShown() {
        assertThat(shading(UnitSystem.METRIC, 0, 11.2).step()).isCloseTo(2, within(1e-9));
        assertThat(shading(UnitSystem.METRIC, 0, 11.2).steps()).isEqualTo(6);
        assertThat(shading(UnitSystem.METRIC, 0, 12.1).step()).isCloseTo(5, within(1e-9));
        assertThat(shading(UnitSystem.US, 0, 11.2).step()).isCloseTo(2.54, within(1e-9));
        assertThat(shading(UnitSystem.METRIC, 0, Double.NaN).steps()).isEqualTo(1);
        assertThat(shading(UnitSystem.METRIC, Double.NaN, Double.NaN).steps()).isEqualTo(1);
    }

    @Test
    void theLegendNamesEveryStepWithItsUnit() {
        assertThat(shading(UnitSystem.METRIC, 0, 14).legend(OPTIONS.with(UnitSystem.METRIC)))
                .extracting(Legend.Entry::words)
                .containsExactly("0 mm/h", "5 mm/h", "10 mm/h", "15 mm/h");
        double[] peak = new double[200];
        Arrays.fill(peak, 4);
        peak[7] = 90;
        assertThat(shading(UnitSystem.METRIC, peak).legend(OPTIONS.with(UnitSystem.METRIC)))
                .extracting(Legend.Entry::words)
                .endsWith("3 mm/h", "≥ 4 mm/h");
    }

    @Test
    void cellsAreDrawnFromTheNorthAndNothingWhereThereIsNoValue() {
        Shading shading = shading(UnitSystem.METRIC, 0, Double.NaN, 5, 5);
        Mark.Shade mark = (Mark.Shade) shading.mark(OPTIONS);
        assertThat(mark.ground()).isEqualTo(new Box(1, 2, 2, 3));
        int top = 0xFF000000 | Ramp.CIVIDIS.at(1).rgb();
        assertThat(mark.pixels().argb())
                .containsExactly(top, top, 0xFF000000 | Ramp.CIVIDIS.at(0).rgb(), 0);
        Mark.Shade over = (Mark.Shade) shading.mark(OPTIONS.withWash(0.5));
        assertThat(over.pixels().argb()[0] >>> 24).isEqualTo(204);
        int grey = ((Mark.Shade) shading.mark(OPTIONS.with(Palette.PRINT.grey())))
                .pixels()
                .argb()[0];
        assertThat(grey & 0xFF).isEqualTo(grey >> 8 & 0xFF);
    }

    @Test
    void pixelsMustFitTheirCells() {
        assertThatThrownBy(() -> new Pixels(2, 2, new int[3])).isInstanceOf(IllegalArgumentException.class);
    }
}
