package loamline.sampling.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/** Closes gaps too narrow to walk through: between obstacles, fences and the boundary, and where a fence ends. */
final class Meeting {
    private final double reachM;
    private final List<Edge> links = new ArrayList<>();

    private Meeting(double reachM) {
        this.reachM = reachM;
    }

    /** Something drawn: its corners, its edges, and a box within which other corners may be near. */
    private record Thing(List<Point> corners, List<Edge> edges, Optional<Box> surroundings) {
        static Thing of(List<Point> corners, List<Edge> edges, double reachM) {
            return new Thing(corners, edges, Box.around(corners.stream()).map(box -> box.grown(reachM)));
        }
    }

    /**
     * Edges across the gaps: from each corner of a thing to the near places of every other, and from each end of a
     * fence to those of the same fence once it has left the end's surroundings. A place is near if it is within reach
     * and none beside it on the same thing is nearer. What touches needs no edge.
     *
     * @param regions obstacles, and the boundary if there is one
     * @param fences lines that may not be crossed
     * @param reachM the widest gap that is closed, m
     */
    static List<Edge> links(List<Region> regions, List<Polyline> fences, double reachM) {
        List<Thing> things = new ArrayList<>();
        for (Region region : regions) {
            List<Edge> edges = Edges.around(region, false);
            things.add(Thing.of(edges.stream().map(Edge::from).toList(), edges, reachM));
        }
        fences.forEach(fence -> things.add(Thing.of(fence.points(), Edges.along(fence), reachM)));
        Meeting meeting = new Meeting(reachM);
        for (int i = 0; i < things.size(); i++) {
            for (int k = 0; k < things.size(); k++) {
                if (i != k) {
                    meeting.linkToOther(things.get(i), things.get(k));
                }
            }
        }
        fences.forEach(meeting::linkToItself);
        return meeting.links;
    }

    private void linkToOther(Thing thing, Thing other) {
        other.surroundings()
                .ifPresent(near ->
                        thing.corners().stream().filter(near::contains).forEach(corner -> link(corner, other.edges())));
    }

    private void linkToItself(Polyline fence) {
        List<Point> points = new ArrayList<>(fence.points());
        link(points.get(0), beyond(points));
        Collections.reverse(points);
        link(points.get(0), beyond(points));
    }

    /** The edges of a fence after it has first gone farther from its start than the reach. */
    private List<Edge> beyond(List<Point> fence) {
        int i = 0;
        while (i < fence.size() && fence.get(i).distanceTo(fence.get(0)) <= reachM) {
            i++;
        }
        return i == fence.size() ? List.of() : Edges.along(new Polyline(fence.subList(i, fence.size())));
    }

    private void link(Point corner, List<Edge> edges) {
        Map<Point, Double> nearestByEnd = new HashMap<>();
        List<Edge> near =
                edges.stream().filter(edge -> edge.distanceTo(corner) <= reachM).toList();
        for (Edge edge : near) {
            nearestByEnd.merge(edge.from(), edge.distanceTo(corner), Math::min);
            nearestByEnd.merge(edge.to(), edge.distanceTo(corner), Math::min);
        }
        for (Edge edge : near) {
            Point foot = edge.nearestTo(corner);
            double gapM = foot.distanceTo(corner);
            if (gapM > 0 && gapM <= nearestByEnd.getOrDefault(foot, gapM)) {
                links.add(new Edge(corner, foot, true, true));
            }
        }
    }
}
