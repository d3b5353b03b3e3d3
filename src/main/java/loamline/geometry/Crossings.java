package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/** Counts the places where the sides of rings cross each other, up to a limit: their number can be quadratic. */
final class Crossings implements SegmentIntersector {
    private final LineIntersector intersector = new RobustLineIntersector();
    private final int limit;
    private int count;

    private Crossings(int limit) {
        this.limit = limit;
    }

    /** Whether the sides of a polygon cross more often than a number of times. */
    static boolean isMoreThan(int limit, Polygon drawn) {
        List<SegmentString> rings = new ArrayList<>();
        rings.add(new BasicSegmentString(drawn.getExteriorRing().getCoordinates(), drawn));
        for (int i = 0; i < drawn.getNumInteriorRing(); i++) {
            rings.add(new BasicSegmentString(drawn.getInteriorRingN(i).getCoordinates(), drawn));
        }
        Crossings crossings = new Crossings(limit);
        new MCIndexNoder(crossings).computeNodes(rings);
        return crossings.isDone();
    }

    @Override
    public void processIntersections(SegmentString a, int sideOfA, SegmentString b, int sideOfB) {
        if (a == b && sideOfA == sideOfB) {
            return;
        }
        intersector.computeIntersection(
                a.getCoordinate(sideOfA),
                a.getCoordinate(sideOfA + 1),
                b.getCoordinate(sideOfB),
                b.getCoordinate(sideOfB + 1));
        if (intersector.hasIntersection() && intersector.isInteriorIntersection()) {
            count++;
        }
    }

    @Override
    public boolean isDone() {
        return count > limit;
    }
}
