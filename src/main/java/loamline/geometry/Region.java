package loamline.geometry;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.relateng.RelatePredicate;

/**
 * Ground: a valid, possibly empty area in the plane, of any number of parts with holes. Immutable; equal when
 * the same rings enclose it, whatever point they start at.
 *
 * <p>Set operations climb a ladder until one rung holds: full precision, then snapped vertices, then snapped
 * to a fine grid ({@link OverlayNGRobust}). Parts of a result without area are dropped.
 */
public final class Region {
    /** No ground at all. */
    public static final Region EMPTY = new Region(Jts.FACTORY.createMultiPolygon());

    /** Segments in a quarter circle where a buffer turns a corner: its arc is inside by at most 0.12 % of r. */
    private static final int QUADRANT_SEGMENTS = 16;

    private final MultiPolygon area;
    private final IndexedPointInAreaLocator locator;

    private Region(MultiPolygon area) {
        this.area = area;
        this.locator = new IndexedPointInAreaLocator(area);
    }

    static Region of(Geometry g) {
        MultiPolygon areal = Jts.areal(g);
        return areal.isEmpty() ? EMPTY : new Region(areal);
    }

    MultiPolygon area() {
        return area;
    }

    /** The ground an outline encloses, repaired where it must be; {@link Repair} tells what was wrong. */
    public static Region of(Outline outline) {
        return Repair.of(outline).region();
    }

    /**
     * All ground within a distance of a shape; an outline counts with its inside.
     *
     * @param radiusM metres, 0 or more; 0 round a point or a line is empty
     */
    public static Region around(Shape shape, double radiusM) {
        Geometry drawn;
        if (shape instanceof Point p) {
            drawn = Jts.FACTORY.createPoint(Jts.coordinate(p));
        } else if (shape instanceof Polyline line) {
            drawn = Jts.line(line.points());
        } else {
            drawn = of((Outline) shape).area;
        }
        return of(BufferOp.bufferOp(drawn, radiusM, QUADRANT_SEGMENTS));
    }

    /**
     * The ground inside a ring that is known not to touch itself.
     *
     * @param ring three points or more, in order; nothing is checked or mended
     */
    public static Region inside(List<Point> ring) {
        return new Region(Jts.FACTORY.createMultiPolygon(new Polygon[] {Jts.FACTORY.createPolygon(Jts.ring(ring))}));
    }

    /** Everything that lies in at least one of the regions. */
    public static Region union(Collection<Region> regions) {
        Geometry all = Jts.FACTORY.buildGeometry(
                regions.stream().map(region -> (Geometry) region.area).toList());
        return all.isEmpty() ? EMPTY : of(OverlayNGRobust.union(all));
    }

    public Region union(Region other) {
        return overlay(other, OverlayNG.UNION);
    }

    public Region intersection(Region other) {
        return overlay(other, OverlayNG.INTERSECTION);
    }

    /** What lies here but not in the other region. */
    public Region minus(Region other) {
        return overlay(other, OverlayNG.DIFFERENCE);
    }

    private Region overlay(Region other, int operation) {
        return of(OverlayNGRobust.overlay(area, other.area, operation));
    }

    /** The region grown by a distance with round corners; a negative distance shrinks it, perhaps to nothing. */
    public Region buffer(double distanceM) {
        return distanceM == 0 ? this : of(BufferOp.bufferOp(area, distanceM, QUADRANT_SEGMENTS));
    }

    /** The smallest region without dents that holds this one. */
    public Region hull() {
        return of(area.convexHull());
    }

    public boolean isEmpty() {
        return area.isEmpty();
    }

    /** Area in square metres, holes taken out. */
    public double areaM2() {
        return area.getArea();
    }

    /** Length of all rings, holes included, in metres. */
    public double perimeterM() {
        return area.getLength();
    }

    /** Whether a point lies inside or on the border. */
    public boolean covers(Point p) {
        return locator.locate(Jts.coordinate(p)) != Location.EXTERIOR;
    }

    /** Whether all of another region lies here. */
    public boolean covers(Region other) {
        return RelateNG.relate(area, other.area, RelatePredicate.covers());
    }

    /** Whether a point lies inside, off the border. */
    public boolean holdsInside(Point p) {
        return locator.locate(Jts.coordinate(p)) == Location.INTERIOR;
    }

    /** Distance from a point to the nearest ring, in metres; infinite for an empty region. Not for many points. */
    public double distanceToEdge(Point p) {
        return new EdgeDistance(this).to(p);
    }

    IndexedFacetDistance edges() {
        return new IndexedFacetDistance(area.getBoundary());
    }

    /** Centre of gravity, which may lie outside; empty for an empty region. */
    public Optional<Point> centroid() {
        return isEmpty()
                ? Optional.empty()
                : Optional.of(Jts.point(area.getCentroid().getCoordinate()));
    }

    /** A point well inside, to hang a label on; empty for an empty region. */
    public Optional<Point> innerPoint() {
        return isEmpty()
                ? Optional.empty()
                : Optional.of(Jts.point(area.getInteriorPoint().getCoordinate()));
    }

    /** The smallest upright box round the region; empty for an empty region. */
    public Optional<Box> box() {
        Envelope e = area.getEnvelopeInternal();
        return e.isNull() ? Optional.empty() : Optional.of(new Box(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY()));
    }

    /** The connected parts, largest first. */
    public List<Region> parts() {
        return Jts.polygons(area).stream()
                .map(polygon -> (Geometry) polygon)
                .sorted((a, b) -> Double.compare(b.getArea(), a.getArea()))
                .map(Region::of)
                .toList();
    }

    /**
     * The region as convex rings that overlap nowhere: a part that is convex as it is, any other as triangles between its
     * own corners.
     */
    public List<List<Point>> convexParts() {
        return ConvexParts.of(polygons());
    }

    List<Polygon> polygons() {
        return Jts.polygons(area);
    }

    /** The rings that bound the region. */
    public Outline outline() {
        return new Outline(Jts.polygons(area).stream().map(Jts::part).toList());
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Region other && area.norm().equalsExact(other.area.norm());
    }

    @Override
    public int hashCode() {
        return area.getEnvelopeInternal().hashCode();
    }

    @Override
    public String toString() {
        return area.toText();
    }
}
