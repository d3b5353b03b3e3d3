package loamline.soil;

import java.util.Optional;

/** What a nutrient was taken out of the soil with. Values by different extractants are different quantities. */
public enum Extractant {
    MEHLICH_3("Mehlich-3", "m3|mehlichiii"),
    MEHLICH_1("Mehlich-1", "m1|mehlichi|doubleacid"),
    BRAY_P1("Bray P1", "bray1|bray|brayp|brayi|p1"),
    BRAY_P2("Bray P2", "bray2|brayii|p2"),
    OLSEN("Olsen", "olsenp|bicarbonate|nahco3"),
    MORGAN("Morgan", ""),
    MODIFIED_MORGAN("modified Morgan", "mmorgan|mod.morgan|modmorgan"),
    AMMONIUM_ACETATE("ammonium acetate", "nh4oac|aa|1nnh4oac|1nammoniumacetate"),
    AB_DTPA("AB-DTPA", ""),
    DTPA("DTPA", ""),
    RESIN("resin", "ionexchangeresin|aem|resinsheet"),
    /** Water from a saturated paste: what is dissolved, not what is held. */
    PASTE("saturated paste", "paste|saturationextract|saturatedpasteextract|pasteextract");

    private static final Spellings<Extractant> NAMES = Spellings.of(values(), e -> e.label, e -> e.spellings);

    private final String label;
    private final String spellings;

    Extractant(String label, String spellings) {
        this.label = label;
        this.spellings = spellings;
    }

    /** As in files and tables, such as {@code Mehlich-3}. */
    public String label() {
        return label;
    }

    /** What a text names; empty if nothing. */
    public static Optional<Extractant> of(String text) {
        return NAMES.find(text);
    }
}
