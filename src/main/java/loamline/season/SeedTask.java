package loamline.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.reference.TurfTables.Grass;

/** Sowing a zone on a day. */
record SeedTask(SeasonInputs inputs, ZoneSeason zone, LocalDate day) {
    /** Half one way, half across it. */
    private static final int PASSES = 2;
    /** Seedlings need so many days before the first killing frost: from memory of extension practice. */
    private static final int COOL_BEFORE_FROST_DAYS = 45;

    private static final int WARM_BEFORE_FROST_DAYS = 60;
    /** No grass does well in less sun: W. Reeves, University of Georgia Extension (second-hand), hours a day. */
    private static final double LEAST_SUN_H = 4;

    /** Empty if nothing is sown, or a rate is not held. */
    Optional<Task> task() {
        if (zone.target().seed().bareShare().isEmpty()) {
            return Optional.empty();
        }
        List<Target.Part> mix = mix();
        OptionalDouble rate = newRateGM2(mix);
        return mix.isEmpty() || rate.isEmpty() ? Optional.empty() : Optional.of(task(mix, rate.getAsDouble()));
    }

    /** What is sown: the mix that is told, else the zone's own grass; empty if that is not known. */
    private List<Target.Part> mix() {
        List<Target.Part> told = zone.target().seed().mix();
        return told.isEmpty()
                ? zone.grass().map(Grass::name).map(own -> new Target.Part(own, 100)).stream()
                        .toList()
                : told;
    }

    private Task task(List<Target.Part> mix, double newRateGM2) {
        double bare = zone.target().seed().bareShare().orElse(0);
        double kgM2 = Quantities.overseedRate(newRateGM2, bare) / 1000 / live().orElse(1);
        return new Task(
                day,
                zone.name(),
                Task.Action.SEED,
                zone.ground().netM2(),
                mix.stream().map(SeedTask::words).collect(Collectors.joining(", ")),
                kgM2,
                kgM2 * zone.ground().netM2(),
                0,
                PASSES,
                OptionalDouble.of(Quantities.panG(kgM2, Task.PAN_M2)),
                String.format(
                                Locale.ROOT,
                                "%.0f %% of the ground bare at the full rate, the rest at half of it",
                                100 * bare)
                        + byCount(mix).map(counts -> "; by count " + counts).orElse(""),
                cautions(mix));
    }

    private OptionalDouble live() {
        Target.Seed seed = zone.target().seed();
        return seed.purityPct().isPresent() && seed.germinationPct().isPresent()
                ? OptionalDouble.of(Quantities.pureLive(
                        seed.purityPct().getAsDouble(), seed.germinationPct().getAsDouble()))
                : OptionalDouble.empty();
    }

    private static String words(Target.Part part) {
        return part.pct() == 100
                ? part.grass() + " seed"
                : String.format(Locale.ROOT, "%.0f %% %s seed", part.pct(), part.grass());
    }

    /** Shares of a mix by count of seeds; empty for a single grass, or where seeds in a pound are not held. */
    private Optional<String> byCount(List<Target.Part> mix) {
        List<Double> seeds = mix.stream()
                .flatMapToDouble(part -> cell(part, "seeds_lb").stream())
                .boxed()
                .toList();
        if (mix.size() < 2 || seeds.size() < mix.size()) {
            return Optional.empty();
        }
        List<Double> counts =
                Quantities.byCount(mix.stream().map(Target.Part::pct).toList(), seeds);
        return Optional.of(IntStream.range(0, mix.size())
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "%.0f %% %s",
                        100 * counts.get(i),
                        mix.get(i).grass()))
                .collect(Collectors.joining(", ")));
    }

    private List<String> cautions(List<Target.Part> mix) {
        List<String> cautions = new ArrayList<>();
        cautions.add("Half one way, half across it. Keep moist until it is up.");
        cautions.add("No pre-emergent herbicide before: read its label for the time to wait.");
        shade(mix).ifPresent(cautions::add);
        frost().ifPresent(cautions::add);
        if (live().isEmpty()) {
            cautions.add("Weight of pure live seed: divide by purity and germination of the tag.");
        }
        return cautions;
    }

    private Optional<String> frost() {
        int before = GroundTasks.isWarm(zone) ? WARM_BEFORE_FROST_DAYS : COOL_BEFORE_FROST_DAYS;
        return inputs.options()
                .firstFrost()
                .map(frost -> frost.atYear(day.getYear()).minusDays(before))
                .filter(day::isAfter)
                .map(last -> "Too near to the first frost: sow by " + last + ", " + before
                        + " days before it (from memory of extension practice), or wait.");
    }

    /** Which of the grasses sown want more sun than the zone gets; empty if none does, or the sun was not looked at. */
    private Optional<String> shade(List<Target.Part> mix) {
        double hours = inputs.sunHours().getOrDefault(zone.name(), Double.POSITIVE_INFINITY);
        List<String> wanting = mix.stream()
                .filter(part -> hours < cell(part, "least_sun_h").orElse(0))
                .map(part -> String.format(
                        Locale.ROOT,
                        "%s wants %.0f h",
                        part.grass(),
                        cell(part, "least_sun_h").orElse(0)))
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

    /** Rate of a new lawn, the parts' rates weighed by their shares, g/m²; empty if one is not known. */
    private OptionalDouble newRateGM2(List<Target.Part> mix) {
        double lb = 0;
        for (Target.Part part : mix) {
            OptionalDouble low = cell(part, "new_low_lb");
            OptionalDouble high = cell(part, "new_high_lb");
            if (low.isEmpty() || high.isEmpty()) {
                return OptionalDouble.empty();
            }
            lb += part.pct() / 100 * (low.getAsDouble() + high.getAsDouble()) / 2;
        }
        return OptionalDouble.of(Quantities.gM2(lb));
    }

    private OptionalDouble cell(Target.Part part, String column) {
        return inputs.options()
                .tables()
                .grass(part.grass())
                .map(grass -> grass.row().numberOrNone(column))
                .orElse(OptionalDouble.empty());
    }
}
