package loamline.geometry;

import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Distances from many points to the rings of one region; made once, each answer then takes logarithmic time. */
public final class EdgeDistance {
    private final Region region;
    private final IndexedFacetDistance edges;

    public EdgeDistance(Region region) {
        this.region = region;
        this.edges = region.edges();
    }

    /** Distance to the nearest ring, from inside or outside, in metres; infinite for an empty region. */
    public double to(Point p) {
        return region.isEmpty() ? Double.POSITIVE_INFINITY : edges.distance(Jts.FACTORY.createPoint(Jts.coordinate(p)));
    }
}
