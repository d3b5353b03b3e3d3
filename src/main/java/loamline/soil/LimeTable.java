package loamline.soil;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/**
 * A published table of lime rates by a reading and a target pH.
 *
 * <p>How to read between rows is not published; here it is a straight line between the two rows. A reading beyond the
 * acid end has no rate; what lies beyond the other end is the caller's to say.
 *
 * @param rows by reading, rising
 */
public record LimeTable(List<NamedRow> rows) {
    public LimeTable {
        rows = List.copyOf(rows);
    }

    /** The table of a method, such as {@code penn-state}. */
    public static LimeTable of(SoilTables tables, String method) {
        return new LimeTable(tables.rows("lime-tables.csv").stream()
                .filter(row -> row.text("method").equals(method))
                .sorted(Comparator.comparingDouble(LimeTable::reading))
                .toList());
    }

    private static double reading(NamedRow row) {
        return row.number("reading");
    }

    /** The SMP table's column of pure, fine CaCO₃ to pH 7.0; the others are of agricultural limestone. */
    static final String PURE_TO_7 = "pure_to_7.0";

    /** What organic soil is limed to. */
    static final double ORGANIC_TARGET_PH = 5.2;

    /** The SMP table's column of agricultural limestone on organic soil. */
    static final String ORGANIC_TO_5_2 = "organic_to_5.2";

    /** The name of a target's column, such as {@code to_6.5}. */
    static String column(double targetPh) {
        return String.format(Locale.ROOT, "to_%.1f", targetPh);
    }

    /** Whether it has a column for a target. */
    public boolean reaches(double targetPh) {
        return has(column(targetPh));
    }

    /** Whether it has a column of a name. */
    boolean has(String column) {
        return rows.stream().anyMatch(row -> !row.text(column).isEmpty());
    }

    double least() {
        return reading(rows.get(0));
    }

    double most() {
        return reading(rows.get(rows.size() - 1));
    }

    /** The rate in the table's unit; empty outside its readings or targets. */
    public OptionalDouble rate(double reading, double targetPh) {
        return rate(reading, column(targetPh));
    }

    /** The same from a column by its name. */
    OptionalDouble rate(double reading, String column) {
        if (!has(column) || reading < least() - SAME_READING || reading > most() + SAME_READING) {
            return OptionalDouble.empty();
        }
        int upper = 0;
        while (upper < rows.size() - 1 && reading(rows.get(upper)) < reading - SAME_READING) {
            upper++;
        }
        double above = rows.get(upper).number(column);
        double toUpper = reading(rows.get(upper)) - reading;
        if (toUpper <= SAME_READING || upper == 0) {
            return OptionalDouble.of(above);
        }
        double below = rows.get(upper - 1).number(column);
        double share = toUpper / (reading(rows.get(upper)) - reading(rows.get(upper - 1)));
        return OptionalDouble.of(above + share * (below - above));
    }

    /** Readings this close are one: binary rounding of a tenth. */
    private static final double SAME_READING = 1e-9;
}
