package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.water.need.Humidity;
import loamline.water.need.MonthClimate;
import loamline.water.need.MonthClimate.Temperature;
import loamline.water.need.Sunshine;

/**
 * The usual weather of a place, a row a month: {@code
 * month,tmin_c,tmax_c,rh_mean,rhmin,rhmax,wind_m_s,wind_height_m,sun_hours,rs_mj,rain_mm,eto_mm_day}.
 *
 * <p>Only {@code month} must be there: 1 to 12, or its English name or the first three letters of it. Humidity in per
 * cent: the range where both ends are known, else the mean, else the greatest. Wind at 2 m unless its height is told.
 * Measured radiation ({@code rs_mj}, MJ/m² a day) goes before hours of sunshine. Of a month given twice the first row
 * counts.
 */
public final class ClimateFile {
    private static final CsvColumn<Month> MONTH = CsvColumn.of(
                    "month", "a month, such as 7 or July", ClimateFile::month)
            .required();
    private static final CsvColumn<Double> T_MIN = CsvColumn.number("tmin_c", Temperature.LEAST_C, Temperature.MOST_C);
    private static final CsvColumn<Double> T_MAX = CsvColumn.number("tmax_c", Temperature.LEAST_C, Temperature.MOST_C);
    private static final CsvColumn<Double> RH_MEAN = CsvColumn.number("rh_mean", 0, 100);
    private static final CsvColumn<Double> RH_MIN = CsvColumn.number("rhmin", 0, 100);
    private static final CsvColumn<Double> RH_MAX = CsvColumn.number("rhmax", 0, 100);
    private static final CsvColumn<Double> WIND = CsvColumn.number("wind_m_s", 0, 50);
    private static final CsvColumn<Double> WIND_HEIGHT = CsvColumn.number("wind_height_m", 1, 100);
    private static final CsvColumn<Double> SUN_HOURS = CsvColumn.number("sun_hours", 0, Sunshine.Hours.MOST);
    private static final CsvColumn<Double> RADIATION = CsvColumn.number("rs_mj", 0, Sunshine.Measured.MOST_MJ_M2);
    private static final CsvColumn<Double> RAIN = CsvColumn.amount("rain_mm");
    private static final CsvColumn<Double> ETO = CsvColumn.amount("eto_mm_day");

    private static final List<CsvColumn<?>> COLUMNS =
            List.of(MONTH, T_MIN, T_MAX, RH_MEAN, RH_MIN, RH_MAX, WIND, WIND_HEIGHT, SUN_HOURS, RADIATION, RAIN, ETO);

    private ClimateFile() {}

    /** The months of a file, in the order of the year; no value if not a single one can be used. */
    public static Read<List<MonthClimate>> read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted. */
    public static Read<List<MonthClimate>> parse(String text) {
        return of(CsvTable.parse(text.getBytes(StandardCharsets.UTF_8), COLUMNS));
    }

    private static Read<List<MonthClimate>> of(CsvTable table) {
        List<Problem> problems = new ArrayList<>(table.problems());
        Map<Month, MonthClimate> year = new EnumMap<>(Month.class);
        for (CsvRow row : table.rows()) {
            Month month = row.need(MONTH);
            if (year.containsKey(month)) {
                problems.add(Problem.warning(
                        "CLIMATE_MONTH_TWICE", row.where(), name(month) + " is given twice: the first row counts"));
            } else if (isUpsideDown(row, T_MIN, T_MAX) || isUpsideDown(row, RH_MIN, RH_MAX)) {
                problems.add(Problem.error(
                        "CLIMATE_RANGE",
                        row.where(),
                        "the least temperature or humidity of " + name(month)
                                + " is above the greatest: exchange or correct them"));
            } else {
                year.put(month, climate(month, row));
            }
        }
        return year.isEmpty() ? Read.failed(problems) : new Read<>(Optional.of(List.copyOf(year.values())), problems);
    }

    private static MonthClimate climate(Month month, CsvRow row) {
        return new MonthClimate(
                month,
                both(row, T_MIN, T_MAX).map(t -> new Temperature(t[0], t[1])),
                humidity(row),
                wind(row),
                row.get(RADIATION)
                        .<Sunshine>map(Sunshine.Measured::new)
                        .or(() -> row.get(SUN_HOURS).map(Sunshine.Hours::new)),
                number(row, RAIN),
                number(row, ETO));
    }

    private static OptionalDouble wind(CsvRow row) {
        double heightM = row.get(WIND_HEIGHT).orElse(2.0);
        return row.get(WIND).stream()
                .mapToDouble(wind -> MonthClimate.windAt2m(wind, heightM))
                .findFirst();
    }

    private static Optional<Humidity> humidity(CsvRow row) {
        return both(row, RH_MIN, RH_MAX)
                .<Humidity>map(rh -> new Humidity.Range(rh[0], rh[1]))
                .or(() -> row.get(RH_MEAN).map(Humidity.Mean::new))
                .or(() -> row.get(RH_MAX).map(Humidity.Greatest::new));
    }

    private static OptionalDouble number(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }

    /** Both numbers; empty if one is missing. */
    private static Optional<double[]> both(CsvRow row, CsvColumn<Double> least, CsvColumn<Double> greatest) {
        return row.get(least).flatMap(low -> row.get(greatest).map(high -> new double[] {low, high}));
    }

    private static boolean isUpsideDown(CsvRow row, CsvColumn<Double> least, CsvColumn<Double> greatest) {
        return both(row, least, greatest).filter(pair -> pair[0] > pair[1]).isPresent();
    }

    private static Optional<Month> month(String text) {
        return Arrays.stream(Month.values())
                .filter(month -> text.equals(String.valueOf(month.getValue()))
                        || text.equalsIgnoreCase(name(month))
                        || text.equalsIgnoreCase(month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)))
                .findFirst();
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
