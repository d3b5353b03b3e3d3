package loamline.sampling;

import java.util.List;
import loamline.account.Problem;
import loamline.sampling.CorePlan.Walk;

/**
 * A walk and the cores it meets.
 *
 * @param spots cores in the order of the walk
 * @param problems cores that cannot be reached, and why
 */
record Round(Walk walk, List<Draft.Spot> spots, List<Problem> problems) {}
