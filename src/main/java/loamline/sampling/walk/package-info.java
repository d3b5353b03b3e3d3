/**
 * The shortest round through a set of stops, from the distances between them.
 *
 * <p>{@link loamline.sampling.walk.TourSolver} is the way in. It knows distances only: who computes them, round which
 * obstacles and whether every stop can be reached, is settled before. A round starts at stop 0, visits every other
 * stop once and returns. The result always carries a length below which no round can be, so that "shortest" is
 * either proven or bounded:
 *
 * <ul>
 *   <li>up to {@link loamline.sampling.walk.TourSolver#EXACT_STOPS} stops, the start among them: the shortest round,
 *       by dynamic programming, always proven;
 *   <li>beyond: a local search with kicks, then branch and bound on 1-trees under a fixed cap of work. Proven
 *       wherever the tree of cases closes under the cap, which is the rule for yards of up to some seventy stops;
 *       otherwise with the best bound reached.
 * </ul>
 *
 * <p>Of several shortest rounds one is returned, and the same one each time: equal input and seed give an equal tour.
 * A round and its reverse count as one; the direction is chosen so that the second stop has a lower number than the
 * last.
 */
@NullMarked
package loamline.sampling.walk;

import org.jspecify.annotations.NullMarked;
