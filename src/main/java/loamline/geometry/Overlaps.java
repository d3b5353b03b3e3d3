package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * How often ground lies under regions that overlap.
 *
 * <p>All borders are cut where they cross, which leaves faces that lie under the same regions throughout; a point
 * inside a face tells which. Cost: n log n in corners and crossings, however many regions there are.
 */
public final class Overlaps {
    private final Region ground;
    private final STRtree over = new STRtree();

    private Overlaps(Region ground, Collection<Region> regions) {
        this.ground = ground;
        regions.forEach(region -> over.insert(region.area().getEnvelopeInternal(), region));
        over.build();
    }

    /**
     * Cuts ground by the number of regions over it.
     *
     * @param most the number from which on more make no difference, 1 or more
     * @return {@code most} + 1 regions without common ground that together are the ground: under none, under 1, …,
     *     under {@code most} or more; some perhaps empty
     */
    public static List<Region> depths(Region ground, Collection<Region> regions, int most) {
        List<Region> near = regions.stream()
                .filter(region -> region.area()
                        .getEnvelopeInternal()
                        .intersects(ground.area().getEnvelopeInternal()))
                .toList();
        return new Overlaps(ground, near).depths(faces(ground, near), most);
    }

    private static Collection<Polygon> faces(Region ground, List<Region> regions) {
        List<Region> all = new ArrayList<>(regions);
        all.add(ground);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(Noding.of(all));
        List<Polygon> faces = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            faces.add((Polygon) ((Polygon) face).norm());
        }
        faces.sort(null); // the polygonizer keeps them by identity, in another order every time
        return faces;
    }

    private List<Region> depths(Collection<Polygon> faces, int most) {
        List<List<Geometry>> byDepth = new ArrayList<>();
        for (int depth = 0; depth <= most; depth++) {
            byDepth.add(new ArrayList<>());
        }
        for (Polygon face : faces) {
            Point inside = Jts.point(face.getInteriorPoint().getCoordinate());
            if (ground.covers(inside)) {
                byDepth.get(Math.min(most, depth(inside))).add(face);
            }
        }
        return byDepth.stream()
                .map(alike ->
                        alike.isEmpty() ? Region.EMPTY : Region.of(CoverageUnion.union(alike.toArray(Geometry[]::new))))
                .toList();
    }

    private int depth(Point inside) {
        int depth = 0;
        for (Object found : over.query(new Envelope(Jts.coordinate(inside)))) {
            if (((Region) found).covers(inside)) {
                depth++;
            }
        }
        return depth;
    }
}
