package loamline.desk.tool;

import loamline.desk.session.Selection;
import loamline.units.UnitSystem;
import loamline.yard.Yard;

/**
 * What a tool can see.
 *
 * @param yard the current yard, without any motion under way
 * @param selection what is selected
 * @param units how lengths are shown, and how bare numbers are read
 * @param metresPerPx ground to a logical pixel; reaches are kept in pixels
 */
public record Surroundings(Yard yard, Selection selection, UnitSystem units, double metresPerPx) {}
