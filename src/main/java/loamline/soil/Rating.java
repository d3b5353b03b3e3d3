package loamline.soil;

import java.util.Optional;
import loamline.reference.SoilRange;
import loamline.reference.SoilRange.Band;

/**
 * A value against the guideline made for it.
 *
 * @param standing where it stands; refused with the reason where it cannot be said
 * @param guideline the guideline's short name; empty if none applies
 * @param change against the last test; empty if there is none to compare with
 */
public record Rating(LabValue value, Advice<Standing> standing, String guideline, Optional<Change> change) {
    /**
     * Where a value stands in a range.
     *
     * @param value in the unit of the range
     */
    public record Standing(double value, SoilRange range, Band band) {}

    /** The name of the class, such as {@code optimum}; empty if refused. */
    public Optional<String> name() {
        return standing.value().map(s -> s.band().name());
    }
}
