/**
 * Compact strata of equal area, and where in them the cores go.
 *
 * <p>{@link loamline.sampling.strata.Ground} is the eligible ground of one zone as equal square cells; {@link
 * loamline.sampling.strata.EqualAreaStrata} divides it into {@link loamline.sampling.strata.Strata}; {@link
 * loamline.sampling.strata.CorePlacement} puts one core in each, {@link loamline.sampling.strata.Spares} the
 * stand-ins; {@link loamline.sampling.strata.CoreDistance} measures how far the ground lies from its cores.
 *
 * <p>What comes out:
 *
 * <ul>
 *   <li>Every cell belongs to exactly one stratum. Strata differ by at most one cell, whatever the ground looks
 *       like: a composite of equal plugs is then an unweighted mean of the ground.
 *   <li>Strata are compact, and in one piece where that costs little: see {@link
 *       loamline.sampling.strata.Strata#broken()} for those that are not.
 *   <li>A core lies on a cell of its own stratum.
 *   <li>The same ground, number and seed give the same strata. Moving the ground does not change them.
 * </ul>
 */
@NullMarked
package loamline.sampling.strata;

import org.jspecify.annotations.NullMarked;
