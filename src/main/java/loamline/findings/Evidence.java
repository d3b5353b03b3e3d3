package loamline.findings;

import java.util.Locale;
import java.util.OptionalDouble;
import loamline.reference.CauseSign;
import loamline.units.UnitSystem;

/**
 * A sign as it was found in an area.
 *
 * @param points what it adds to the cause; below 0 where it speaks against it; 0 where nobody looked
 * @param n cores of the area that could show it
 * @param measured for how many of them, the area as a whole among them, cups were read in the place of a model
 * @param here the area's median; empty where nobody looked
 * @param there the median of the rest of the lawn, if known
 */
public record Evidence(
        CauseSign sign, Stand stand, double points, int n, int measured, OptionalDouble here, OptionalDouble there) {
    /** What a sign says. */
    public enum Stand {
        FOR,
        AGAINST,
        /** Seen, but it tells neither way. */
        OPEN,
        /** Nobody looked. */
        MISSING;

        /** Its name in files and on pages. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** In words, empty if there is nothing to say. */
    public String words(UnitSystem units) {
        String template = switch (stand) {
            case FOR -> sign.seen();
            case AGAINST -> sign.unseen();
            case OPEN -> "";
            case MISSING -> sign.missing();
        };
        return template.replace("{here}", value(here, units))
                .replace("{there}", value(there, units))
                .replace("{level}", value(sign.level(), units))
                .replace("{by}", by());
    }

    /** How the water is known. */
    private String by() {
        if (measured == 0) {
            return "as mapped";
        }
        return measured == n ? "as cups caught it" : "as cups caught it at " + measured + " of " + n + " places";
    }

    private String value(OptionalDouble value, UnitSystem units) {
        return value.isPresent() ? Subject.words(sign.subject(), value.getAsDouble(), units) : "–";
    }
}
