package loamline.soil;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loamline.reference.NamedRow;
import loamline.reference.Origin;
import loamline.reference.SoilTables;

/**
 * A share of the exchange beside the range that is published for it.
 *
 * @param share a cation whose value is per cent of the capacity, or {@code Mg:K}, whose value is a ratio
 * @param low least of the range, in it
 * @param high largest of the range, in it; empty where there is no upper end
 * @param guideline who published it
 */
public record Saturation(String share, double value, double low, OptionalDouble high, String guideline, Origin origin) {
    private static final String RATIO = "Mg:K";

    /** Where a value stands in its range. */
    public enum Place {
        BELOW,
        WITHIN,
        ABOVE
    }

    public Place place() {
        if (value < low) {
            return Place.BELOW;
        }
        return value > high.orElse(Double.POSITIVE_INFINITY) ? Place.ABOVE : Place.WITHIN;
    }

    /**
     * The shares for which a range is published: the one made for the extractant, else one that names no extractant; in
     * the order Ca, Mg, K, Mg:K.
     */
    static List<Saturation> of(Exchange exchange, SoilTables tables) {
        return Stream.of(Element.CA.key(), Element.MG.key(), Element.K.key(), RATIO)
                .flatMap(share -> value(exchange, share).stream()
                        .flatMap(value -> row(exchange, share, tables).stream().map(row -> of(row, value, tables))))
                .toList();
    }

    private static Saturation of(NamedRow row, double value, SoilTables tables) {
        return new Saturation(
                row.text("share"),
                value,
                row.number("low"),
                row.numberOrNone("high"),
                row.text("guideline"),
                tables.origin(row));
    }

    private static Optional<Double> value(Exchange exchange, String share) {
        if (share.equals(RATIO)) {
            double potassium = exchange.saturationPct(Element.K);
            return potassium > 0 ? Optional.of(exchange.saturationPct(Element.MG) / potassium) : Optional.empty();
        }
        return Element.of(share).map(exchange::saturationPct);
    }

    private static Optional<NamedRow> row(Exchange exchange, String share, SoilTables tables) {
        List<NamedRow> rows = tables.rows("base-saturation.csv").stream()
                .filter(row -> row.text("share").equals(share))
                .toList();
        return made(rows, exchange.extractant().label()).or(() -> made(rows, ""));
    }

    private static Optional<NamedRow> made(List<NamedRow> rows, String test) {
        return rows.stream().filter(row -> row.text("test").equals(test)).findFirst();
    }
}
