package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** An invented suburban lot of 30 by 45 m that holds one of everything. */
public final class SampleYard {
    private final List<Feature> features = new ArrayList<>();

    private SampleYard() {}

    /** The lot: front lawn, house with patio and drive, two back lawns behind a fence. */
    public static Yard yard() {
        SampleYard all = new SampleYard();
        all.ground();
        all.barriers();
        all.treesAndHeads();
        all.spots();
        return Yard.empty("Alder Lane 12", Frame.local()).withFeatures(all.features);
    }

    private String key() {
        return "f" + (features.size() + 1);
    }

    private void ground() {
        features.add(new Boundary(key(), "lot", Outline.of(0, 0, 30, 0, 30, 45, 0, 45), Extras.NONE));
        turf("Front", 0, 0, 18.3, 0, 18.3, 11.5, 0, 11.5);
        turf("Front", 24.3, 0, 30, 0, 30, 11.5, 24.3, 11.5);
        turf("Back west", 0, 27.2, 13.2, 27.2, 13.2, 45, 0, 45);
        turf("Back east", 13.2, 27.2, 30, 27.2, 30, 45, 13.2, 45);
        cover(Kind.BED, "", 1, 9, 18.3, 9, 18.3, 11.5, 1, 11.5);
        cover(Kind.BED, "", 25.2, 45, 30, 45, 30, 36.6, 23.3, 37.6);
        cover(Kind.PAVING, "Patio", 7.8, 24, 16.8, 24, 16.8, 29.4, 7.8, 29.4);
        cover(Kind.PAVING, "Drive", 18.3, 0, 24.3, 0, 24.3, 11.5, 18.3, 11.5);
        cover(Kind.GRAVEL, "", 0.3, 12, 2.6, 12, 2.6, 24, 0.3, 24);
        cover(Kind.DECK, "Deck", 17.2, 25, 21.6, 25, 21.6, 28.2, 17.2, 28.2);
        cover(Kind.WATER, "", 6.2, 31.8, 7.6, 31.2, 8.9, 31.9, 9.2, 33.2, 8.1, 34.1, 6.7, 33.9, 5.9, 32.9);
        Outline house = Outline.of(2.8, 11.5, 24.8, 11.5, 24.8, 25, 16.8, 25, 16.8, 24.5, 2.8, 24.5);
        features.add(new Building(key(), "House", 5.4, 0.6, house, Extras.NONE));
    }

    private void turf(String zone, double... outline) {
        OptionalDouble unknown = OptionalDouble.empty();
        features.add(new Turf(
                key(), zone, "tall fescue", unknown, unknown, Optional.empty(), Outline.of(outline), Extras.NONE));
    }

    private void cover(Kind kind, String name, double... outline) {
        features.add(new Cover(key(), kind, name, Outline.of(outline), Extras.NONE));
    }

    private void barriers() {
        Polyline fence = line(2.8, 24.5, 0, 25.6, 0, 45, 30, 45, 30, 25.6, 24.8, 25);
        double gateM = fence.lengthM() - 2.4;
        barrier(Kind.FENCE, fence, List.of(new Barrier.Opening(gateM, 1.8)));
        barrier(Kind.WALL, line(24.6, 0.4, 24.6, 6.5), List.of());
        features.add(new Gate(key(), new Point(27.2, 25.28), Extras.NONE));
    }

    private void barrier(Kind kind, Polyline line, List<Barrier.Opening> gates) {
        features.add(new Barrier(key(), kind, 1.8, gates, true, line, Extras.NONE));
    }

    private static Polyline line(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Polyline(points);
    }

    private void treesAndHeads() {
        tree(4, 41.4, 3.3);
        tree(27, 41.4, 2.6);
        tree(27.6, 5.6, 2);
        double[][] heads = {
            {0, 45, 90, 90}, {15, 45, 90, 180}, {30, 36, 180, 180}, {0, 36, 0, 180}, {0, 27.2, 0, 90},
            {30, 27.2, 270, 90}, {13.2, 29.4, 270, 180}, {0, 0, 0, 90}, {9, 0, 270, 180}, {18.3, 0, 270, 90},
            {0, 9, 90, 90}, {18.3, 9, 180, 90}
        };
        for (int i = 0; i < heads.length; i++) {
            head(i + 1, heads[i][0], heads[i][1], heads[i][2], heads[i][3]);
        }
    }

    private void tree(double x, double y, double crownM) {
        features.add(new Tree(
                key(),
                OptionalDouble.of(crownM),
                OptionalDouble.of(8),
                0.22,
                false,
                0.1,
                OptionalDouble.empty(),
                false,
                new Point(x, y),
                Extras.NONE));
    }

    private void head(int number, double x, double y, double startDeg, double sweepDeg) {
        features.add(new Head(
                key(),
                "h" + number,
                number <= 4 ? "1" : number <= 7 ? "2" : "3",
                Optional.empty(),
                OptionalDouble.of(9),
                startDeg,
                sweepDeg,
                OptionalDouble.empty(),
                Profile.Named.CONE,
                0,
                new Point(x, y),
                Extras.NONE));
    }

    private void spots() {
        features.add(new KeepAway(key(), 1.6, "pet spot", new Point(21.8, 31.4), Extras.NONE));
        features.add(new KeepAway(key(), 0.5, "gas line", line(14.6, 0, 14.6, 8.8), Extras.NONE));
        Outline dry =
                Outline.of(16.4, 40.2, 18.2, 39.6, 20.9, 40, 22.6, 41.2, 22.2, 43, 19.8, 43.4, 17, 43.1, 15.9, 41.6);
        features.add(new Trouble(key(), "thin, dry by noon", OptionalInt.of(4), dry, Extras.NONE));
    }
}
