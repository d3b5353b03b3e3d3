package loamline.soil;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/**
 * Sulfur that brings a soil to the table's base pH, read by a straight line between rows. What brings it to another pH is
 * the difference of two readings.
 *
 * @param rows by pH, rising
 */
record SulfurTable(List<NamedRow> rows) {
    /** To pH 4.5, from 7.0 down; attributed to Michigan State University. */
    static final String STRONG = "A";
    /** To pH 6.5, from 8.5 down; from memory of the Western Fertilizer Handbook. */
    static final String ALKALINE = "B";

    static SulfurTable of(SoilTables tables, String table) {
        return new SulfurTable(tables.rows("sulfur-rates.csv").stream()
                .filter(row -> row.text("table").equals(table))
                .sorted(Comparator.comparingDouble(SulfurTable::ph))
                .toList());
    }

    private static double ph(NamedRow row) {
        return row.number("ph");
    }

    /** lb of sulfur an acre that bring a soil from one pH to a lower one; empty where the table does not reach. */
    OptionalDouble lbAcre(double fromPh, double toPh, Texture.Group group) {
        OptionalDouble from = toBase(fromPh, group);
        OptionalDouble to = toBase(toPh, group);
        return from.isEmpty() || to.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, from.getAsDouble() - to.getAsDouble()));
    }

    private OptionalDouble toBase(double soilPh, Texture.Group group) {
        String column = group.name().toLowerCase(java.util.Locale.ROOT) + "_lb_acre";
        for (int i = 1; i < rows.size(); i++) {
            double low = ph(rows.get(i - 1));
            double high = ph(rows.get(i));
            if (soilPh >= low && soilPh <= high) {
                double share = (soilPh - low) / (high - low);
                double below = rows.get(i - 1).number(column);
                return OptionalDouble.of(below + share * (rows.get(i).number(column) - below));
            }
        }
        return OptionalDouble.empty();
    }
}
