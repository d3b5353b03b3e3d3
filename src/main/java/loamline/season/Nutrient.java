package loamline.season;

import loamline.season.blend.Quantity;

/** What ground needs in a season and a service may have brought. */
public enum Nutrient {
    N("N", "nitrogen", Quantity.N),
    P2O5("P2O5", "phosphate", Quantity.P2O5),
    K2O("K2O", "potash", Quantity.K2O),
    LIME("lime", "lime", Quantity.LIME),
    SULFUR("sulfur", "sulfur", Quantity.SULFUR),
    GYPSUM("gypsum", "gypsum", Quantity.GYPSUM);

    private final String key;
    private final String word;
    private final Quantity quantity;

    Nutrient(String key, String word, Quantity quantity) {
        this.key = key;
        this.word = word;
        this.quantity = quantity;
    }

    /** As files name it; lime counts as pure CaCO₃. */
    public String key() {
        return key;
    }

    public String word() {
        return word;
    }

    Quantity quantity() {
        return quantity;
    }
}
