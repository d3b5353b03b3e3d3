package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Box;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/**
 * Amounts on the map as colours, from 0 to a round number; what is more has the colour of that number.
 *
 * @param values 0 or more, NaN where nothing is drawn
 * @param ramp its first colour is 0, its last {@code steps} times {@code step}
 * @param measure what is shown
 * @param step between two entries of the legend, in the measure's stored unit, above 0
 * @param steps how many, 1 or more
 */
public record Shading(Grid values, Ramp ramp, Measure measure, double step, int steps) {
    private static final double[] ROUND = {1, 2, 5, 10};
    private static final int MOST_STEPS = 6;

    /** The few cells above this share, right at a head, would take the colours from all others. */
    private static final double SHOWN_SHARE = 0.98;

    /** Over an image, so much of it is hidden. */
    private static final double OVER_IMAGE = 0.8;

    private static final int OPAQUE = 255;

    /** Colours up to what nearly all cells keep to, in at most six round steps of the unit shown. */
    public static Shading of(Grid values, Ramp ramp, Measure measure, UnitSystem units) {
        double most = measure.toShown(values.quantile(SHOWN_SHARE).orElse(0), units);
        if (!(most > 0)) {
            return new Shading(values, ramp, measure, measure.toStored(1, units), 1);
        }
        double power = Math.pow(10, Math.floor(Math.log10(most / MOST_STEPS)));
        double step = power;
        for (double round : ROUND) {
            if (most / (round * power) <= MOST_STEPS) {
                step = round * power;
                break;
            }
        }
        return new Shading(
                values, ramp, measure, measure.toStored(step, units), (int) Math.max(1, Math.ceil(most / step)));
    }

    /** The colour of a value. */
    Ink ink(double value) {
        return ramp.at(value / (step * steps));
    }

    /** The cells in colour. */
    Mark mark(SceneOptions options) {
        GridSpec grid = values.spec();
        int alpha = (int) Math.rint(OPAQUE * (options.wash() < 1 ? OVER_IMAGE : 1)) << 24;
        int[] argb = new int[grid.size()];
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                double value = values.at((grid.rows() - 1 - row) * grid.columns() + column);
                argb[row * grid.columns() + column] =
                        Double.isNaN(value) ? 0 : alpha | shown(value, options).rgb();
            }
        }
        Box ground = new Box(
                grid.originX(),
                grid.originY(),
                grid.originX() + grid.columns() * grid.cellM(),
                grid.originY() + grid.rows() * grid.cellM());
        return new Mark.Shade(ground, new Pixels(grid.columns(), grid.rows(), argb));
    }

    private Ink shown(double value, SceneOptions options) {
        return options.palette().isGrey() ? ink(value).grey() : ink(value);
    }

    /** What the colours mean: one entry a step, the least first. */
    public List<Legend.Entry> legend(SceneOptions options) {
        List<Legend.Entry> entries = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            String words =
                    Formatting.editable(measure, i * step, options.units()).text();
            boolean more = i == steps && values.quantile(1).orElse(0) > i * step;
            entries.add(Legend.swatch(more ? "≥ " + words : words, shown(i * step, options)));
        }
        return entries;
    }
}
