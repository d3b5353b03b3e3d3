package loamline.desk.map;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;

/**
 * Where on the ground the map looks and from how far, whatever the size of the window.
 *
 * @param middle place in the middle of the window
 * @param metresPerPx metres to a logical pixel, above 0
 */
public record Sight(Point middle, double metresPerPx) {
    private static final int NUMBERS = 3;

    /** As it can be kept in a file: east, north, metres to a pixel. */
    public List<Double> numbers() {
        return List.of(middle.x(), middle.y(), metresPerPx);
    }

    /** What {@link #numbers} gave; empty if it is anything else. */
    public static Optional<Sight> of(Object numbers) {
        if (!(numbers instanceof List<?> list) || list.size() != NUMBERS) {
            return Optional.empty();
        }
        double[] all = list.stream()
                .mapToDouble(each -> each instanceof Number number ? number.doubleValue() : Double.NaN)
                .toArray();
        boolean sound = Double.isFinite(all[0] + all[1] + all[2]) && all[2] > 0;
        return sound ? Optional.of(new Sight(new Point(all[0], all[1]), all[2])) : Optional.empty();
    }
}
