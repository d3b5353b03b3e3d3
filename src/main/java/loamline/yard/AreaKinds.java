package loamline.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Outline;

/** Outlines taken for another kind of ground. */
public final class AreaKinds {
    /** The kinds that an outline can be taken for. */
    public static final List<Kind> ALL = List.of(
            Kind.TURF,
            Kind.BED,
            Kind.PAVING,
            Kind.GRAVEL,
            Kind.DECK,
            Kind.WATER,
            Kind.BUILDING,
            Kind.TROUBLE,
            Kind.BOUNDARY);

    private AreaKinds() {}

    /** Whether a feature can be taken for another of {@link #ALL}. */
    public static boolean isArea(Feature feature) {
        return feature.kind().filter(ALL::contains).isPresent();
    }

    /**
     * A feature as another kind of ground: key, name, outline and what a file said beyond this stay, all else is usual
     * for the kind. A feature that is no area, or is of the kind already, stays as it is.
     *
     * @throws IllegalArgumentException if the kind is none of {@link #ALL}
     */
    public static Feature as(Kind kind, Feature feature) {
        if (!ALL.contains(kind)) {
            throw new IllegalArgumentException(kind + " is none of " + ALL);
        }
        if (!isArea(feature) || feature.kind().equals(Optional.of(kind))) {
            return feature;
        }
        Outline outline = (Outline) feature.shape().orElseThrow();
        String name = Naming.name(feature).orElse("");
        return made(kind, feature, outline, name);
    }

    private static Feature made(Kind kind, Feature from, Outline outline, String name) {
        String key = from.key();
        Extras extras = from.extras();
        return switch (kind) {
            case TURF ->
                new Turf(
                        key,
                        name.isBlank() ? Turf.DEFAULT_ZONE : name,
                        "",
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        outline,
                        extras);
            case BUILDING -> new Building(key, name, Building.DEFAULT_HEIGHT_M, 0, outline, extras);
            case TROUBLE -> new Trouble(key, name, OptionalInt.empty(), outline, extras);
            case BOUNDARY -> new Boundary(key, name, outline, extras);
            default -> new Cover(key, kind, name, outline, extras);
        };
    }
}
