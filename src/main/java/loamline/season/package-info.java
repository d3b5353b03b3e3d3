/**
 * A season: what each zone needs, less what another company applies, bought in whole bags and laid out over dates.
 *
 * <p>{@link loamline.season.Season#of} is the way in. It takes a yard's zones as {@link loamline.season.Ground}, what a
 * laboratory found, a price list, a ledger and targets; it may run for a while and is given up by interrupting its thread.
 *
 * <p>Result semantics:
 *
 * <ul>
 *   <li>A need that is not known is missing, never 0, and the zone's questions say what to fill in. Nothing is spread for
 *       it.
 *   <li>What is left to spread is never below 0; what a service brings beyond the need is shown as surplus.
 *   <li>A plan meets every known need within 5 %, keeps every cap of a dose together with the service's doses of the same
 *       weeks, uses no date that a law bars, and is tested by {@link loamline.season.blend.BlendCheck} before it is
 *       given. Of all such plans it costs the least.
 *   <li>Where there is no such plan, the rules in the way are named and no product is in the tasks.
 * </ul>
 */
@NullMarked
package loamline.season;

import org.jspecify.annotations.NullMarked;
