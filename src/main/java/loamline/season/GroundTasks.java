package loamline.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loamline.reference.TurfTables.Grass;
import loamline.units.Factors;

/** Coring, compost, seed and wetting agent. */
record GroundTasks(SeasonInputs inputs) {
    /** In the middle of 15 to 30 holes a square foot: Kansas State University. */
    private static final double HOLES_M2 = 20 / Factors.M2_PER_FT2;
    /** A machine with holes 4 in apart both ways. */
    private static final double ONE_PASS_M2 = Quantities.holesM2(4 * Factors.M_PER_IN, 4 * Factors.M_PER_IN);
    /** Best by the end of September, from mid August on: North Carolina Cooperative Extension. */
    private static final MonthDay COOL = MonthDay.of(9, 1);
    /** Mid April to mid May: University of California IPM. */
    private static final MonthDay WARM = MonthDay.of(5, 1);
    /** Cores come days before seed. */
    private static final int CORE_BEFORE_DAYS = 1;

    List<Task> tasks(List<ZoneSeason> zones) {
        List<Task> tasks = new ArrayList<>();
        zones.forEach(zone -> add(zone, tasks));
        return tasks;
    }

    private void add(ZoneSeason zone, List<Task> tasks) {
        Target target = zone.target();
        LocalDate day = day(zone);
        if (target.keeping().core() || target.topdressMm() > 0) {
            tasks.add(core(zone, day.minusDays(CORE_BEFORE_DAYS)));
        }
        if (target.topdressMm() > 0) {
            tasks.add(topdress(zone, day));
        }
        new SeedTask(inputs, zone, day).task().ifPresent(tasks::add);
        inputs.products().stream()
                .filter(product ->
                        product.name().equalsIgnoreCase(target.keeping().wettingAgent()))
                .filter(product -> product.labelGM2().isPresent())
                .findFirst()
                .ifPresent(product -> tasks.add(wetting(zone, product)));
    }

    /** When the ground is opened, covered or sown. */
    LocalDate day(ZoneSeason zone) {
        LocalDate day =
                (isWarm(zone) ? WARM : COOL).atYear(inputs.options().from().getYear());
        return day.isBefore(inputs.options().from()) ? inputs.options().from() : day;
    }

    static boolean isWarm(ZoneSeason zone) {
        return zone.grass().map(Grass::group).filter("warm"::equals).isPresent();
    }

    private static Task core(ZoneSeason zone, LocalDate day) {
        int passes = Quantities.passes(HOLES_M2, ONE_PASS_M2);
        return new Task(
                day,
                zone.name(),
                Task.Action.CORE,
                zone.ground().netM2(),
                "",
                0,
                0,
                0,
                passes,
                OptionalDouble.empty(),
                String.format(
                        Locale.ROOT,
                        "about %.0f holes on a square foot in %d passes of a machine that makes 9 on it in one; half an"
                                + " inch wide, they open %.1f %% of the ground",
                        HOLES_M2 * Factors.M2_PER_FT2,
                        passes,
                        100 * Quantities.openedShare(HOLES_M2, Factors.M_PER_IN / 2)),
                List.of(
                        "Water one or two days before; core moist ground, never wet.",
                        "Call the utility locating service; mark heads, shallow lines and dog fences."));
    }

    private static Task topdress(ZoneSeason zone, LocalDate day) {
        double depthM = zone.target().topdressMm() / 1000;
        OptionalDouble p2o5 = Quantities.compostP2o5GM2(depthM, zone.target().compost());
        String phosphorus = p2o5.isPresent()
                ? String.format(
                        Locale.ROOT,
                        "It brings %.1f g P2O5 to a square metre, which is taken off the need and counts for the law.",
                        p2o5.getAsDouble())
                : "Compost brings phosphorus and can break a phosphorus law: ask for its P, moisture and weight before"
                        + " ordering.";
        return new Task(
                day,
                zone.name(),
                Task.Action.TOPDRESS,
                zone.ground().netM2(),
                "compost",
                0,
                0,
                Quantities.volumeM3(zone.ground().netM2(), depthM),
                1,
                OptionalDouble.empty(),
                String.format(Locale.ROOT, "%.1f mm deep, worked into the core holes", 1000 * depthM),
                List.of(phosphorus, "Screened to 3/8 in, matching the soil below; no thick layer."));
    }

    private Task wetting(ZoneSeason zone, Product product) {
        double kgM2 = product.labelGM2().orElse(0) / 1000;
        return new Task(
                inputs.options().from(),
                zone.name(),
                Task.Action.WETTING_AGENT,
                zone.ground().netM2(),
                product.name(),
                kgM2,
                kgM2 * zone.ground().netM2(),
                0,
                1,
                OptionalDouble.empty(),
                "the label's rate on the zone's area",
                List.of("Never above the label's rate; test again after two to three weeks."));
    }
}
