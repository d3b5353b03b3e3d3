package loamline.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;

/** Collects the features of a demo yard, in the order drawn; keys are f1, f2, … and heads h1, h2, …. */
final class Draft {
    private static final double MM_H_PER_LPM_M2 = 60;

    private final List<Feature> features = new ArrayList<>();
    private int heads;

    List<Feature> features() {
        return List.copyOf(features);
    }

    private String nextKey() {
        return "f" + (features.size() + 1);
    }

    void boundary(String name, Outline outline) {
        features.add(new Boundary(nextKey(), name, outline, Extras.NONE));
    }

    void turf(String zone, String grass, double trouble, double slopePct, Outline outline) {
        features.add(new Turf(
                nextKey(),
                zone,
                grass,
                OptionalDouble.of(trouble),
                OptionalDouble.of(slopePct),
                Optional.empty(),
                outline,
                Extras.NONE));
    }

    void cover(Kind kind, String name, Outline outline) {
        features.add(new Cover(nextKey(), kind, name, outline, Extras.NONE));
    }

    void building(String name, double heightM, double eaveM, Outline outline) {
        features.add(new Building(nextKey(), name, heightM, eaveM, outline, Extras.NONE));
    }

    void barrier(Kind kind, double heightM, boolean solid, List<Barrier.Opening> gates, List<Point> line) {
        features.add(new Barrier(nextKey(), kind, heightM, gates, solid, new Polyline(line), Extras.NONE));
    }

    void deciduous(double crownRadiusM, double heightM, double trunkRadiusM, Point at) {
        tree(crownRadiusM, heightM, trunkRadiusM, false, heightM / 4, at);
    }

    /** An evergreen is branched almost to the ground and lets less light through. */
    void evergreen(double crownRadiusM, double heightM, double trunkRadiusM, Point at) {
        tree(crownRadiusM, heightM, trunkRadiusM, true, 0.5, at);
    }

    private void tree(
            double crownRadiusM, double heightM, double trunkRadiusM, boolean evergreen, double baseM, Point at) {
        features.add(new Tree(
                nextKey(),
                OptionalDouble.of(crownRadiusM),
                OptionalDouble.of(heightM),
                trunkRadiusM,
                evergreen,
                evergreen ? 0.05 : Tree.DEFAULT_TRANSMISSION,
                OptionalDouble.of(baseM),
                false,
                at,
                Extras.NONE));
    }

    /** A head whose flow gives its class's rate on squares of its radius; rates are common practice. */
    void head(String valve, HeadClass headClass, double radiusM, double arcStartDeg, double arcSweepDeg, Point at) {
        double mmH = switch (headClass) {
            case SPRAY -> 40;
            case ROTARY -> 11.5;
            case ROTOR -> 12.5;
        };
        double lpm = mmH / MM_H_PER_LPM_M2 * radiusM * radiusM * arcSweepDeg / 360;
        features.add(new Head(
                nextKey(),
                "h" + ++heads,
                valve,
                Optional.of(headClass),
                OptionalDouble.of(radiusM),
                arcStartDeg,
                arcSweepDeg,
                OptionalDouble.of(Math.rint(lpm * 100) / 100),
                Profile.Named.CONE,
                0.1,
                at,
                Extras.NONE));
    }

    void gate(Point at) {
        features.add(new Gate(nextKey(), at, Extras.NONE));
    }

    void keepAway(double radiusM, String reason, Shape place) {
        features.add(new KeepAway(nextKey(), radiusM, reason, place, Extras.NONE));
    }

    void trouble(String note, int quality, Outline outline) {
        features.add(new Trouble(nextKey(), note, OptionalInt.of(quality), outline, Extras.NONE));
    }

    void window(double heightM, double bottomM, List<Point> base) {
        features.add(new Panel(nextKey(), heightM, bottomM, 0, new Polyline(base), Extras.NONE));
    }
}
