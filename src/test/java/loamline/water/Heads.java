package loamline.water;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Profile;
import loamline.yard.Profile.Named;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** Heads and small yards for tests. */
final class Heads {
    private Heads() {}

    static Head head(String id, Point at, double radiusM, double startDeg, double sweepDeg, double flowLpm) {
        return new Head(
                id,
                id,
                "1",
                Optional.empty(),
                OptionalDouble.of(radiusM),
                startDeg,
                sweepDeg,
                OptionalDouble.of(flowLpm),
                Named.CONE,
                0,
                at,
                Extras.NONE);
    }

    static Head with(Head head, String valve, Profile profile) {
        return new Head(
                head.key(),
                head.id(),
                valve,
                head.headClass(),
                head.radiusM(),
                head.arcStartDeg(),
                head.arcSweepDeg(),
                head.flowLpm(),
                profile,
                head.mountM(),
                head.at(),
                Extras.NONE);
    }

    /** A pattern with nothing in its way, for fields of rates alone. */
    static SprinklerHead alone(HeadPattern pattern) {
        Head head = head("h", pattern.at(), 1, 0, 360, 1);
        return new SprinklerHead(head, pattern, Region.EMPTY, Region.EMPTY, Map.of());
    }

    static Turf turf(String zone, double... outline) {
        return new Turf(
                "turf " + zone,
                zone,
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Outline.of(outline),
                Extras.NONE);
    }

    static Yard yard(List<? extends Feature> features) {
        return Yard.empty("", Frame.local()).withFeatures(List.copyOf(features));
    }
}
