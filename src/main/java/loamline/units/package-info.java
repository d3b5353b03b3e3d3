/**
 * Lengths, areas, angles, rates: what people type and what they read, in US customary and metric.
 *
 * <p>Everything in Loamline is stored as a {@code double} in the unit that stands in its name ({@code lengthM},
 * {@code flowLpm}); {@link loamline.units.Measure} says which unit that is and which others are understood. Two doors
 * lead in and out: {@link loamline.units.Parsing} and {@link loamline.units.Formatting}.
 *
 * <p>Result semantics:
 *
 * <ul>
 *   <li>What cannot be read is a value, {@link loamline.units.ParseResult.Refused}, that says where and what would be
 *       accepted. Parsing throws nothing, and never returns NaN, an infinity or a negative zero.
 *   <li>Both systems are understood at all times; the {@link loamline.units.UnitSystem} decides only what a bare number
 *       means and which unit is shown.
 *   <li>Formatting depends on no locale ('.' for decimals, ',' between thousands), never shows {@code -0}, and takes
 *       finite numbers only: "no value" is the caller's to show.
 *   <li>Reading back what was formatted gives the value to within half a unit of the last digit shown.
 * </ul>
 */
@NullMarked
package loamline.units;

import org.jspecify.annotations.NullMarked;
