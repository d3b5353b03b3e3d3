package loamline.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.season.blend.Plot;
import loamline.season.blend.Quantity;
import loamline.season.blend.Range;
import loamline.season.blend.Slot;

/** From a zone's needs to a plot: what it must get, and what each date allows. */
final class PlotPlanner {
    /** A need counts as met within this share: ±5 %, University of Massachusetts, rotary spreader calibration. */
    static final double MET = 0.05;
    /** A service's dose counts together with ours for so many days. */
    static final int WINDOW_DAYS = 30;
    /** Dressings of lime lie so far apart. */
    private static final int LIME_MONTHS = 4;
    /** A date that can take less nitrogen is not worth a round of the spreader: 0.25 lb/1,000 ft², own rule, g/m². */
    private static final double LEAST_N_GM2 = Quantities.gM2(0.25);
    /** Less is no need that a spreader can meet: about 0.01 lb/1,000 ft², own rule, g/m². */
    private static final double NOTHING_GM2 = 0.05;

    private final SeasonInputs inputs;
    private final List<Product> products;
    private final Law law;
    private final Caps caps;
    private final Calendar calendar;

    PlotPlanner(SeasonInputs inputs, List<Product> products) {
        this.inputs = inputs;
        this.products = products;
        this.law = Law.of(inputs.options());
        this.caps = Caps.of(inputs.options(), law);
        this.calendar = new Calendar(inputs.options(), law);
    }

    /** The plot of a zone; empty if nothing is left to spread, its ground is too near to water or has no calendar. */
    Optional<Plot> plot(ZoneSeason zone) {
        if (zone.ground().treatedM2() <= 0 || zone.grass().isEmpty() || isContent(zone)) {
            return Optional.empty();
        }
        List<Calendar.Day> days = days(zone);
        if (days.isEmpty()) {
            return Optional.empty();
        }
        List<Slot> slots = slots(zone, days);
        return Optional.of(new Plot(zone.name(), zone.ground().treatedM2(), season(zone, slots), slots));
    }

    private static boolean isContent(ZoneSeason zone) {
        return Arrays.stream(Nutrient.values())
                .allMatch(nutrient -> zone.remaining(nutrient).orElse(0) <= NOTHING_GM2);
    }

    List<Calendar.Day> days(ZoneSeason zone) {
        return zone.grass()
                .map(grass -> calendar.days(
                        grass,
                        NitrogenNeed.region(zone.target(), inputs.options()),
                        zone.need().getOrDefault(Nutrient.N, 0.0)))
                .orElse(List.of());
    }

    /** Why a zone should get no nitrogen on a day; empty if the calendar says nothing against it. */
    Optional<String> pause(ZoneSeason zone, LocalDate day) {
        return zone.grass()
                .flatMap(grass -> calendar.pause(grass, NitrogenNeed.region(zone.target(), inputs.options()), day));
    }

    /** Why a zone that needs something gets no plot; empty if it has one or needs nothing. */
    Optional<String> unplanned(ZoneSeason zone) {
        if (isContent(zone) || zone.grass().isEmpty()) {
            return Optional.empty();
        }
        if (zone.ground().treatedM2() <= 0) {
            return Optional.of("all of it lies nearer to water than the law's setback");
        }
        return days(zone).isEmpty()
                ? zone.grass().map(grass -> calendar.noDay(grass, NitrogenNeed.region(zone.target(), inputs.options())))
                : Optional.empty();
    }

    private List<Slot> slots(ZoneSeason zone, List<Calendar.Day> days) {
        List<Map<Quantity, Double>> most =
                days.stream().map(day -> most(zone, day)).toList();
        List<Double> wanted = Calendar.shared(
                zone.remaining(Nutrient.N).orElse(0),
                most.stream()
                        .map(m -> m.getOrDefault(Quantity.N, 0.0))
                        .map(n -> n < LEAST_N_GM2 ? 0 : n)
                        .toList(),
                days.stream().map(Calendar.Day::growth).toList());
        Set<LocalDate> limed = limeDates(days);
        return IntStream.range(0, days.size())
                .mapToObj(i -> new Slot(
                        days.get(i).date(),
                        most.get(i),
                        usable(zone, days.get(i), limed.contains(days.get(i).date())),
                        wanted.get(i)))
                .toList();
    }

    /** The first date and each that is far enough from the one before. */
    private static Set<LocalDate> limeDates(List<Calendar.Day> days) {
        List<LocalDate> dates = new ArrayList<>();
        for (Calendar.Day day : days) {
            if (dates.isEmpty()
                    || !day.date().isBefore(dates.get(dates.size() - 1).plusMonths(LIME_MONTHS))) {
                dates.add(day.date());
            }
        }
        return Set.copyOf(dates);
    }

    /** What a dose of ours may bring: the caps, less what the service brings in the same weeks. */
    private Map<Quantity, Double> most(ZoneSeason zone, Calendar.Day day) {
        Map<Quantity, Double> most = new EnumMap<>(Quantity.class);
        most.putAll(caps.mostGM2());
        most.merge(Quantity.N, day.mostNGM2(), Math::min);
        less(
                most,
                Quantity.N,
                theirs(zone, day.date(), visit -> visit.gM2(Nutrient.N).orElse(0)));
        less(
                most,
                Quantity.QUICK_N,
                theirs(zone, day.date(), visit -> visit.quickNGM2().orElse(0)));
        less(
                most,
                Quantity.P2O5,
                theirs(zone, day.date(), visit -> visit.gM2(Nutrient.P2O5).orElse(0)) + compost(zone, day.date()));
        less(
                most,
                Quantity.K2O,
                theirs(zone, day.date(), visit -> visit.gM2(Nutrient.K2O).orElse(0)));
        zone.sample()
                .flatMap(s -> s.sulfur().value())
                .flatMap(s -> s.dosesKgM2().stream().findFirst())
                .ifPresent(kg -> most.put(Quantity.SULFUR, 1000 * kg));
        return most;
    }

    private static void less(Map<Quantity, Double> most, Quantity quantity, double theirs) {
        most.computeIfPresent(quantity, (q, cap) -> Math.max(0, cap - theirs));
    }

    private double theirs(ZoneSeason zone, LocalDate day, Function<Visit, Double> amount) {
        return inputs.visits().stream()
                .filter(visit -> visit.isOn(zone.name()))
                .filter(visit -> visit.date()
                        .filter(date -> Math.abs(ChronoUnit.DAYS.between(date, day)) <= WINDOW_DAYS)
                        .isPresent())
                .mapToDouble(amount::apply)
                .sum();
    }

    private double compost(ZoneSeason zone, LocalDate day) {
        LocalDate laid = new GroundTasks(inputs).day(zone);
        return Math.abs(ChronoUnit.DAYS.between(laid, day)) <= WINDOW_DAYS ? zone.compostGM2(Nutrient.P2O5) : 0;
    }

    private Set<Integer> usable(ZoneSeason zone, Calendar.Day day, boolean lime) {
        boolean phosphorus = phosphorus(zone, day.date());
        return IntStream.range(0, products.size())
                .filter(p -> usable(products.get(p), day, lime, phosphorus))
                .boxed()
                .collect(Collectors.toSet());
    }

    private boolean usable(Product product, Calendar.Day day, boolean lime, boolean phosphorus) {
        boolean nitrogen = product.percent().n() > 0;
        return (lime || product.percent().cce() == 0)
                && (phosphorus || product.isPhosphateFree())
                && !(nitrogen && day.slowOnly() && !product.isSlow())
                && !(nitrogen && product.slowNPct() < law.leastSlowPct());
    }

    boolean phosphorus(ZoneSeason zone, LocalDate day) {
        boolean needed = zone.remaining(Nutrient.P2O5).orElse(0) > NOTHING_GM2;
        return needed
                && law.allowsPhosphorus(
                        day,
                        zone.sample().flatMap(s -> s.date()),
                        zone.target().seed().bareShare().isPresent());
    }

    private Map<Quantity, Range> season(ZoneSeason zone, List<Slot> slots) {
        double nitrogen = zone.remaining(Nutrient.N).orElse(0);
        Map<Quantity, Range> season = new EnumMap<>(Quantity.class);
        for (Nutrient nutrient : Nutrient.values()) {
            season.put(nutrient.quantity(), met(zone.remaining(nutrient).orElse(0)));
        }
        season.put(Quantity.P2O5, phosphate(zone, slots));
        // potash beside nitrogen does no harm as long as it is no more than the nitrogen: own rule
        Range potash = met(zone.remaining(Nutrient.K2O).orElse(0));
        season.put(Quantity.K2O, new Range(potash.least(), potash.most() + nitrogen));
        season.put(Quantity.LIME, lime(zone.remaining(Nutrient.LIME).orElse(0), slots));
        season.put(Quantity.SULFUR, sulfur(zone.remaining(Nutrient.SULFUR).orElse(0), slots));
        return season;
    }

    private static Range met(double gM2) {
        return gM2 <= NOTHING_GM2 ? Range.atMost(0) : new Range(gM2 * (1 - MET), gM2 * (1 + MET));
    }

    private Range phosphate(ZoneSeason zone, List<Slot> slots) {
        if (slots.stream().noneMatch(slot -> phosphorus(zone, slot.date()))) {
            return Range.atMost(0);
        }
        double year = law.capGM2("p2o5_year_lb").orElse(Double.POSITIVE_INFINITY)
                - zone.service().getOrDefault(Nutrient.P2O5, 0.0)
                - zone.compostGM2(Nutrient.P2O5);
        Range left = met(Math.min(zone.remaining(Nutrient.P2O5).orElse(0), year));
        return new Range(left.least(), Math.min(left.most(), Math.max(0, year)));
    }

    /** What of the sulfur the season's dates can bring; never more than the need, which the year's cap may have set. */
    private static Range sulfur(double gM2, List<Slot> slots) {
        double most = slots.stream()
                .mapToDouble(slot -> slot.mostGM2().getOrDefault(Quantity.SULFUR, 0.0))
                .sum();
        double now = Math.min(gM2, most);
        return new Range(now * (1 - MET), now);
    }

    /** What of the lime the season's dressings can bring; the rest waits for the next. */
    private Range lime(double gM2, List<Slot> slots) {
        double best = products.stream()
                .mapToDouble(p -> p.percent().cce() / 100)
                .max()
                .orElse(0);
        double cap = caps.mostGM2().getOrDefault(Quantity.LIME_WEIGHT, Double.POSITIVE_INFINITY);
        long dressings = slots.stream()
                .filter(slot -> slot.materials().stream()
                        .anyMatch(p -> products.get(p).percent().cce() > 0))
                .count();
        return met(best == 0 ? gM2 : Math.min(gM2, dressings * cap * best));
    }
}
