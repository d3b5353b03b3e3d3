package loamline.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import loamline.reference.NamedRow;
import loamline.soil.Element;
import loamline.soil.Extractant;
import loamline.soil.LabMethod;
import loamline.soil.LabUnit;
import loamline.soil.LabValue;
import loamline.units.Factors;

/**
 * Holds a season's tasks against caps, law, water, tests and the scale, by adding up; shares no code with the planner.
 *
 * <p>Pounds are those on 1,000 ft².
 */
final class PlanAudit {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    /** A window of a service's dose, days before and after. */
    private static final int NEAR_DAYS = 30;
    /** Of a sum of doubles. */
    private static final double ROUNDING = 1e-9;
    /** A need counts as met within this share. */
    private static final double MET = 0.05;
    /** Solving may miss a lower limit by this share. */
    private static final double SOLVED = 1e-5;

    /** Less needs no dose, g/m². */
    private static final double NOTHING_GM2 = 0.05;

    private static final double GRAM_KG = 0.001;

    private final LabSeasons.Case made;
    private final Season season;
    private final Optional<NamedRow> law;
    private final List<String> broken = new ArrayList<>();

    private PlanAudit(LabSeasons.Case made, Season season) {
        this.made = made;
        this.season = season;
        SeasonOptions options = season.inputs().options();
        this.law = options.tables().rows("turf-laws.csv").stream()
                .filter(row -> options.state().filter(row.text("state")::equals).isPresent())
                .findFirst();
    }

    /** What a plan breaks, in words; empty if it is sound. */
    static List<String> broken(LabSeasons.Case made, Season season) {
        PlanAudit audit = new PlanAudit(made, season);
        audit.weights();
        audit.doses().forEach(task -> {
            audit.dates(task);
            audit.caps(task);
            audit.product(task);
            audit.water(task);
        });
        for (int z = 0; z < season.zones().size(); z++) {
            audit.year(season.zones().get(z));
            audit.tested(season.zones().get(z));
        }
        return audit.broken.stream().distinct().toList();
    }

    private void require(boolean holds, String what) {
        if (!holds) {
            broken.add(what);
        }
    }

    private void atMost(String what, double value, double most) {
        require(value <= most * (1 + ROUNDING), what + ": " + value + " above " + most);
    }

    private Stream<Task> doses() {
        return season.tasks().stream().filter(task -> find(task.product()).isPresent());
    }

    private Optional<Product> find(String name) {
        return season.inputs().products().stream()
                .filter(p -> p.name().equals(name))
                .findFirst();
    }

    private Product of(Task task) {
        return find(task.product()).orElseThrow();
    }

    // Bags and kilograms

    private void weights() {
        double cost = 0;
        for (Purchase purchase : season.purchases()) {
            double spread = season.tasks().stream()
                    .filter(t -> t.product().equals(purchase.name()))
                    .mapToDouble(t -> t.kgM2() * t.areaM2())
                    .sum();
            String as = purchase.name();
            double bought = find(as).map(p -> purchase.bags() * p.bagKg()).orElse(purchase.kg());
            require(Math.abs(bought - purchase.leftoverKg() - spread) <= GRAM_KG, as + " does not balance");
            require(
                    purchase.leftoverKg() >= 0 && purchase.usedKg() >= 0 && purchase.bags() >= 0,
                    as + " below nothing");
            cost += find(as).map(p -> purchase.bags() * p.price()).orElse(0.0);
        }
        require(Math.abs(cost - season.cost()) < 1e-9 * (1 + cost), "the cost is not that of the bags");
        season.tasks().forEach(t -> {
            require(t.kg() >= 0 && t.kgM2() >= 0 && t.volumeM3() >= 0, t + " is below nothing");
            require(Math.abs(t.kg() - t.kgM2() * t.areaM2()) <= GRAM_KG, t + " is not rate times area");
        });
        require(season.isOptimal() || doses().findAny().isEmpty(), "doses without a plan");
        doses().forEach(t -> require(t.kg() > 0, t + " is no dose"));
    }

    // The days

    private void dates(Task task) {
        LocalDate from = season.inputs().options().from();
        boolean inSeason = !task.date().isBefore(from) && task.date().getYear() == from.getYear();
        require(inSeason, task.date() + " is not in the season");
        String who = season.inputs().options().professional() ? "pro" : "home";
        law.filter(row -> !row.text(who + "_from").isEmpty()).ifPresent(row -> {
            MonthDay first = MonthDay.parse("--" + row.text(who + "_from"));
            MonthDay last = MonthDay.parse("--" + row.text(who + "_to"));
            // every ban of the table runs over the new year
            MonthDay day = MonthDay.from(task.date());
            require(day.compareTo(last) > 0 && day.compareTo(first) < 0, task.date() + " lies in the ban");
        });
    }

    // A dose

    private void caps(Task task) {
        String as = task.zone() + " on " + task.date() + ", ";
        double n = ours(task, PlanAudit::n);
        double quick = ours(task, PlanAudit::quickN);
        double phosphate = ours(task, PlanAudit::phosphate);
        double potash = ours(task, p -> p.percent().k2o());
        capped(as + "N", n, theirs(task, v -> v.gM2(Nutrient.N)), Math.min(1, lawful("total_n_lb")));
        capped(as + "quick N", quick, theirs(task, Visit::quickNGM2), Math.min(0.7, lawful("quick_n_lb")));
        capped(as + "P2O5", phosphate, theirs(task, v -> v.gM2(Nutrient.P2O5)), lawful("p2o5_dose_lb"));
        capped(as + "K2O", potash, theirs(task, v -> v.gM2(Nutrient.K2O)), 1);
        capped(as + "salt", ours(task, p -> p.saltIndex().orElse(0)), 0, 3.8);
        capped(as + "lime", ours(task, p -> p.percent().cce() > 0 ? 100 : 0), 0, 100);
        capped(as + "sulfur", ours(task, PlanAudit::sulfur), 0, 5);
    }

    private void capped(String what, double ours, double theirs, double mostLb) {
        if (ours > 0) {
            atMost(what, (ours + theirs) / LB, mostLb);
        }
    }

    private static double n(Product product) {
        return product.percent().n();
    }

    private static double quickN(Product product) {
        return product.percent().n() * (100 - product.slowNPct()) / 100;
    }

    /** Up to 0.67 % counts as none: Connecticut PA 12-155. */
    private static double phosphate(Product product) {
        return product.percent().p2o5() > 0.67 ? product.percent().p2o5() : 0;
    }

    private static double sulfur(Product product) {
        return product.form().equals("sulfur") ? product.percent().s() : 0;
    }

    private double lawful(String column) {
        return law.map(row -> row.numberOrNone(column))
                .orElse(OptionalDouble.empty())
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** What our tasks on a zone and day bring, g/m². */
    private double ours(Task like, ToDoubleFunction<Product> pct) {
        return doses().filter(t -> t.zone().equals(like.zone()) && t.date().equals(like.date()))
                .mapToDouble(t -> 10 * t.kgM2() * pct.applyAsDouble(of(t)))
                .sum();
    }

    private double theirs(Task task, java.util.function.Function<Visit, OptionalDouble> gM2) {
        return visits(task.zone())
                .filter(v -> v.date().isPresent()
                        && Math.abs(ChronoUnit.DAYS.between(v.date().get(), task.date())) <= NEAR_DAYS)
                .mapToDouble(v -> gM2.apply(v).orElse(0))
                .sum();
    }

    private Stream<Visit> visits(String zone) {
        return season.inputs().visits().stream()
                .filter(v -> v.zones().isEmpty() || v.zones().contains(zone));
    }

    // A product on a day

    private void product(Task task) {
        Product product = of(task);
        double least =
                law.map(row -> row.numberOrNone("least_slow_pct").orElse(0)).orElse(0.0);
        require(
                product.percent().n() == 0 || product.slowNPct() >= least,
                product.name() + " is too quick for the law");
        if (phosphate(product) > 0
                && law.filter(row -> row.text("p_needs_test").equals("yes")).isPresent()) {
            boolean sown = season.inputs().targets().stream()
                    .anyMatch(t ->
                            t.zone().equals(task.zone()) && t.seed().bareShare().isPresent());
            long months = (long) law.get().numberOrNone("test_months").orElse(1200);
            boolean tested = values(task.zone())
                    .flatMap(v -> v.date().stream())
                    .anyMatch(date -> !date.isAfter(task.date())
                            && !date.plusMonths(months).isBefore(task.date()));
            require(sown || tested, product.name() + " on " + task.date() + " without a test that is young enough");
        }
    }

    // Water

    /** Compares the ground of a task with the lawn's ground away from the pond, summed up in strips. */
    private void water(Task task) {
        int lawn = Integer.parseInt(task.zone().substring(1));
        double setbackM = Factors.M_PER_FT
                * (season.inputs().options().dropSpreader() && lawful("reduced_ft") < Double.POSITIVE_INFINITY
                        ? lawful("reduced_ft")
                        : law.map(row -> row.numberOrNone("setback_ft").orElse(0))
                                .orElse(0.0));
        double away = away(made.lawns().get(lawn), made.pond(), CHORD * setbackM);
        atMost(task.zone() + " near water, m²", task.areaM2(), away + STRIP_ERROR_M2);
    }

    /** A buffer's chords lie inside its arcs by at most 0.12 % of the radius. */
    private static final double CHORD = 0.9988;

    private static final int STRIPS = 2000;
    /** Half a strip of 9 mm at each end of a pond of 9 m. */
    private static final double STRIP_ERROR_M2 = 0.1;

    private static double away(LabSeasons.Box lawn, LabSeasons.Box pond, double setbackM) {
        double widthM = (lawn.east() - lawn.west()) / STRIPS;
        double sum = 0;
        for (int i = 0; i < STRIPS; i++) {
            double x = lawn.west() + (i + 0.5) * widthM;
            double besideM = Math.max(0, Math.max(pond.west() - x, x - pond.east()));
            double reachM = Math.sqrt(Math.max(0, setbackM * setbackM - besideM * besideM));
            double low = Math.max(lawn.south(), pond.south() - reachM);
            double high = Math.min(lawn.north(), pond.north() + reachM);
            double near = besideM > setbackM ? 0 : Math.max(0, high - low);
            sum += widthM * (lawn.north() - lawn.south() - near);
        }
        return sum;
    }

    // A zone's year

    private void year(ZoneSeason zone) {
        double phosphate = inYear(zone, PlanAudit::phosphate);
        capped(zone.name() + ", P2O5 of the year", phosphate, brought(zone, Nutrient.P2O5), lawful("p2o5_year_lb"));
        capped(zone.name() + ", sulfur of the year", inYear(zone, PlanAudit::sulfur), 0, 10);
        double nitrogenLeft = left(zone, Nutrient.N);
        met(zone, Nutrient.N, inYear(zone, PlanAudit::n), 0);
        met(zone, Nutrient.P2O5, phosphate, 0);
        met(zone, Nutrient.K2O, inYear(zone, p -> p.percent().k2o()), nitrogenLeft);
        met(zone, Nutrient.LIME, inYear(zone, p -> p.percent().cce()), 0);
        met(zone, Nutrient.SULFUR, inYear(zone, PlanAudit::sulfur), 0);
        limeIsSpaced(zone);
        boolean treated = doses().anyMatch(t -> t.zone().equals(zone.name()));
        require(
                !treated
                        || nitrogenLeft <= NOTHING_GM2
                        || inYear(zone, PlanAudit::n) >= nitrogenLeft * (1 - MET - SOLVED),
                zone.name() + " is short of nitrogen");
    }

    private void met(ZoneSeason zone, Nutrient nutrient, double spread, double besides) {
        atMost(zone.name() + ", " + nutrient + " of the season", spread, left(zone, nutrient) * (1 + MET) + besides);
    }

    private static double left(ZoneSeason zone, Nutrient nutrient) {
        return Math.max(
                0, zone.need().getOrDefault(nutrient, 0.0) - zone.service().getOrDefault(nutrient, 0.0));
    }

    private double brought(ZoneSeason zone, Nutrient nutrient) {
        return visits(zone.name()).mapToDouble(v -> v.gM2(nutrient).orElse(0)).sum();
    }

    private double inYear(ZoneSeason zone, ToDoubleFunction<Product> pct) {
        return doses().filter(t -> t.zone().equals(zone.name()))
                .mapToDouble(t -> 10 * t.kgM2() * pct.applyAsDouble(of(t)))
                .sum();
    }

    private void limeIsSpaced(ZoneSeason zone) {
        List<LocalDate> days = doses().filter(t -> t.zone().equals(zone.name()))
                .filter(t -> of(t).percent().cce() > 0)
                .map(Task::date)
                .distinct()
                .sorted()
                .toList();
        for (int i = 1; i < days.size(); i++) {
            require(!days.get(i).isBefore(days.get(i - 1).plusMonths(4)), zone.name() + " is limed too soon again");
        }
    }

    // What a dose rests on

    /** Nothing is needed, and so nothing spread, for what no sound value speaks of. */
    private void tested(ZoneSeason zone) {
        basis(zone, Nutrient.P2O5, sound(zone, Element.P));
        basis(zone, Nutrient.K2O, sound(zone, Element.K));
        basis(
                zone,
                Nutrient.SULFUR,
                water(zone) && values(zone.name(), Element.PH).allMatch(PlanAudit::isDeep));
        basis(zone, Nutrient.GYPSUM, sound(zone, Element.NA));
        boolean buffered = Stream.concat(values(zone.name(), Element.BUFFER_PH), values(zone.name(), Element.ACIDITY))
                .anyMatch(v -> isDeep(v) && hasUnit(v) && v.made().method().isPresent());
        basis(zone, Nutrient.LIME, water(zone) && buffered);
    }

    private void basis(ZoneSeason zone, Nutrient nutrient, boolean sound) {
        require(
                sound || zone.need().getOrDefault(nutrient, 0.0) == 0,
                zone.name() + " gets " + nutrient + " for nothing");
    }

    private boolean water(ZoneSeason zone) {
        return values(zone.name(), Element.PH)
                .anyMatch(v -> v.made().method().filter(LabMethod.WATER::equals).isPresent());
    }

    private boolean sound(ZoneSeason zone, Element element) {
        return values(zone.name(), element)
                .anyMatch(v -> isDeep(v)
                        && hasUnit(v)
                        && Extractant.of(v.made().extractantText()).isPresent());
    }

    private static boolean isDeep(LabValue value) {
        return value.made().depthM().isPresent();
    }

    private static boolean hasUnit(LabValue value) {
        return value.element() == Element.BUFFER_PH
                || LabUnit.of(value.made().unitText()).isPresent();
    }

    private Stream<LabValue> values(String zone) {
        return season.inputs().lab().stream().filter(v -> v.zones().contains(zone));
    }

    private Stream<LabValue> values(String zone, Element element) {
        return values(zone).filter(v -> v.element() == element);
    }
}
