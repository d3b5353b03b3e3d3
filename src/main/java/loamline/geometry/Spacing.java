package loamline.geometry;

import java.util.List;
import java.util.stream.IntStream;

/** How far apart points lie. */
public final class Spacing {
    private Spacing() {}

    /** Median over the points of the distance to the nearest other (of two in the middle, the larger), m; 0 for fewer than two. */
    public static double usualGapM(List<Point> at) {
        double[] gaps = IntStream.range(0, at.size())
                .mapToDouble(i -> IntStream.range(0, at.size())
                        .filter(j -> j != i)
                        .mapToDouble(j -> at.get(i).distanceTo(at.get(j)))
                        .min()
                        .orElse(0))
                .sorted()
                .toArray();
        return gaps.length == 0 ? 0 : gaps[gaps.length / 2];
    }
}
