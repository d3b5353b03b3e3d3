package loamline.water.cups;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.water.HeadPattern;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.Profile;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;

/** A lawn of 10 × 10 m with a quarter-circle head of 10 m in each corner, h1 to h4 from the south-west clockwise. */
public final class FourHeads {
    public static final String VALVE = "lawn";

    private static final double SIDE_M = 10;

    private FourHeads() {}

    public static Yard yard() {
        List<Feature> features = new ArrayList<>();
        features.add(YardFixtures.turf("Lawn", YardFixtures.box(0, 0, SIDE_M, SIDE_M)));
        double[][] corners = {{0, 0}, {0, SIDE_M}, {SIDE_M, SIDE_M}, {SIDE_M, 0}};
        for (int i = 0; i < corners.length; i++) {
            features.add(head("h" + (i + 1), new Point(corners[i][0], corners[i][1]), 90.0 * i));
        }
        return YardFixtures.yard(features.toArray(Feature[]::new));
    }

    private static Head head(String id, Point at, double startDeg) {
        return new Head(
                "head " + id,
                id,
                VALVE,
                Optional.of(HeadClass.ROTOR),
                OptionalDouble.of(SIDE_M),
                startDeg,
                90,
                OptionalDouble.of(8),
                Profile.Named.CONE,
                0,
                at,
                Extras.NONE);
    }

    static Map<String, HeadPattern> heads() {
        Map<String, HeadPattern> heads = new LinkedHashMap<>();
        yard().all(Head.class)
                .forEach(head -> heads.put(
                        head.id(), HeadPattern.of(head, Where.WHOLE).pattern().orElseThrow()));
        return heads;
    }

    /** Places of cups, five by five, from the south-west in rows. */
    static List<Point> grid() {
        List<Point> grid = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            grid.add(new Point(1 + 2 * (i % 5), 1 + 2 * (i / 5)));
        }
        return grid;
    }

    /** Readings without noise of heads that something happened to, the first 24 places of the grid. */
    static List<Cup> readings(UnaryOperator<HeadPattern> each) {
        List<HeadPattern> real = heads().values().stream().map(each).toList();
        List<Cup> cups = new ArrayList<>();
        for (Point at : grid().subList(0, 24)) {
            double rate = real.stream()
                    .mapToDouble(head -> head.rateMmH(at.x(), at.y()))
                    .sum();
            cups.add(cup(cups.size(), at, rate * 100 * 20 / 600));
        }
        return cups;
    }

    /** Cups on the grid with these catches, 107.1 cm², 10 minutes, read from line 2 on. */
    static List<Cup> caught(double... ml) {
        List<Cup> cups = new ArrayList<>();
        for (double each : ml) {
            int i = cups.size();
            cups.add(new Cup(Integer.toString(i + 1), grid().get(i), each, 107.1, 10, OptionalInt.of(i + 2)));
        }
        return cups;
    }

    static Cup cup(int index, Point at, double ml) {
        return new Cup(Integer.toString(index + 1), at, ml, 100, 20, OptionalInt.of(index + 2));
    }

    /** The operator that changes one head and leaves the others. */
    static UnaryOperator<HeadPattern> only(String id, UnaryOperator<HeadPattern> what) {
        HeadPattern changed = Optional.ofNullable(heads().get(id)).orElseThrow();
        return head -> head.equals(changed) ? what.apply(head) : head;
    }
}
