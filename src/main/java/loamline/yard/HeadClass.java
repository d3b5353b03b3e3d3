package loamline.yard;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a head throws. */
public enum HeadClass {
    SPRAY,
    ROTARY,
    ROTOR;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The class for a file's word, in any case. */
    public static Optional<HeadClass> of(String word) {
        return Arrays.stream(values())
                .filter(c -> c.name().equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
