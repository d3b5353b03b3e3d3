package loamline.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/**
 * Which corners and stops see each other over free ground.
 *
 * <p>A node is a free sector at a place ({@link Sector}). Only sectors of a half turn or more matter, since a
 * shortest path turns nowhere else; stops bring all their sectors. Nodes are linked along edges, on the side they
 * share, and across open ground.
 */
final class VisibilityGraph {
    /** Receives a node and how far it is, m. */
    interface Neighbour {
        void at(int node, double sideM);
    }

    private final List<Point> stops;
    private final List<int[]> nodesOfStop = new ArrayList<>();
    private final List<Sector> sectors = new ArrayList<>();
    private final Map<Coordinate, List<Integer>> byPlace = new HashMap<>();
    private final List<List<Link>> links = new ArrayList<>();

    private record Link(int node, double sideM) {}

    VisibilityGraph(Region free, List<Polyline> walls, List<Point> stops) {
        this.stops = stops;
        Linework lines = new Linework(free, walls);
        List<Coordinate> places =
                stops.stream().map(Jts::coordinate).map(lines::node).toList();
        Map<Coordinate, List<Linework.Edge>> stars = lines.stars();
        Set<Coordinate> stopPlaces = new LinkedHashSet<>(places);
        for (Coordinate place : stopPlaces) {
            if (!stars.containsKey(place) && free.holdsInside(Jts.point(place))) {
                add(Sector.allRound(place));
            }
        }
        stars.forEach((at, star) -> addSectors(star, stopPlaces.contains(at)));
        for (Coordinate place : places) {
            nodesOfStop.add(nodesAt(place).stream().mapToInt(Integer::intValue).toArray());
        }
        lines.edges().forEach(this::linkAlong);
        linkAcross(new EdgeGrid(lines.edges()));
    }

    private void addSectors(List<Linework.Edge> star, boolean stop) {
        for (int i = 0; i < star.size(); i++) {
            Linework.Edge edge = star.get(i);
            Sector sector = new Sector(
                    edge.a(), edge.b(), star.get((i + 1) % star.size()).b(), stop);
            if (edge.leftFree() && (stop || sector.isHalfTurnOrMore())) {
                add(sector);
            }
        }
    }

    private void add(Sector sector) {
        byPlace.computeIfAbsent(sector.at(), k -> new ArrayList<>()).add(sectors.size());
        sectors.add(sector);
        links.add(new ArrayList<>());
    }

    private List<Integer> nodesAt(Coordinate place) {
        return byPlace.getOrDefault(place, List.of());
    }

    private void linkAlong(Linework.Edge edge) {
        for (int p : nodesAt(edge.a())) {
            for (int q : nodesAt(edge.b())) {
                boolean left = edge.leftFree()
                        && sectors.get(p).startsAlong(edge.b())
                        && sectors.get(q).endsAlong(edge.a());
                boolean right = edge.rightFree()
                        && sectors.get(p).endsAlong(edge.b())
                        && sectors.get(q).startsAlong(edge.a());
                if (left || right) {
                    link(p, q);
                }
            }
        }
    }

    private void linkAcross(EdgeGrid grid) {
        for (int p = 0; p < sectors.size(); p++) {
            Sector from = sectors.get(p);
            for (int q = p + 1; q < sectors.size(); q++) {
                Sector to = sectors.get(q);
                boolean worth = !from.at().equals2D(to.at())
                        && from.mayTurnFrom(to.at())
                        && to.mayTurnFrom(from.at())
                        && from.opensTo(to.at())
                        && to.opensTo(from.at());
                if (worth && !grid.meets(from.at(), to.at())) {
                    link(p, q);
                }
            }
        }
    }

    private void link(int p, int q) {
        double sideM = sectors.get(p).at().distance(sectors.get(q).at());
        links.get(p).add(new Link(q, sideM));
        links.get(q).add(new Link(p, sideM));
    }

    int size() {
        return sectors.size();
    }

    Point stop(int stop) {
        return stops.get(stop);
    }

    int[] nodesOfStop(int stop) {
        return nodesOfStop.get(stop);
    }

    Point point(int node) {
        return Jts.point(sectors.get(node).at());
    }

    void neighbours(int node, Neighbour each) {
        for (Link link : links.get(node)) {
            each.at(link.node, link.sideM);
        }
    }
}
