package loamline.yard;

import java.util.Locale;

/** What features are called on screen and in sentences. */
public final class Naming {
    private Naming() {}

    /** The name, or the word, that its owner gave it; blank if there is none. */
    public static String given(Feature feature) {
        if (feature instanceof Boundary boundary) {
            return boundary.name();
        } else if (feature instanceof Turf turf) {
            return turf.zone();
        } else if (feature instanceof Cover cover) {
            return cover.name();
        } else if (feature instanceof Building building) {
            return building.name();
        } else if (feature instanceof Head head) {
            return head.id();
        } else if (feature instanceof Core core) {
            return core.id();
        } else if (feature instanceof KeepAway spot) {
            return spot.reason();
        } else if (feature instanceof Trouble trouble) {
            return trouble.note();
        }
        return "";
    }

    /** What it is, in words: {@code keep-away spot}. */
    public static String kind(Feature feature) {
        return feature.kind().map(Naming::kind).orElse("feature of another program");
    }

    /** A kind in words. */
    public static String kind(Kind kind) {
        return switch (kind) {
            case BOUNDARY -> "property line";
            case KEEPAWAY -> "keep-away spot";
            case TROUBLE -> "trouble spot";
            default -> kind.word();
        };
    }

    /** Its name, or what it is with a capital where it has none: a heading. */
    public static String title(Feature feature) {
        String name = given(feature).strip();
        String kind = kind(feature);
        return name.isEmpty() ? kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1) : name;
    }
}
