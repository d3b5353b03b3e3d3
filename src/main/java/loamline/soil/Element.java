package loamline.soil;

import java.util.List;
import java.util.Optional;

/** What a laboratory measures. */
public enum Element {
    P("P", Kind.NUTRIENT, "phosphorus"),
    K("K", Kind.NUTRIENT, "potassium"),
    CA("Ca", Kind.NUTRIENT, "calcium"),
    MG("Mg", Kind.NUTRIENT, "magnesium"),
    S("S", Kind.NUTRIENT, "sulfur"),
    NA("Na", Kind.NUTRIENT, "sodium"),
    FE("Fe", Kind.NUTRIENT, "iron"),
    MN("Mn", Kind.NUTRIENT, "manganese"),
    ZN("Zn", Kind.NUTRIENT, "zinc"),
    CU("Cu", Kind.NUTRIENT, "copper"),
    B("B", Kind.NUTRIENT, "boron"),
    AL("Al", Kind.NUTRIENT, "aluminum|aluminium"),
    PB("Pb", Kind.NUTRIENT, "lead"),
    PH("pH", Kind.PH, ""),
    BUFFER_PH("bufferPH", Kind.PH, "bph|lime index"),
    OM("OM", Kind.SHARE, "organic matter"),
    CEC("CEC", Kind.CHARGE, ""),
    EC("EC", Kind.CONDUCTIVITY, ""),
    SAND("sand", Kind.SHARE, ""),
    SILT("silt", Kind.SHARE, ""),
    CLAY("clay", Kind.SHARE, ""),
    /** Exchangeable acidity. */
    ACIDITY("acidity", Kind.CHARGE, "exchangeable acidity|h"),
    /** Free carbonate as CaCO₃. */
    CARBONATE("carbonate", Kind.SHARE, "CaCO3|free lime"),
    /** Lime buffer capacity: pure CaCO₃ that raises soil by one unit of pH. */
    LBC("LBC", Kind.BUFFER_CAPACITY, "lime buffer capacity"),
    /** Phosphate for the season, as the laboratory recommends it. */
    REC_P2O5("recP2O5", Kind.RATE, "recommended P2O5"),
    /** Potash for the season, as the laboratory recommends it. */
    REC_K2O("recK2O", Kind.RATE, "recommended K2O"),
    /** Lime as CaCO₃ equivalent, as the laboratory recommends it. */
    REC_LIME("recLime", Kind.RATE, "recommended lime");

    /** What sort of quantity it is, and with that which units make sense. */
    public enum Kind {
        /** What an extractant takes out of the soil. */
        NUTRIENT,
        PH,
        /** A share of the soil's mass. */
        SHARE,
        /** Charge on a mass of soil. */
        CHARGE,
        CONDUCTIVITY,
        /** CaCO₃ on a mass of soil for a unit of pH. */
        BUFFER_CAPACITY,
        /** An amount to spread on an area. */
        RATE;

        /** Units that a value of this kind may have. */
        public List<LabUnit> units() {
            return switch (this) {
                case NUTRIENT ->
                    List.of(
                            LabUnit.PPM,
                            LabUnit.LB_ACRE,
                            LabUnit.KG_HA,
                            LabUnit.MG_DM3,
                            LabUnit.MEQ_100G,
                            LabUnit.MEQ_L,
                            LabUnit.PERCENT,
                            LabUnit.MG_100G,
                            LabUnit.INDEX);
                case PH -> List.of(LabUnit.PH, LabUnit.INDEX);
                case SHARE -> List.of(LabUnit.PERCENT, LabUnit.G_KG);
                case CHARGE -> List.of(LabUnit.MEQ_100G);
                case CONDUCTIVITY -> List.of(LabUnit.DS_M);
                case BUFFER_CAPACITY -> List.of(LabUnit.PPM);
                case RATE -> List.of(LabUnit.LB_1000FT2, LabUnit.G_M2, LabUnit.LB_ACRE, LabUnit.KG_HA);
            };
        }
    }

    private static final Spellings<Element> NAMES = Spellings.of(values(), e -> e.key, e -> e.spellings);

    private final String key;
    private final Kind kind;
    private final String spellings;

    Element(String key, Kind kind, String spellings) {
        this.key = key;
        this.kind = kind;
        this.spellings = spellings;
    }

    /** As in files and tables, such as {@code Ca}. */
    public String key() {
        return key;
    }

    public Kind kind() {
        return kind;
    }

    public boolean isNutrient() {
        return kind == Kind.NUTRIENT;
    }

    /** What a text names; empty if nothing. */
    public static Optional<Element> of(String text) {
        return NAMES.find(text);
    }
}
