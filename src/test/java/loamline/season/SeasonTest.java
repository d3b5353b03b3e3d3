package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import loamline.account.Account;
import loamline.soil.Element;
import loamline.soil.LabValue;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;

/** From inputs to a plan. Amounts in lb on 1,000 ft² ("M") where the cases are printed so. */
class SeasonTest {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 1);
    private static final List<Product> LIST = List.of(
            Products.of("slow 24-0-8", 24, 0, 8, 45, 0),
            Products.of("urea 46-0-0", 46, 0, 0),
            Products.of("starter 18-24-12", 18, 24, 12, 20, 0),
            Products.of("triple 0-46-0", 0, 46, 0),
            Products.of("sulfate 0-0-50", 0, 0, 50),
            Products.of("lime", 0, 0, 0, 0, 92));

    private static Target nitrogen(String zone, double lb) {
        return new Target(
                zone,
                "Kentucky bluegrass",
                "virginia",
                "medium",
                OptionalDouble.of(lb * LB),
                Target.Seed.NONE,
                0,
                Target.Keeping.USUAL,
                Target.Compost.UNKNOWN,
                2);
    }

    private static Visit visit(int month, double nLb, double p2o5Pct) {
        return new Visit(
                Optional.of(LocalDate.of(2027, month, 15)),
                "theirs",
                List.of(),
                new Visit.Percents(OptionalDouble.of(20), OptionalDouble.of(p2o5Pct), OptionalDouble.of(0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(nLb * LB),
                2);
    }

    private static SeasonInputs inputs(List<LabValue> lab, List<Visit> visits, Target target, SeasonOptions options) {
        Ground lawn = new Ground("Lawn", "Kentucky bluegrass", 400, 400);
        return new SeasonInputs(List.of(lawn), lab, LIST, visits, List.of(target), options);
    }

    private static LabValue lab(Element element, double value, String unit, String extractant, double depthM) {
        return new LabValue(
                "A",
                List.of("Lawn"),
                element,
                value,
                LabValue.Made.of(
                        element,
                        unit,
                        extractant,
                        element == Element.PH ? "water" : "",
                        depthM > 0 ? OptionalDouble.of(depthM) : OptionalDouble.empty()),
                "invented",
                Optional.of(SPRING),
                2);
    }

    private static ZoneSeason only(Season season) {
        return season.zones().get(0);
    }

    @Test
    void aServicesNitrogenIsTakenOffAndTheRestIsOneDose() {
        // derived: target 3.0; service 0.75 + 0.50 + 0.90; 0.85 is left
        List<Visit> visits = List.of(visit(4, 0.75, 0), visit(6, 0.5, 0), visit(9, 0.9, 0));
        Season season = Season.of(inputs(List.of(), visits, nitrogen("Lawn", 3), SeasonOptions.from(SPRING)));
        assertThat(only(season).remaining(Nutrient.N).orElseThrow() / LB).isCloseTo(0.85, within(1e-9));
        assertThat(season.blocking()).isEmpty();
        assertThat(season.tasks()).isNotEmpty();
    }

    @Test
    void aServiceThatGivesMoreThanEnoughLeavesNothingAndItsSurplusIsShown() {
        // derived: target 2.0; service 4 × 0.75: none left, 1.0 over
        List<Visit> visits = List.of(visit(4, 0.75, 5), visit(6, 0.75, 5), visit(8, 0.75, 5), visit(10, 0.75, 5));
        Season season = Season.of(inputs(List.of(), visits, nitrogen("Lawn", 2), SeasonOptions.from(SPRING)));
        assertThat(only(season).remaining(Nutrient.N)).hasValue(0);
        assertThat(only(season).surplus(Nutrient.N).orElseThrow() / LB).isCloseTo(1, within(1e-9));
        assertThat(season.tasks()).isEmpty();
        assertThat(season.purchases()).isEmpty();
        assertThat(season.isOptimal()).isTrue();
    }

    @Test
    void floridaSplitsPhosphateIntoQuarterPounds() {
        // derived: 0.5 lb P2O5 needed, 0.25 at a time, 0.5 a year. MLSN-like need from an invented low test
        List<LabValue> low = List.of(
                lab(Element.P, 14, "ppm", "Mehlich-3", 0.1016), lab(Element.K, 200, "ppm", "Mehlich-3", 0.1016));
        Season season = Season.of(inputs(
                low,
                List.of(),
                nitrogen("Lawn", 2.7),
                SeasonOptions.from(SPRING).in("FL")));
        assertThat(only(season).need().get(Nutrient.P2O5)).isPositive();
        Map<LocalDate, Double> doses = phosphateByDay(season);
        doses.values().forEach(gM2 -> assertThat(gM2 / LB).isLessThanOrEqualTo(0.25));
        assertThat(doses.values().stream().mapToDouble(d -> d).sum() / LB).isLessThanOrEqualTo(0.5);
    }

    private static Map<LocalDate, Double> phosphateByDay(Season season) {
        Map<LocalDate, Double> doses = new java.util.TreeMap<>();
        season.tasks()
                .forEach(task -> doses.merge(
                        task.date(),
                        1000 * task.kgM2() * product(task).percent().p2o5() / 100,
                        Double::sum));
        return doses;
    }

    private static Product product(Task task) {
        return LIST.stream()
                .filter(p -> p.name().equals(task.product()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aValueWithoutDepthOrExtractantBringsNoDose() {
        List<LabValue> vague = List.of(lab(Element.P, 2, "ppm", "", 0.1), lab(Element.K, 5, "ppm", "Mehlich-3", 0));
        Season season = Season.of(inputs(vague, List.of(), nitrogen("Lawn", 2), SeasonOptions.from(SPRING)));
        assertThat(only(season).remaining(Nutrient.P2O5)).isEmpty();
        assertThat(only(season).questions()).anyMatch(q -> q.startsWith("phosphate"));
        season.tasks()
                .forEach(task -> assertThat(product(task).isPhosphateFree()).isTrue());
    }

    @Test
    void whatTheListCannotBringIsNamedAndNothingIsBought() {
        SeasonInputs all = inputs(List.of(), List.of(), nitrogen("Lawn", 2), SeasonOptions.from(SPRING));
        SeasonInputs limeOnly = new SeasonInputs(
                all.grounds(), all.lab(), LIST.subList(5, 6), all.visits(), all.targets(), all.options());
        Season season = Season.of(limeOnly);
        assertThat(season.isOptimal()).isFalse();
        assertThat(season.blocking()).anyMatch(words -> words.contains("nitrogen") && words.contains("price list"));
        assertThat(season.purchases()).isEmpty();
    }

    @Test
    void aZoneWhoseSoilIsSourGetsLimeUnderItsCap() {
        List<LabValue> sour = List.of(
                lab(Element.PH, 5.2, "", "", 0.1016),
                new LabValue(
                        "A",
                        List.of("Lawn"),
                        Element.ACIDITY,
                        6.5,
                        LabValue.Made.of(Element.ACIDITY, "meq/100 g", "", "Mehlich", OptionalDouble.of(0.1016)),
                        "invented",
                        Optional.of(SPRING),
                        3));
        Season season = Season.of(inputs(sour, List.of(), nitrogen("Lawn", 3), SeasonOptions.from(SPRING)));
        List<Task> limed = season.tasks().stream()
                .filter(t -> t.action() == Task.Action.LIME)
                .toList();
        assertThat(limed).isNotEmpty();
        // Penn State: no more than 100 lb/M at a time
        limed.forEach(t -> assertThat(1000 * t.kgM2() / LB).isLessThanOrEqualTo(100));
    }

    @Test
    void shadeIsAsTheTargetsSayElseAsTheSunDoes() {
        // turf that gets less than 6 h of direct sun is in partial shade (W. Reeves, University of Georgia Extension)
        // and gets half of the nitrogen (University of California IPM)
        double open = shadedNeed(Optional.empty(), Map.of());
        assertThat(shadedNeed(Optional.empty(), Map.of("Lawn", 5.9))).isEqualTo(open / 2);
        assertThat(shadedNeed(Optional.empty(), Map.of("Lawn", 6.0))).isEqualTo(open);
        assertThat(shadedNeed(Optional.of(false), Map.of("Lawn", 2.0))).isEqualTo(open);
        assertThat(shadedNeed(Optional.of(true), Map.of("Lawn", 9.0))).isEqualTo(open / 2);
        Account account =
                shaded(Optional.empty(), Map.of("Lawn", 5.9)).accounts().get(Nutrient.N);
        assertThat(account.note()).contains("By the sun study it stands in partial shade");
        assertThat(account.inputs()).containsKey("sun_hours");
        assertThat(shaded(Optional.of(true), Map.of())
                        .accounts()
                        .get(Nutrient.N)
                        .note())
                .contains("list of targets");
    }

    private static double shadedNeed(Optional<Boolean> told, Map<String, Double> sunHours) {
        return shaded(told, sunHours).need().get(Nutrient.N);
    }

    private static ZoneSeason shaded(Optional<Boolean> told, Map<String, Double> sunHours) {
        Target usual = Target.of("Lawn");
        Target target = new Target(
                "Lawn",
                "",
                "virginia",
                "medium",
                OptionalDouble.empty(),
                usual.seed(),
                0,
                new Target.Keeping(false, OptionalDouble.empty(), told, false, ""),
                usual.compost(),
                2);
        SeasonInputs inputs =
                inputs(List.of(), List.of(), target, SeasonOptions.from(SPRING)).withSun(sunHours);
        assertThat(inputs.asksForSun()).isEqualTo(told.isEmpty());
        return only(Season.of(inputs));
    }

    @Test
    void anInterruptedThreadGetsNoPlan() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() ->
                            Season.of(inputs(List.of(), List.of(), nitrogen("Lawn", 3), SeasonOptions.from(SPRING))))
                    .isInstanceOf(CancellationException.class);
        } finally {
            Thread.interrupted();
        }
    }

    @Test
    void theSameInputsGiveTheSamePlan() {
        SeasonInputs inputs = random(11);
        assertThat(Season.of(inputs)).isEqualTo(Season.of(inputs));
    }

    @Test
    void noPlanEverBreaksACapALawOrABlackout() {
        int planned = 0;
        for (long seed = 1; seed <= 150; seed++) {
            SeasonInputs inputs = random(seed);
            Season season = Season.of(inputs);
            planned += season.tasks().isEmpty() ? 0 : 1;
            requireSound(season, "seed " + seed);
        }
        assertThat(planned).isGreaterThan(50);
    }

    /** Adds up a plan's tasks beside the service's visits; knows nothing of plots and slots. */
    private static void requireSound(Season season, String as) {
        Law law = Law.of(season.inputs().options());
        double total = Math.min(LB, law.capGM2("total_n_lb").orElse(LB));
        double quick = Math.min(0.7 * LB, law.capGM2("quick_n_lb").orElse(0.7 * LB));
        for (Task task : season.tasks()) {
            assertThat(task.kg()).as(as).isPositive();
            assertThat(law.bars(task.date())).as(as).isFalse();
            assertThat(task.date())
                    .as(as)
                    .isAfterOrEqualTo(season.inputs().options().from());
            assertNitrogen(season, task, total, as);
            double ours = dose(season, task, p -> p.percent().n() / 100 * (1 - p.slowNPct() / 100));
            double theirs = theirs(season, task, v -> v.quickNGM2().orElse(0));
            assertThat(ours == 0 ? 0 : ours + theirs).as(as).isLessThanOrEqualTo(quick * (1 + 1e-9));
            assertThat(dose(season, task, p -> p.percent().k2o() / 100)).as(as).isLessThanOrEqualTo(LB);
            assertThat(product(task).slowNPct() >= law.leastSlowPct()
                            || product(task).percent().n() == 0)
                    .as(as)
                    .isTrue();
        }
        massBalance(season, as);
    }

    private static void assertNitrogen(Season season, Task task, double cap, String as) {
        double ours = dose(season, task, p -> p.percent().n() / 100);
        double theirs = theirs(season, task, v -> v.gM2(Nutrient.N).orElse(0));
        assertThat(ours == 0 ? 0 : ours + theirs).as(as).isLessThanOrEqualTo(cap * (1 + 1e-9));
    }

    private static double dose(Season season, Task like, ToDoubleFunction<Product> share) {
        return season.tasks().stream()
                .filter(t -> t.zone().equals(like.zone()) && t.date().equals(like.date()))
                .mapToDouble(t -> 1000 * t.kgM2() * share.applyAsDouble(product(t)))
                .sum();
    }

    private static double theirs(Season season, Task task, ToDoubleFunction<Visit> amount) {
        return season.inputs().visits().stream()
                .filter(v -> Math.abs(ChronoUnit.DAYS.between(v.date().orElseThrow(), task.date())) <= 30)
                .mapToDouble(amount)
                .sum();
    }

    /** Bags less what is left are the sum over zones of rate × area, to the gram. */
    private static void massBalance(Season season, String as) {
        for (Purchase purchase : season.purchases()) {
            double spread = season.tasks().stream()
                    .filter(t -> t.product().equals(purchase.name()))
                    .mapToDouble(t -> t.kgM2() * t.areaM2())
                    .sum();
            assertThat(purchase.kg() - purchase.leftoverKg()).as(as).isCloseTo(spread, within(0.001));
            assertThat(purchase.leftoverKg()).as(as).isNotNegative();
        }
    }

    private static SeasonInputs random(long seed) {
        Random random = new Random(seed);
        List<String> regions = List.of("virginia", "illinois", "kansas");
        List<String> states = List.of("MD", "NJ", "NY", "FL", "MN");
        List<Ground> grounds = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        IntStream.range(0, 1 + random.nextInt(4)).forEach(i -> {
            double areaM2 = 30 + 500 * random.nextDouble();
            grounds.add(new Ground("z" + i, "tall fescue", areaM2, areaM2));
            Target usual = nitrogen("z" + i, 3.5 * random.nextDouble());
            targets.add(new Target(
                    usual.zone(),
                    "tall fescue",
                    regions.get(random.nextInt(3)),
                    "medium",
                    usual.nGM2(),
                    usual.seed(),
                    0,
                    usual.keeping(),
                    usual.compost(),
                    2));
        });
        List<Visit> visits = IntStream.range(0, random.nextInt(4))
                .mapToObj(i -> visit(3 + random.nextInt(8), 0.9 * random.nextDouble(), 0))
                .toList();
        SeasonOptions options = SeasonOptions.from(LocalDate.of(2027, 1 + random.nextInt(9), 1));
        return new SeasonInputs(
                grounds,
                List.of(),
                LIST,
                visits,
                targets,
                random.nextBoolean() ? options.in(states.get(random.nextInt(5))) : options);
    }
}
