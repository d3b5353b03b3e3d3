package loamline.desk.map;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.sampling.CorePlan;

/**
 * A walk seen in quick motion, all bags one after the other at one speed.
 *
 * @param paths at least one
 */
record WalkPace(List<Polyline> paths) {
    private static final double SHORTEST_S = 3;
    private static final double LONGEST_S = 6;

    /** Metres of walk shown in a second, between the shortest and the longest time. */
    private static final double METRES_A_SECOND = 50;

    /** Direction is taken over so much of the path, m. */
    private static final double AHEAD_M = 0.05;

    WalkPace {
        paths = List.copyOf(paths);
    }

    /**
     * A place of the walk.
     *
     * @param headingDeg where it leads, clockwise from east as seen on screen
     */
    record Place(Point at, double headingDeg) {}

    /** The walks of a plan; empty if there is none with a length. */
    static Optional<WalkPace> of(CorePlan plan) {
        List<Polyline> paths = plan.walks().stream()
                .map(CorePlan.Walk::path)
                .filter(path -> path.lengthM() > 0)
                .toList();
        return paths.isEmpty() ? Optional.empty() : Optional.of(new WalkPace(paths));
    }

    double lengthM() {
        return paths.stream().mapToDouble(Polyline::lengthM).sum();
    }

    double durationS() {
        return Math.max(SHORTEST_S, Math.min(LONGEST_S, lengthM() / METRES_A_SECOND));
    }

    /** Where the walk is after a share of its time, 0 to 1. */
    Place at(double share) {
        double along = Math.max(0, Math.min(1, share)) * lengthM();
        Polyline path = paths.get(0);
        for (int i = 1; i < paths.size() && along > path.lengthM(); i++) {
            along -= path.lengthM();
            path = paths.get(i);
        }
        double back = Math.max(0, Math.min(along, path.lengthM() - AHEAD_M));
        Point from = path.at(back);
        Point to = path.at(back + AHEAD_M);
        double heading = Math.toDegrees(Math.atan2(from.y() - to.y(), to.x() - from.x()));
        return new Place(path.at(along), heading);
    }
}
