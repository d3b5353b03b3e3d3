package loamline.yard;

import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Changes to zones: to all turf outlines that share a zone's name. A name that no turf has changes nothing. */
public final class ZoneEdits {
    private ZoneEdits() {}

    /** Binds zones to bags; zones that are not named are left as they are. */
    public static Yard bound(Yard yard, Map<String, String> bagByZone) {
        return eachTurf(
                yard,
                turf -> bagByZone.containsKey(turf.zone())
                        ? turf(turf, turf.zone(), turf.grass(), Optional.ofNullable(bagByZone.get(turf.zone())))
                        : turf);
    }

    /** Frees all zones of their bags. */
    public static Yard unbound(Yard yard) {
        return eachTurf(yard, turf -> turf(turf, turf.zone(), turf.grass(), Optional.empty()));
    }

    /** Renames a zone, in the yard's own cores too. The caller sees to it that the name is free. */
    public static Yard renamed(Yard yard, String zone, String name) {
        return yard.withFeatures(yard.features().stream()
                .map(feature -> {
                    if (feature instanceof Core core && core.zone().equals(zone)) {
                        return core.withZone(name);
                    }
                    return feature instanceof Turf turf && turf.zone().equals(zone)
                            ? turf(turf, name, turf.grass(), turf.bag())
                            : feature;
                })
                .toList());
    }

    /** Says what grows in a zone. */
    public static Yard withGrass(Yard yard, String zone, String grass) {
        return eachTurf(yard, turf -> turf.zone().equals(zone) ? turf(turf, zone, grass, turf.bag()) : turf);
    }

    private static Turf turf(Turf turf, String zone, String grass, Optional<String> bag) {
        return new Turf(turf.key(), zone, grass, turf.trouble(), turf.slopePct(), bag, turf.outline(), turf.extras());
    }

    private static Yard eachTurf(Yard yard, UnaryOperator<Turf> change) {
        return yard.withFeatures(yard.features().stream()
                .<Feature>map(feature -> feature instanceof Turf turf ? change.apply(turf) : feature)
                .toList());
    }
}
