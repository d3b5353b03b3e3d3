package loamline.bench;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;

/** A hectare with 6 zones, each its own bag of 12 cores, and 40 obstacles: buildings, beds, ponds and fences. */
public final class LargeYard {
    private LargeYard() {}

    public static Yard make() {
        List<Feature> features = new ArrayList<>();
        features.add(new Boundary("lot", "", Outline.of(box(0, 0, 125, 80)), Extras.NONE));
        for (int i = 0; i < 6; i++) {
            double x = (i % 3) * 125.0 / 3;
            int row = i / 3;
            double y = row * 40.0;
            features.add(turf("zone " + i, Optional.of("" + (char) ('A' + i)), box(x, y, x + 125.0 / 3, y + 40)));
        }
        for (int i = 0; i < 36; i++) {
            double x = 6 + (i % 9) * 13.4 + (i * 7 % 5);
            int row = i / 9;
            double y = 5 + row * 19.0 + (i * 11 % 7);
            features.add(
                    i % 3 == 0
                            ? octagon(Kind.WATER, x, y)
                            : i % 3 == 1 ? building(box(x, y, x + 6, y + 4)) : octagon(Kind.BED, x, y));
        }
        for (int i = 0; i < 4; i++) {
            double x = 20 + i * 28;
            features.add(new Barrier(
                    "fence " + i,
                    Kind.FENCE,
                    1.8,
                    List.of(new Barrier.Opening(14, 1.2)),
                    true,
                    new Polyline(List.of(new Point(x, 0), new Point(x, 45))),
                    Extras.NONE));
        }
        features.add(gate(62, 1));
        return YardFixtures.yard(features.toArray(Feature[]::new));
    }

    static PlanOptions options() {
        PlanOptions u = PlanOptions.USUAL;
        return new PlanOptions(
                OptionalInt.of(6),
                12,
                u.edgeBufferM(),
                u.trunkBufferM(),
                u.headBufferM(),
                u.place(),
                1,
                1,
                u.walk(),
                u.probe(),
                Extras.NONE);
    }

    private static Feature octagon(Kind kind, double x, double y) {
        double[] xy = new double[16];
        for (int i = 0; i < 8; i++) {
            xy[2 * i] = x + 3 + 3 * Math.cos(Math.PI / 4 * i);
            xy[2 * i + 1] = y + 2 + 2 * Math.sin(Math.PI / 4 * i);
        }
        return cover(kind, xy);
    }
}
