/**
 * Water from heads: the pattern each throws, the rate on every spot, where it misses and how even it is.
 *
 * <p>All of it is an ideal without wind, evaporation and obstacles in the way: only cups measure. Rates are mm/h
 * (a litre on a square metre is a millimetre), azimuths degrees clockwise from north. A head that cannot be
 * understood becomes a problem and is left out; it never makes a number that is none.
 */
@NullMarked
package loamline.water;

import org.jspecify.annotations.NullMarked;
