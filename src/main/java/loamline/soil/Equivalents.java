package loamline.soil;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/**
 * Weights that carry the same charge.
 *
 * @param byElement ppm that make 1 meq/100 g, by the element's key
 */
record Equivalents(Map<String, Double> byElement) {
    static Equivalents of(SoilTables tables) {
        return new Equivalents(tables.rows("soil-equivalents.csv").stream()
                .collect(Collectors.toMap(row -> row.text("element"), Equivalents::weight)));
    }

    private static double weight(NamedRow row) {
        return row.number("ppm_per_meq");
    }

    /** ppm that make 1 meq/100 g; empty for what carries no charge here. */
    Optional<Double> ppmPerMeq(Element element) {
        return Optional.ofNullable(byElement.get(element.key()));
    }
}
