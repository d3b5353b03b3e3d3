package loamline.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The water of one valve, ideal and without wind. Its turf is the turf inside the convex hull of the ground its heads
 * reach.
 *
 * @param name the valve's name; empty for heads that name none
 * @param heads ids of its heads, in the yard's order
 * @param flowLpm of all its heads together
 * @param throwAreaM2 ground its heads reach, on the turf or off it, each square metre once
 * @param turfAreaM2 its turf
 * @param grossMmH flow / turf area: what its turf would get if no water fell elsewhere; empty without turf
 * @param cells cells of the raster on its turf
 * @param uniformity how even the cells of its turf are; empty if there are none or all are dry
 * @param sc5 how many times as long as the mean one must water for the driest window of 5 % of its turf to get the
 *     mean; empty if that window is dry, or no such square window lies on its turf
 */
public record ValveWater(
        String name,
        List<String> heads,
        double flowLpm,
        double throwAreaM2,
        double turfAreaM2,
        OptionalDouble grossMmH,
        int cells,
        Optional<Uniformity> uniformity,
        OptionalDouble sc5) {
    public ValveWater {
        heads = List.copyOf(heads);
    }

    /** Mean rate on its turf, mm/h; empty if it has no turf. */
    public OptionalDouble meanMmH() {
        return onTurf(uniformity.map(Uniformity::mean));
    }

    /** Rate on the driest cell of its turf, mm/h; empty if it has no turf. */
    public OptionalDouble minMmH() {
        return onTurf(uniformity.map(Uniformity::min));
    }

    private OptionalDouble onTurf(Optional<Double> value) {
        return cells == 0 ? OptionalDouble.empty() : OptionalDouble.of(value.orElse(0.0));
    }
}
