package loamline.desk.ui;

import java.util.Optional;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.KeepAway;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** A yard whose owner likes long names. */
final class LongNames {
    static final int LENGTH = 40;

    private static final String TAIL = ", beyond the old orchard wall by the lower pond";

    private LongNames() {}

    /** The same yard, everything with a name having one of {@value #LENGTH} characters; equal names stay equal. */
    static Yard in(Yard yard) {
        return yard.withName(lengthened(yard.name()))
                .withFeatures(yard.features().stream().map(LongNames::named).toList());
    }

    private static Feature named(Feature feature) {
        if (feature instanceof Turf f) {
            Optional<String> bag = f.bag().map(LongNames::lengthened);
            return new Turf(
                    f.key(),
                    lengthened(f.zone()),
                    lengthened(f.grass()),
                    f.trouble(),
                    f.slopePct(),
                    bag,
                    f.outline(),
                    f.extras());
        } else if (feature instanceof Building f) {
            return new Building(f.key(), lengthened(f.name()), f.heightM(), f.eaveM(), f.outline(), f.extras());
        } else if (feature instanceof Cover f) {
            return new Cover(f.key(), f.cover(), lengthened(f.name()), f.outline(), f.extras());
        } else if (feature instanceof Boundary f) {
            return new Boundary(f.key(), lengthened(f.name()), f.outline(), f.extras());
        } else if (feature instanceof KeepAway f) {
            return new KeepAway(f.key(), f.radiusM(), lengthened(f.reason()), f.place(), f.extras());
        } else if (feature instanceof Trouble f) {
            return new Trouble(f.key(), lengthened(f.note()), f.quality(), f.outline(), f.extras());
        }
        return feature;
    }

    private static String lengthened(String name) {
        return (name + TAIL).substring(0, LENGTH);
    }
}
