/**
 * Where the sun stands, what shades the turf, and how many hours of direct sun each cell of it gets.
 *
 * <p>From a place and dates to the {@link loamline.sun.SunPath positions of the sun}, from a yard to its {@link
 * loamline.sun.Casters shadow casters}, from both to {@link loamline.sun.SunHours hours of sun}, classes of them, and the
 * light of a clear day; and where flat panels throw the {@link loamline.sun.Glare sun's reflection}.
 *
 * <p>Assumptions, everywhere: the ground is level and the horizon flat, at 0°; the sun is a point, without refraction by
 * the air; nothing but what the yard's features say casts a shadow. Result semantics: hours are means over the chosen
 * dates; a cell is its middle; a middle on the edge of a shadow is shaded. Morning is while the sun stands in the east.
 */
@NullMarked
package loamline.sun;

import org.jspecify.annotations.NullMarked;
