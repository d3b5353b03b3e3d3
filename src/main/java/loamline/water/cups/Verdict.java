package loamline.water.cups;

import java.util.Locale;

/** What the cups say of a head. */
public enum Verdict {
    /** Nothing against it. */
    OK,
    /** It gives clearly less than its share. */
    WEAK,
    /** It gives clearly more than its share. */
    STRONG,
    /** Its arc does not lie where the map has it: turned, or shorter. */
    TURNED,
    /** The cups cannot tell. */
    UNSURE;

    /** The word in files and on pages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether somebody should go and look at the head. */
    public boolean isFault() {
        return this == WEAK || this == STRONG || this == TURNED;
    }
}
