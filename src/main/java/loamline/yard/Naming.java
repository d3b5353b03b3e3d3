package loamline.yard;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What features are called. */
public final class Naming {
    private Naming() {}

    /** The name somebody gave: zone, name, note, reason or id; empty for a feature that cannot have one. */
    public static Optional<String> name(Feature feature) {
        if (feature instanceof Turf turf) {
            return Optional.of(turf.zone());
        } else if (feature instanceof Cover cover) {
            return Optional.of(cover.name());
        } else if (feature instanceof Building building) {
            return Optional.of(building.name());
        } else if (feature instanceof Boundary boundary) {
            return Optional.of(boundary.name());
        } else if (feature instanceof Trouble trouble) {
            return Optional.of(trouble.note());
        } else if (feature instanceof KeepAway keepAway) {
            return Optional.of(keepAway.reason());
        } else if (feature instanceof Head head) {
            return Optional.of(head.id());
        }
        return Optional.empty();
    }

    /** The feature under another name; as it is if it cannot have one. */
    public static Feature renamed(Feature feature, String name) {
        if (feature instanceof Turf turf) {
            return turf.withZone(name);
        } else if (feature instanceof Cover cover) {
            return cover.withName(name);
        } else if (feature instanceof Building building) {
            return building.withName(name);
        } else if (feature instanceof Boundary boundary) {
            return boundary.withName(name);
        } else if (feature instanceof Trouble trouble) {
            return trouble.withNote(name);
        } else if (feature instanceof KeepAway keepAway) {
            return keepAway.withReason(name);
        } else if (feature instanceof Head head) {
            return head.withId(name);
        }
        return feature;
    }

    /** What to call a feature in a line of words: "Back lawn", "head h3", "fence". */
    public static String called(Feature feature) {
        String name = name(feature).orElse("");
        String kind = kind(feature);
        if (name.isBlank()) {
            return kind;
        }
        return feature instanceof Head ? kind + " " + name : name;
    }

    /** What to call some features together: the one's name, or "3 things". */
    public static String called(Yard yard, Set<String> keys) {
        return keys.size() == 1
                ? yard.feature(keys.iterator().next()).map(Naming::called).orElse("nothing")
                : keys.size() + " things";
    }

    /** The first of h1, h2, … that no head has. */
    static String freeHeadId(Yard yard) {
        Set<String> taken = yard.all(Head.class).map(Head::id).collect(Collectors.toSet());
        int n = 1;
        while (taken.contains("h" + n)) {
            n++;
        }
        return "h" + n;
    }

    /** The name, or the word, that its owner gave it; blank if there is none. */
    public static String given(Feature feature) {
        return feature instanceof Core core ? core.id() : name(feature).orElse("");
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
