package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.stream.IntStream;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Walks on a grid, from each node to its eight neighbours where the step touches no wall: never the shortest. */
final class GridWalk {
    private static final double CELL_M = 0.4;
    private static final double OFFSET_M = 0.123; // off the lattice of the scenes
    private static final int COLUMNS = 99;
    private static final int ROWS = 74;

    private GridWalk() {}

    static List<Point> stops(int count, long seed) {
        Random random = new Random(seed);
        return IntStream.range(0, count)
                .mapToObj(i -> node(random.nextInt(COLUMNS * ROWS)))
                .toList();
    }

    private static Point node(int number) {
        int row = number / COLUMNS;
        return new Point(OFFSET_M + CELL_M * (number % COLUMNS), OFFSET_M + CELL_M * row);
    }

    private static int number(Point p) {
        return (int) Math.round((p.x() - OFFSET_M) / CELL_M) + COLUMNS * (int) Math.round((p.y() - OFFSET_M) / CELL_M);
    }

    /** Lengths of walks from one stop to all, m; infinite where the grid has none. */
    static double[] distancesM(Yards.Scene scene, List<Point> stops, int from) {
        List<Edge> walls = new ArrayList<>();
        scene.fences().forEach(fence -> walls.addAll(Edges.along(fence)));
        scene.solids().forEach(solid -> walls.addAll(Edges.around(solid, false)));
        boolean[] closed = new boolean[COLUMNS * ROWS];
        for (int n = 0; n < closed.length; n++) {
            Point p = node(n);
            closed[n] = scene.solids().stream().anyMatch((Region solid) -> solid.covers(p));
        }
        double[] lengthM = new double[closed.length];
        Arrays.fill(lengthM, Double.POSITIVE_INFINITY);
        PriorityQueue<Integer> queue = new PriorityQueue<>(Comparator.comparingDouble(n -> lengthM[n]));
        if (!closed[number(stops.get(from))]) {
            lengthM[number(stops.get(from))] = 0;
            queue.add(number(stops.get(from)));
        }
        boolean[] done = new boolean[closed.length];
        while (!queue.isEmpty()) {
            int here = queue.remove();
            if (done[here]) {
                continue;
            }
            done[here] = true;
            for (int next : neighbours(here)) {
                double throughM = lengthM[here] + node(here).distanceTo(node(next));
                if (!closed[next] && throughM < lengthM[next] && isFree(walls, node(here), node(next))) {
                    queue.remove(next);
                    lengthM[next] = throughM;
                    queue.add(next);
                }
            }
        }
        return stops.stream().mapToDouble(stop -> lengthM[number(stop)]).toArray();
    }

    private static List<Integer> neighbours(int n) {
        List<Integer> around = new ArrayList<>();
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                int column = n % COLUMNS + dx;
                int row = n / COLUMNS + dy;
                if ((dx != 0 || dy != 0) && column >= 0 && row >= 0 && column < COLUMNS && row < ROWS) {
                    around.add(row * COLUMNS + column);
                }
            }
        }
        return around;
    }

    private static boolean isFree(List<Edge> walls, Point a, Point b) {
        return walls.stream()
                .noneMatch(wall -> side(wall.from(), wall.to(), a) * side(wall.from(), wall.to(), b) <= 0
                        && side(a, b, wall.from()) * side(a, b, wall.to()) <= 0);
    }

    private static double side(Point a, Point b, Point p) {
        double cross = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        return Math.abs(cross) < 1e-9 ? 0 : Math.signum(cross);
    }
}
