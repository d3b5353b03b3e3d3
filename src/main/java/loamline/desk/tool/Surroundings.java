package loamline.desk.tool;

import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.sampling.CorePlan;
import loamline.units.UnitSystem;
import loamline.yard.Yard;

/**
 * What a tool can see.
 *
 * @param yard the current yard, without any motion under way
 * @param selection what is selected
 * @param units how lengths are shown, and how bare numbers are read
 * @param metresPerPx ground to a logical pixel; reaches are kept in pixels
 * @param plan the core plan of that yard; empty while it is being made
 */
public record Surroundings(
        Yard yard, Selection selection, UnitSystem units, double metresPerPx, Optional<CorePlan> plan) {
    /** Without a plan of the cores. */
    public Surroundings(Yard yard, Selection selection, UnitSystem units, double metresPerPx) {
        this(yard, selection, units, metresPerPx, Optional.empty());
    }
}
