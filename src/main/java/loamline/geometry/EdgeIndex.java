package loamline.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Edges to be found by place; made once, each answer then takes time with what lies near. */
public final class EdgeIndex {
    private final HPRtree tree = new HPRtree();

    /** @param edges of any length; one without length stands for a point */
    public EdgeIndex(Collection<Edge> edges) {
        edges.forEach(edge -> tree.insert(envelope(edge), edge));
        tree.build();
    }

    /**
     * The nearest edges within reach of a place, on it included.
     *
     * @param reachM metres, 0 or more
     * @param most how many at most, 1 or more
     * @return nearest first; of equals, in an order that depends on the edges only
     */
    public List<Edge> near(Point place, double reachM, int most) {
        Comparator<Found> nearest = Comparator.comparingDouble(Found::distanceM);
        PriorityQueue<Found> farthestFirst = new PriorityQueue<>(nearest.reversed());
        tree.query(around(place, reachM), item -> {
            Edge edge = (Edge) item;
            double distanceM = edge.distanceTo(place);
            if (distanceM <= reachM) {
                farthestFirst.add(new Found(edge, distanceM));
            }
            if (farthestFirst.size() > most) {
                farthestFirst.remove();
            }
        });
        List<Found> found = new ArrayList<>(farthestFirst);
        found.sort(nearest);
        return found.stream().map(Found::edge).toList();
    }

    private record Found(Edge edge, double distanceM) {}

    private static Envelope around(Point place, double reachM) {
        Envelope box = new Envelope(Jts.coordinate(place));
        box.expandBy(reachM);
        return box;
    }

    private static Envelope envelope(Edge edge) {
        return new Envelope(Jts.coordinate(edge.from()), Jts.coordinate(edge.to()));
    }
}
