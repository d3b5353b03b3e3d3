package loamline.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import loamline.files.LogFile;
import loamline.findings.LogRow;
import loamline.findings.Quantity;
import loamline.findings.SoilLayer;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlanner;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;

/** An invented walk: dry and shallow-rooted where water misses, thatch in the south-east of the back lawn, a stone. */
final class CoreLogs {
    /** Where no head reaches. */
    static final Point DRY = new Point(22, 35.8);

    /** Where thatch is thick. */
    static final Point THATCHED = new Point(22.5, 23.5);

    static final String REFUSED = "B5";

    private static final double DRY_M = 4.6;
    private static final double THATCH_M = 5;
    private static final String DAY = "2027-05-18";
    private static final long SEED = 20270518;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private CoreLogs() {}

    /** The list as {@code loamline log} reads it. */
    static String of(Yard yard) {
        CorePlan plan = CorePlanner.plan(yard, PlanOptions.USUAL);
        CoreLogs logs = new CoreLogs();
        List<LogRow> rows = new ArrayList<>();
        for (PlannedCore core : plan.cores()) {
            boolean stands = core.spareOf().equals(Optional.of(REFUSED));
            if (core.spareOf().isEmpty() || stands) {
                rows.add(logs.row(core, rows.size()));
            }
        }
        return LogFile.text(rows);
    }

    private LogRow row(PlannedCore core, int number) {
        boolean dry = core.at().distanceTo(DRY) < DRY_M;
        boolean mat = core.at().distanceTo(THATCHED) < THATCH_M;
        boolean refused = core.id().equals(REFUSED);
        boolean shade = core.zone().equals("Back shade");
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        values.put(Quantity.DEPTH, refused ? 0.055 : 0.15);
        values.put(Quantity.ROOT, centimetres(refused ? 4 : dry ? 4.5 : mat ? 6 : shade ? 9 : 11, 1.2));
        values.put(Quantity.THATCH, Math.rint(normal(mat ? 21 : 8, 2)) / 1000);
        values.put(Quantity.VWC, Math.rint(normal(dry ? 11 : mat ? 21 : shade ? 29 : 25, 2)));
        values.put(Quantity.HARDNESS, 10 * Math.rint(normal(dry ? 24 : 17, 2)) * Quantity.KPA_PER_PSI);
        values.put(Quantity.DROP, Math.max(1, Math.rint(normal(mat ? 6 : 2, 1))));
        values.put(Quantity.QUALITY, Math.rint(normal(dry || mat ? 3.4 : shade ? 5.6 : 6.8, 0.4)));
        List<SoilLayer> layers =
                refused ? List.of() : List.of(new SoilLayer(0, 0.11, "loam"), new SoilLayer(0.11, 0.15, "clay loam"));
        return new LogRow(
                core.id(),
                DAY + String.format(java.util.Locale.ROOT, "T%02d:%02d", 9 + number / 20, 3 * (number % 20)),
                Optional.of(LocalDate.parse(DAY)),
                values,
                refused ? Optional.of("stone") : Optional.empty(),
                dry ? "straw" : "",
                layers,
                dry
                        ? "wilts first"
                        : mat ? "spongy underfoot" : shade && core.at().y() > 35 ? "some moss" : "",
                List.of(),
                Optional.of(core.at()),
                OptionalInt.empty(),
                Map.of());
    }

    private double centimetres(double mean, double sd) {
        return Math.rint(2 * normal(mean, sd)) / 200;
    }

    /** Box and Muller. */
    private double normal(double mean, double sd) {
        double u = 1 - random.nextDouble();
        return mean + sd * Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
