package loamline.soil;

import java.util.Locale;
import java.util.Optional;

/** The units that laboratories print. */
public enum LabUnit {
    /** Milligrams in a kilogram of dry soil. */
    PPM("ppm", "mg/kg|mgkg-1|ug/g|g/t"),
    /** Of what is in the soil: pounds in the 2,000,000 lb on an acre 6 2/3 in deep. */
    LB_ACRE("lb/acre", "lb/a|lbs/acre|lbs/a|lb/ac|lbs/ac|pp2m"),
    /** Of what is in the soil: kilograms in the same slice on a hectare. */
    KG_HA("kg/ha", "kgha-1"),
    /** Milligrams in a litre of dried, ground soil as it lies in the laboratory's scoop. */
    MG_DM3("mg/dm3", "mg/l|g/m3|mgdm-3|mgl-1"),
    MG_100G("mg/100 g", "mg/100g"),
    MEQ_100G("meq/100 g", "meq/100g|me/100g|cmol/kg|cmolc/kg|cmolkg-1"),
    /** Of a solution. */
    MEQ_L("meq/L", "me/l|mmolc/l"),
    PERCENT("%", "percent|pct|wt%"),
    G_KG("g/kg", "gkg-1|permille"),
    /** Of what is to be spread. */
    LB_1000FT2("lb/1000 ft2", "lbs/1000ft2|lb/1000sqft|lbs/1000sqft"),
    G_M2("g/m2", "gm-2"),
    PH("pH", "standardunits|su"),
    DS_M("dS/m", "ms/cm|mmho/cm|mmhos/cm"),
    /** A laboratory's own scale; the text names whose. */
    INDEX("index", "");

    private static final Spellings<LabUnit> NAMES = Spellings.of(values(), unit -> unit.symbol, unit -> unit.spellings);

    private final String symbol;
    private final String spellings;

    LabUnit(String symbol, String spellings) {
        this.symbol = symbol;
        this.spellings = spellings;
    }

    /** As it is shown, such as {@code lb/acre}. */
    public String symbol() {
        return symbol;
    }

    /** What a text names; empty if nothing. Whatever speaks of an index is one. */
    public static Optional<LabUnit> of(String text) {
        return text.toLowerCase(Locale.ROOT).contains("index") ? Optional.of(INDEX) : NAMES.find(text);
    }
}
