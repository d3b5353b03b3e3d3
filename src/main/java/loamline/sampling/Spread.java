package loamline.sampling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.sampling.strata.CoreDistance;

/** How well cores cover ground. */
final class Spread {
    /** Cell of the measure, m. */
    static final double CELL_M = 0.1;

    private Spread() {}

    /**
     * Mean squared distance from the ground to the nearest core, m², over cells of {@link #CELL_M} (larger only
     * where the grid would not fit in memory). Empty without ground or cores.
     */
    static OptionalDouble mssdM2(List<Region> grounds, List<Point> cores) {
        List<double[]> xs = new ArrayList<>();
        List<double[]> ys = new ArrayList<>();
        for (Region ground : grounds) {
            ground.box().ifPresent(box -> {
                Mask mask = Mask.of(grid(box), ground);
                GridSpec grid = mask.grid();
                int[] cells = mask.indexes();
                xs.add(Arrays.stream(cells)
                        .mapToDouble(c -> grid.xOf(c % grid.columns()))
                        .toArray());
                ys.add(Arrays.stream(cells)
                        .mapToDouble(c -> grid.yOf(c / grid.columns()))
                        .toArray());
            });
        }
        double[] x = joined(xs);
        if (x.length == 0 || cores.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(CoreDistance.nearestMssdM2(
                x,
                joined(ys),
                cores.stream().mapToDouble(Point::x).toArray(),
                cores.stream().mapToDouble(Point::y).toArray()));
    }

    private static GridSpec grid(Box box) {
        double fits = Math.sqrt((box.widthM() + 1) * (box.heightM() + 1) / GridSpec.MAX_CELLS);
        return GridSpec.covering(box, Math.max(CELL_M, fits * 1.01));
    }

    private static double[] joined(List<double[]> parts) {
        return parts.stream().flatMapToDouble(Arrays::stream).toArray();
    }
}
