package loamline.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.place.Frame;

/** Small yards for tests. */
public final class YardFixtures {
    private YardFixtures() {}

    public static Yard yard(Feature... features) {
        return Yard.empty("test", Frame.local()).withFeatures(List.of(features));
    }

    public static Turf turf(String zone, double... xy) {
        return turf(zone, Optional.empty(), xy);
    }

    public static Turf turf(String zone, Optional<String> bag, double... xy) {
        return new Turf(
                "turf " + zone + " " + xy[0] + " " + xy[1],
                zone,
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                bag,
                Outline.of(xy),
                Extras.NONE);
    }

    public static Cover cover(Kind kind, double... xy) {
        return new Cover(kind.word() + " " + xy[0] + " " + xy[1], kind, "", Outline.of(xy), Extras.NONE);
    }

    public static Building building(double... xy) {
        return new Building("building " + xy[0] + " " + xy[1], "", 3, 0, Outline.of(xy), Extras.NONE);
    }

    public static Gate gate(double x, double y) {
        return new Gate("gate", new Point(x, y), Extras.NONE);
    }

    /** Corners of an upright rectangle. */
    public static double[] box(double x0, double y0, double x1, double y1) {
        return new double[] {x0, y0, x1, y0, x1, y1, x0, y1};
    }
}
