package loamline.yard;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a feature is. */
public enum Kind {
    BOUNDARY,
    TURF,
    BED,
    BUILDING,
    PAVING,
    GRAVEL,
    WATER,
    DECK,
    FENCE,
    WALL,
    TREE,
    HEAD,
    GATE,
    KEEPAWAY,
    TROUBLE,
    CORE,
    PANEL;

    /** The word in files: the name in small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind for a file's word, in any case; empty if it is none of ours. */
    public static Optional<Kind> of(String word) {
        return Arrays.stream(values())
                .filter(kind -> kind.name().equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
