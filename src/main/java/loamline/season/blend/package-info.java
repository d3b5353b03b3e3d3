/**
 * Which materials, in how many whole bags, and how much of each on which ground at which date: a mixed-integer program and
 * an independent check of what came out.
 *
 * <p>{@link loamline.season.blend.Blend} is the task in numbers; it knows nothing of law or agronomy. {@link
 * loamline.season.blend.Blocking} says which rule stands in the way where nothing will do, {@link
 * loamline.season.blend.BagSolver} finds the cheapest bags, {@link loamline.season.blend.DoseSpreader} lays them out over
 * plots and dates, and {@link loamline.season.blend.BlendCheck} tests the outcome by adding up, without any of them.
 *
 * <p>Result semantics: amounts are kilograms, 0 or more. No upper limit is exceeded, and none is missed from below by more
 * than {@link loamline.season.blend.Blend#TOLERANCE} of its size: solving works with limits that are tighter by as much. A
 * blend that asks for nothing gives no bag. The same blend gives the same result.
 */
@NullMarked
package loamline.season.blend;

import org.jspecify.annotations.NullMarked;
