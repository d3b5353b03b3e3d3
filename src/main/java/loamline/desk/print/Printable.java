package loamline.desk.print;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.desk.session.Results;
import loamline.sampling.CorePlan;
import loamline.sheets.SheetOptions;
import loamline.sheets.WalkPlan;
import loamline.yard.Yard;
import loamline.yard.Zone;

/**
 * A planned yard, ready to be printed or taken along.
 *
 * @param yard what was planned
 * @param zones its turf
 * @param plan cores and walks
 * @param options paper, units, date and colours of the pages
 * @param image where the image under the yard lies, if it has one that was found
 */
record Printable(Yard yard, List<Zone> zones, CorePlan plan, SheetOptions options, Optional<Path> image) {
    Printable {
        zones = List.copyOf(zones);
    }

    /** The results as pages; empty while the cores are being planned, and for a yard in which none could be. */
    static Optional<Printable> of(Results results, SheetOptions options, Optional<Path> image) {
        return results.plan()
                .filter(plan -> !plan.walks().isEmpty())
                .map(plan -> new Printable(results.yard(), results.zones(), plan, options, image));
    }

    WalkPlan walkPlan() {
        return new WalkPlan(yard, zones, plan, options);
    }
}
