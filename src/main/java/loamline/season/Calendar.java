package loamline.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loamline.reference.NamedRow;
import loamline.reference.TurfTables.Grass;
import loamline.units.Factors;

/** The dates of a zone: published windows of grass and region, without the days that a law bars. */
record Calendar(SeasonOptions options, Law law) {
    /** Doses of up to a full cap follow each other no faster than monthly: Purdue University. */
    static final int SPACING_DAYS = 28;

    /** Warm-season grass gets no nitrogen later than so long before the first killing frost: University of Georgia. */
    private static final int BEFORE_FROST_MONTHS = 1;

    /**
     * A date.
     *
     * @param mostNGM2 nitrogen that the window allows
     * @param slowOnly whether nitrogen must be slow, since it is hot
     * @param growth growth potential; 1 where no temperature is told
     */
    record Day(LocalDate date, double mostNGM2, boolean slowOnly, double growth, NamedRow window) {}

    /** In order of time. */
    List<Day> days(Grass grass, String region, double needGM2) {
        double needLb = needGM2 / Factors.G_M2_PER_LB_1000FT2;
        List<Day> spaced = new ArrayList<>();
        options.tables().rows("turf-windows.csv", grass, region).stream()
                .filter(row -> needLb > row.number("above_lb") || row.number("above_lb") == 0)
                .map(row -> day(row, grass))
                .filter(day -> !day.date().isBefore(options.from()) && !law.bars(day.date()))
                .filter(day -> pause(grass, region, day.date()).isEmpty())
                .sorted(Comparator.comparing(Day::date))
                .forEach(day -> {
                    if (spaced.isEmpty()
                            || ChronoUnit.DAYS.between(
                                            spaced.get(spaced.size() - 1).date(), day.date())
                                    >= SPACING_DAYS) {
                        spaced.add(day);
                    }
                });
        return spaced;
    }

    /** Why a grass should get no nitrogen on a day though no law bars it, with the source; empty if nothing is said against it. */
    Optional<String> pause(Grass grass, String region, LocalDate day) {
        return options.tables().rows("turf-pauses.csv", grass, region).stream()
                .filter(row -> DaysOfYear.of(row.text("from"), row.text("to")).holds(day))
                .map(row -> row.text("words") + " ("
                        + options.tables().origin(row).source().citation() + ")")
                .findFirst()
                .or(() -> frost(grass, day));
    }

    private Optional<String> frost(Grass grass, LocalDate day) {
        return options.firstFrost()
                .map(frost -> frost.atYear(day.getYear()).minusMonths(BEFORE_FROST_MONTHS))
                .filter(last -> grass.group().equals("warm") && day.isAfter(last))
                .map(last -> "the last by " + last + ", a month before the first killing frost ("
                        + options.tables().source("uga-792").citation() + ")");
    }

    /** Why there is no date, in words. */
    String noDay(Grass grass, String region) {
        List<NamedRow> rows = options.tables().rows("turf-windows.csv", grass, region);
        if (rows.isEmpty()) {
            return "no calendar is held for " + grass.name() + " in “" + region + "”: take a region out of "
                    + String.join(", ", options.tables().regions());
        }
        return rows.stream().map(row -> day(row, grass).date()).anyMatch(law::bars)
                ? "the law's blackout leaves no date of the calendar"
                : "the calendar has no date after " + options.from() + " in its year, and before frost";
    }

    private Day day(NamedRow row, Grass grass) {
        LocalDate date =
                MonthDay.parse("--" + row.text("day")).atYear(options.from().getYear());
        double growth = Optional.ofNullable(options.meanC().get(date.getMonth()))
                .map(GrowthPotential.of(grass.group())::at)
                .orElse(1.0);
        return new Day(
                date,
                Quantities.gM2(row.number("most_lb")),
                row.text("slow_only").equals("yes"),
                growth,
                row);
    }

    /**
     * An amount shared over dates in proportion to what each may take and to growth, none above what it may take.
     *
     * @param most of each date
     * @param growth of each, at least {@link GrowthPotential#VERY_LITTLE} of which counts
     */
    static List<Double> shared(double total, List<Double> most, List<Double> growth) {
        List<Double> shares = new ArrayList<>(java.util.Collections.nCopies(most.size(), 0.0));
        double left = total;
        for (int round = 0; round < most.size() && left > 0; round++) {
            double weight = 0;
            for (int i = 0; i < most.size(); i++) {
                weight += shares.get(i) < most.get(i) ? weight(most, growth, i) : 0;
            }
            double unit = weight == 0 ? 0 : left / weight;
            for (int i = 0; i < most.size(); i++) {
                double more = Math.min(unit * weight(most, growth, i), most.get(i) - shares.get(i));
                shares.set(i, shares.get(i) + more);
                left -= more;
            }
        }
        return shares;
    }

    private static double weight(List<Double> most, List<Double> growth, int i) {
        return most.get(i) * Math.max(GrowthPotential.VERY_LITTLE, growth.get(i));
    }
}
