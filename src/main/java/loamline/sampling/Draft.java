package loamline.sampling;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.Merge;
import loamline.sampling.CorePlan.Stratum;

/** A core plan before it is walked and numbered. */
record Draft(List<Bag> bags, List<Merge> merges, List<Problem> problems) {
    /**
     * A bag without its numbers.
     *
     * @param name its letter
     * @param zones names of its zones
     */
    record Bag(
            String name,
            List<String> zones,
            double areaM2,
            double eligibleM2,
            OptionalDouble stratumAreaCv,
            OptionalDouble mssdM2,
            List<Stratum> strata,
            List<Spot> spots) {
        /** Where the cores are. */
        List<Point> places() {
            return spots.stream().map(Spot::at).toList();
        }

        /** The same bag with its cores elsewhere. */
        Bag with(List<Spot> changed, OptionalDouble changedMssdM2) {
            return new Bag(name, zones, areaM2, eligibleM2, stratumAreaCv, changedMssdM2, strata, changed);
        }
    }

    /**
     * A core without its number.
     *
     * @param stratum from 1 within the bag; 0 if none
     * @param spares where to go if it is refused, best first
     * @param id the id it keeps, if it has one already
     */
    record Spot(String zone, int stratum, Point at, List<Point> spares, Optional<String> id) {}
}
