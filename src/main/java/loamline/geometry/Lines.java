package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Lines over ground: patterns cut to an outline, borders drawn once.
 *
 * <p>Results are noded: lines that cross each other come back split where they cross. Nothing gives nothing.
 */
public final class Lines {
    private Lines() {}

    /** The stretches of some lines that lie inside a region or on its border; touching at a point is dropped. */
    public static List<Polyline> within(Collection<Polyline> lines, Region region) {
        return overlay(lines, region, OverlayNG.INTERSECTION);
    }

    /** The stretches of some lines that lie outside a region. */
    public static List<Polyline> outside(Collection<Polyline> lines, Region region) {
        return overlay(lines, region, OverlayNG.DIFFERENCE);
    }

    /** The rings of some regions, a stretch that several share drawn once, joined as far as two ends meet. */
    public static List<Polyline> borders(Collection<Region> regions) {
        List<Geometry> rings =
                regions.stream().map(region -> region.area().getBoundary()).toList();
        if (rings.isEmpty()) {
            return List.of();
        }
        LineMerger merger = new LineMerger();
        merger.add(OverlayNGRobust.union(Jts.FACTORY.buildGeometry(rings)));
        List<Polyline> borders = new ArrayList<>();
        for (Object merged : merger.getMergedLineStrings()) {
            borders.add(polyline((LineString) merged));
        }
        return List.copyOf(borders);
    }

    private static List<Polyline> overlay(Collection<Polyline> lines, Region region, int operation) {
        Geometry drawn = Jts.FACTORY.createMultiLineString(
                lines.stream().map(line -> Jts.line(line.points())).toArray(LineString[]::new));
        Geometry cut = OverlayNGRobust.overlay(drawn, region.area(), operation);
        return IntStream.range(0, cut.getNumGeometries())
                .mapToObj(cut::getGeometryN)
                .filter(part -> part instanceof LineString && !part.isEmpty())
                .map(part -> polyline((LineString) part))
                .toList();
    }

    private static Polyline polyline(LineString line) {
        return new Polyline(Stream.of(line.getCoordinates())
                .map((Coordinate c) -> Jts.point(c))
                .toList());
    }
}
