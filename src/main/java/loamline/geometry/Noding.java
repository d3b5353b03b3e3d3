package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.IntersectionAdder;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.OrientedCoordinateArray;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/**
 * The borders of regions, cut wherever they cross or touch, each piece once.
 *
 * <p>Climbs a ladder until the pieces meet at their ends only: crossings as computed, then vertices within a trillionth
 * of the largest coordinate joined, then all on a grid of a billionth.
 */
final class Noding {
    private Noding() {}

    static List<LineString> of(Collection<Region> regions) {
        double largest = regions.stream()
                .flatMap(region -> region.box().stream())
                .mapToDouble(box -> Math.max(
                        Math.max(Math.abs(box.minX()), Math.abs(box.maxX())),
                        Math.max(Math.abs(box.minY()), Math.abs(box.maxY()))))
                .max()
                .orElse(0);
        if (largest == 0) {
            return List.of();
        }
        List<SegmentString> pieces = cut(new MCIndexNoder(new IntersectionAdder(new RobustLineIntersector())), regions);
        if (!new FastNodingValidator(pieces).isValid()) {
            pieces = cut(new SnappingNoder(Edges.SNAP_SHARE * largest), regions);
        }
        if (!new FastNodingValidator(pieces).isValid()) {
            pieces = cut(new SnapRoundingNoder(new PrecisionModel(1 / (Edges.GRID_SHARE * largest))), regions);
        }
        return lines(pieces);
    }

    private static List<SegmentString> cut(Noder noder, Collection<Region> regions) {
        List<NodedSegmentString> rings = new ArrayList<>();
        for (Region region : regions) {
            Geometry border = region.area().getBoundary();
            for (int i = 0; i < border.getNumGeometries(); i++) {
                rings.add(new NodedSegmentString(border.getGeometryN(i).getCoordinates(), null));
            }
        }
        noder.computeNodes(rings);
        List<SegmentString> pieces = new ArrayList<>();
        for (Object piece : noder.getNodedSubstrings()) {
            pieces.add((SegmentString) piece);
        }
        return pieces;
    }

    private static List<LineString> lines(List<SegmentString> pieces) {
        Set<OrientedCoordinateArray> known = new TreeSet<>();
        List<LineString> lines = new ArrayList<>();
        for (SegmentString piece : pieces) {
            Coordinate[] corners = piece.getCoordinates();
            if (known.add(new OrientedCoordinateArray(corners))) {
                lines.add(Jts.FACTORY.createLineString(corners));
            }
        }
        return lines;
    }
}
