package loamline.soil;

import java.util.List;

/**
 * Elemental sulfur to lower pH; none at all where the pH does not call for it.
 *
 * @param dosesKgM2 dressings
 * @param years the year of each dressing, the first being 1
 * @param cautions what to know before spreading
 */
public record Sulfur(double kgM2, List<Double> dosesKgM2, List<Integer> years, List<String> cautions) {
    public Sulfur {
        dosesKgM2 = List.copyOf(dosesKgM2);
        years = List.copyOf(years);
        cautions = List.copyOf(cautions);
    }
}
