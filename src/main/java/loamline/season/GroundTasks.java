package loamline.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
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
    /** Seedlings need so many days before the first killing frost: from memory of extension practice. */
    private static final int COOL_BEFORE_FROST_DAYS = 45;

    private static final int WARM_BEFORE_FROST_DAYS = 60;
    /** No grass does well in less sun: W. Reeves, University of Georgia Extension (second-hand), hours a day. */
    private static final double LEAST_SUN_H = 4;
    /** Cores come days before seed. */
    private static final int CORE_BEFORE_DAYS = 1;

    List<Task> tasks(List<ZoneSeason> zones) {
        List<Task> tasks = new ArrayList<>();
        zones.forEach(zone -> add(zone, tasks));
        return tasks;
    }

    private void add(ZoneSeason zone, List<Task> tasks) {
        Target target = zone.target();
        boolean sown = target.seed().bareShare().isPresent();
        LocalDate day = day(zone);
        if (target.keeping().core() || target.topdressMm() > 0) {
            tasks.add(core(zone, day.minusDays(CORE_BEFORE_DAYS)));
        }
        if (target.topdressMm() > 0) {
            tasks.add(topdress(zone, day));
        }
        if (sown && zone.grass().isPresent()) {
            tasks.addAll(seed(zone, zone.grass().get(), day));
        }
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

    private static boolean isWarm(ZoneSeason zone) {
        return zone.grass().map(Grass::group).filter("warm"::equals).isPresent();
    }

    /** Which of the grasses sown want more sun than the zone gets; empty if none does, or the sun was not looked at. */
    private Optional<String> shade(ZoneSeason zone, List<Target.Part> mix) {
        double hours = inputs.sunHours().getOrDefault(zone.name(), Double.POSITIVE_INFINITY);
        List<String> wanting = mix.stream()
                .filter(part -> hours < row(part, "least_sun_h").orElse(0))
                .map(part -> String.format(
                        Locale.ROOT,
                        "%s wants %.0f h",
                        part.grass(),
                        row(part, "least_sun_h").orElse(0)))
                .toList();
        String rather = hours < LEAST_SUN_H ? "no grass does well here: change the use" : "sow one that bears shade";
        return wanting.isEmpty()
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%.1f h of direct sun a day, and %s: %s.",
                        hours,
                        String.join(", ", wanting),
                        rather));
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
                        "about %.0f holes on a square foot in %d passes of a machine that makes 9 on it in one",
                        HOLES_M2 * Factors.M2_PER_FT2,
                        passes),
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

    private List<Task> seed(ZoneSeason zone, Grass own, LocalDate day) {
        Target.Seed seed = zone.target().seed();
        List<Target.Part> mix = seed.mix().isEmpty() ? List.of(new Target.Part(own.name(), 100)) : seed.mix();
        OptionalDouble rate = newRateGM2(mix);
        if (rate.isEmpty()) {
            return List.of();
        }
        double live = seed.purityPct().isPresent() && seed.germinationPct().isPresent()
                ? Quantities.pureLive(
                        seed.purityPct().getAsDouble(), seed.germinationPct().getAsDouble())
                : 1;
        double kgM2 =
                Quantities.overseedRate(rate.getAsDouble(), seed.bareShare().orElse(0)) / 1000 / live;
        String name = mix.stream().map(GroundTasks::part).collect(Collectors.joining(", "));
        return List.of(new Task(
                day,
                zone.name(),
                Task.Action.SEED,
                zone.ground().netM2(),
                name,
                kgM2,
                kgM2 * zone.ground().netM2(),
                0,
                2,
                OptionalDouble.of(Quantities.panG(kgM2, Task.PAN_M2)),
                String.format(
                        Locale.ROOT,
                        "%.0f %% of the ground bare at the full rate, the rest at half of it",
                        100 * seed.bareShare().orElse(0)),
                cautions(zone, mix, live, day)));
    }

    private static String part(Target.Part part) {
        return part.pct() == 100
                ? part.grass() + " seed"
                : String.format(Locale.ROOT, "%.0f %% %s seed", part.pct(), part.grass());
    }

    private List<String> cautions(ZoneSeason zone, List<Target.Part> mix, double live, LocalDate day) {
        List<String> cautions = new ArrayList<>();
        cautions.add("Half one way, half across it. Keep moist until it is up.");
        cautions.add("No pre-emergent herbicide before: read its label for the time to wait.");
        shade(zone, mix).ifPresent(cautions::add);
        int before = isWarm(zone) ? WARM_BEFORE_FROST_DAYS : COOL_BEFORE_FROST_DAYS;
        inputs.options()
                .firstFrost()
                .map(frost -> frost.atYear(day.getYear()).minusDays(before))
                .filter(day::isAfter)
                .ifPresent(last -> cautions.add("Too near to the first frost: sow by " + last + ", " + before
                        + " days before it (from memory of extension practice), or wait."));
        if (live == 1) {
            cautions.add("Weight of pure live seed: divide by purity and germination of the tag.");
        }
        return cautions;
    }

    /** Rate of a new lawn, the parts' rates weighed by their shares, g/m²; empty if one is not known. */
    private OptionalDouble newRateGM2(List<Target.Part> mix) {
        double lb = 0;
        for (Target.Part part : mix) {
            OptionalDouble low = row(part, "new_low_lb");
            OptionalDouble high = row(part, "new_high_lb");
            if (low.isEmpty() || high.isEmpty()) {
                return OptionalDouble.empty();
            }
            lb += part.pct() / 100 * (low.getAsDouble() + high.getAsDouble()) / 2;
        }
        return OptionalDouble.of(Quantities.gM2(lb));
    }

    private OptionalDouble row(Target.Part part, String column) {
        return inputs.options()
                .tables()
                .grass(part.grass())
                .map(grass -> grass.row().numberOrNone(column))
                .orElse(OptionalDouble.empty());
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
