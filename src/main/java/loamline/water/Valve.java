package loamline.water;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loamline.geometry.Region;
import loamline.raster.Mask;

/**
 * The heads of one valve at work.
 *
 * @param heads in the yard's order, at least one
 * @param field their rates; empty for a yard without turf
 * @param figures what they come to
 */
record Valve(List<SprinklerHead> heads, Optional<RateField> field, ValveWater figures) {
    private static final double MINUTES_PER_HOUR = 60;

    /** The share of its turf that the driest window covers (CATI Irrigation Notes 880802; from memory for turf). */
    static final double WINDOW_SHARE = 0.05;

    /** A window with less than this share of the mean is dry but for rounding. */
    private static final double DRY_SHARE = 1e-9;

    static Valve of(List<SprinklerHead> heads, Lawn lawn) {
        return of(heads, lawn, lawn.mask().map(mask -> RateField.of(mask.grid(), heads)));
    }

    /** The same valve with other heads; if one alone has changed, only what that one wets is computed anew. */
    Valve with(List<SprinklerHead> changed, Lawn lawn) {
        int[] moved = heads.size() != changed.size()
                ? new int[0]
                : IntStream.range(0, heads.size())
                        .filter(i -> !heads.get(i).equals(changed.get(i)))
                        .toArray();
        if (moved.length == 0 && heads.size() == changed.size()) {
            return this;
        }
        return moved.length == 1
                ? of(changed, lawn, field.map(f -> f.with(moved[0], changed.get(moved[0]))))
                : of(changed, lawn);
    }

    private static Valve of(List<SprinklerHead> heads, Lawn lawn, Optional<RateField> field) {
        Region reach = Region.union(heads.stream().map(SprinklerHead::reach).toList());
        Region hull = reach.hull();
        double turfM2 = hull.intersection(lawn.turf()).areaM2();
        double flowLpm = heads.stream().mapToDouble(h -> h.pattern().flowLpm()).sum();
        double[] values = field.map(f -> onTurf(f, hull, lawn)).orElse(new double[0]);
        double[] cells = Arrays.stream(values).filter(v -> !Double.isNaN(v)).toArray();
        OptionalDouble driest = field.map(RateField::window)
                .map(w -> DriestWindow.least(
                        values, w.columns(), w.rows(), DriestWindow.side(cells.length, WINDOW_SHARE)))
                .orElse(OptionalDouble.empty());
        Optional<Uniformity> uniformity = Uniformity.ofOwned(cells);
        ValveWater figures = new ValveWater(
                heads.get(0).head().valve(),
                heads.stream().map(h -> h.head().id()).toList(),
                flowLpm,
                reach.areaM2(),
                turfM2,
                turfM2 > 0 ? OptionalDouble.of(MINUTES_PER_HOUR * flowLpm / turfM2) : OptionalDouble.empty(),
                cells.length,
                uniformity,
                coefficient(uniformity, driest));
        return new Valve(heads, field, figures);
    }

    private static OptionalDouble coefficient(Optional<Uniformity> uniformity, OptionalDouble driest) {
        double mean = uniformity.map(Uniformity::mean).orElse(0.0);
        return driest.isPresent() && driest.getAsDouble() > DRY_SHARE * mean
                ? OptionalDouble.of(mean / driest.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The rates of the field's cells; NaN for those that are not turf inside the hull. */
    private static double[] onTurf(RateField field, Region hull, Lawn lawn) {
        Window window = field.window();
        double[] values = new double[window.size()];
        Arrays.fill(values, Double.NaN);
        if (window.isEmpty()) {
            return values;
        }
        Mask turf = lawn.mask().orElseThrow();
        Mask inside = Mask.of(window.cells(field.grid()), hull);
        double[] line = new double[window.columns()];
        for (int row = window.row(); row < window.endRow(); row++) {
            field.read(row, line);
            int from = window.index(window.column(), row);
            int whole = row * field.grid().columns() + window.column();
            for (int i = 0; i < line.length; i++) {
                if (inside.has(from + i) && turf.has(whole + i)) {
                    values[from + i] = line[i];
                }
            }
        }
        return values;
    }

    /** Hours until its turf has a depth in the mean; 0 if none of its water falls on turf. */
    double hours(double depthMm) {
        double litresPerHour = MINUTES_PER_HOUR
                * heads.stream()
                        .mapToDouble(h -> h.pattern().flowLpm() * h.onTurf())
                        .sum();
        return litresPerHour > 0 ? depthMm * figures.turfAreaM2() / litresPerHour : 0;
    }
}
