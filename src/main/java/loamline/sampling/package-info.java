/**
 * Where to take cores and how to walk to them.
 *
 * <p>{@code CorePlanner} is the way in: a yard and options in, a {@link
 * loamline.sampling.CorePlan} out. The kernels live one floor further in: {@code strata} divides ground into
 * parts of equal area, {@code walk} finds the shortest round.
 */
@NullMarked
package loamline.sampling;

import org.jspecify.annotations.NullMarked;
