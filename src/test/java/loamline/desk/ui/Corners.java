package loamline.desk.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Point;

/** The corners a person would click of a finely drawn line: the fewest that keep it within a distance. */
final class Corners {
    private Corners() {}

    /** Of a line; Douglas &amp; Peucker 1973, Cartographica 10:112-122. */
    static List<Point> ofLine(List<Point> line, double withinM) {
        int last = line.size() - 1;
        if (last < 2) {
            return line;
        }
        int farthest = IntStream.range(1, last)
                .boxed()
                .max(Comparator.comparingDouble(i -> offM(line.get(i), line.get(0), line.get(last))))
                .orElseThrow();
        if (offM(line.get(farthest), line.get(0), line.get(last)) <= withinM) {
            return List.of(line.get(0), line.get(last));
        }
        List<Point> kept = new ArrayList<>(ofLine(line.subList(0, farthest + 1), withinM));
        kept.remove(kept.size() - 1);
        kept.addAll(ofLine(line.subList(farthest, line.size()), withinM));
        return kept;
    }

    /** Of a ring, whose last corner is joined to its first. */
    static List<Point> ofRing(List<Point> ring, double withinM) {
        int opposite = IntStream.range(1, ring.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> ring.get(i).distanceTo(ring.get(0))))
                .orElseThrow();
        List<Point> home = new ArrayList<>(ring.subList(opposite, ring.size()));
        home.add(ring.get(0));
        List<Point> there = ofLine(ring.subList(0, opposite + 1), withinM);
        List<Point> back = ofLine(home, withinM);
        List<Point> kept = new ArrayList<>(there);
        kept.addAll(back.subList(1, back.size() - 1));
        return kept;
    }

    private static double offM(Point p, Point a, Point b) {
        double length = a.distanceTo(b);
        if (length == 0) {
            return p.distanceTo(a);
        }
        double along = ((p.x() - a.x()) * (b.x() - a.x()) + (p.y() - a.y()) * (b.y() - a.y())) / (length * length);
        double share = Math.max(0, Math.min(1, along));
        return p.distanceTo(a.plus(share * (b.x() - a.x()), share * (b.y() - a.y())));
    }
}
