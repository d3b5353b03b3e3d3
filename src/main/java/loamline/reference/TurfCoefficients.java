package loamline.reference;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Source;

/**
 * How much water a mown turf uses, month by month, over the reference evapotranspiration.
 *
 * @param grass name of the group, in small letters
 * @param byMonth twelve factors, January first, each 0 or more
 */
public record TurfCoefficients(String grass, List<Double> byMonth, Source source) {
    public TurfCoefficients {
        byMonth = List.copyOf(byMonth);
        if (byMonth.size() != 12) {
            throw new IllegalArgumentException("byMonth has " + byMonth.size() + " factors, not 12");
        }
        for (double factor : byMonth) {
            if (!(factor >= 0 && Double.isFinite(factor))) {
                throw new IllegalArgumentException("byMonth has a factor " + factor + ": must be 0 or more");
            }
        }
    }

    /** The published rows, in the table's order. */
    public static List<TurfCoefficients> published() {
        return PublishedTable.rows("turf-coefficients.csv").stream()
                .map(row -> new TurfCoefficients(row.text("grass"), byMonth(row), row.source()))
                .toList();
    }

    private static List<Double> byMonth(NamedRow row) {
        return Arrays.stream(Month.values())
                .map(month -> row.number(
                        month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH).toLowerCase(Locale.ROOT)))
                .toList();
    }

    /** The published row of a group of grasses, whatever its case; empty if the table has none of that name. */
    public static Optional<TurfCoefficients> of(String grass) {
        return published().stream()
                .filter(row -> row.grass.equalsIgnoreCase(grass.strip()))
                .findFirst();
    }

    /** Factor of a month. */
    public double of(Month month) {
        return byMonth.get(month.getValue() - 1);
    }
}
