package loamline.units;

/**
 * A kind of quantity: the unit it is stored in, the unit each system shows, and a name for it.
 *
 * <p>A bare number is in the unit shown.
 */
public enum Measure {
    /** Stored in m; shown in ft or m. */
    LENGTH("m", "a length", "12.5 ft, 12 ft 6 in or 3.8 m"),
    /** Probe diameter, thatch, depth of a core, depth of water. Stored in mm; shown in inches or mm. */
    SMALL_LENGTH("mm", "a small length", "3/4 in, 4 in or 19 mm"),
    /** Stored in m²; shown in ft² or m². */
    AREA("m²", "an area", "7,410 ft², 0.17 ac or 688 m²"),
    /** Stored and shown in degrees. */
    ANGLE("°", "an angle", "90° or 22.5 deg"),
    /** Stored in L/min; shown in gal/min or L/min. */
    FLOW("L/min", "a flow", "3 gal/min, 3 gpm or 11.4 L/min"),
    /** Stored in kPa; shown in psi or kPa. */
    PRESSURE("kPa", "a pressure", "45 psi, 310 kPa or 3.1 bar"),
    /** Depth of water in a time. Stored in mm/h; shown in in/h or mm/h. */
    DEPTH_RATE("mm/h", "a rate", "0.5 in/h or 12.7 mm/h"),
    /** What a cup catches. Stored in ml and shown in ml in both systems: the scales of the cups are in ml. */
    VOLUME_SMALL("ml", "a small volume", "25 ml or 0.8 fl oz"),
    /** Water and sprays. Stored in L; shown in gallons or L. */
    VOLUME_LIQUID("L", "a liquid volume", "2.5 gal, 12 fl oz or 9.5 L"),
    /** Compost, sand, soil. Stored in m³; shown in yd³ or m³. */
    VOLUME_BULK("m³", "a volume", "2.5 yd³, 3 cu yd or 1.9 m³"),
    /** Stored in kg; shown in lb or kg. */
    MASS("kg", "a weight", "50 lb, 12 oz or 22.7 kg"),
    /** Weight on an area. Stored in g/m²; shown in lb/1,000 ft² or kg/100 m². */
    AREAL_RATE("g/m²", "a dose", "1 lb/1,000 ft², 5 g/m² or 0.5 kg/100 m²"),
    /** Stored as a ratio, 1 for the whole; shown in percent. */
    PERCENT("1", "a percentage", "35 %"),
    /** Stored and shown in minutes. */
    TIME_MINUTES("min", "a time", "12 min, 1 h 30 min or 90 s"),
    /** Parts of a day. Stored and shown in hours. */
    TIME_HOURS("h", "a time", "4 h, 4 h 30 min or 90 min");

    private final String storedSymbol;
    private final String noun;
    private final String examples;

    Measure(String storedSymbol, String noun, String examples) {
        this.storedSymbol = storedSymbol;
        this.noun = noun;
        this.examples = examples;
    }

    /** The unit that values of this measure are stored in, such as {@code m}; {@code 1} for a ratio. */
    public String storedSymbol() {
        return storedSymbol;
    }

    /** The unit that the system shows, such as {@code ft}, for the head of a column or an axis. */
    public String symbol(UnitSystem system) {
        return shown(system).symbol();
    }

    /** A stored value as a number of {@link #symbol(UnitSystem)}, for an axis or a spinner; not rounded. */
    public double toShown(double stored, UnitSystem system) {
        return stored / shown(system).size();
    }

    /** The inverse of {@link #toShown(double, UnitSystem)}. */
    public double toStored(double number, UnitSystem system) {
        return number * shown(system).size();
    }

    /** The measure with its article, such as {@code a length}, for a sentence. */
    public String noun() {
        return noun;
    }

    /** Some of what is understood, such as {@code 12.5 ft, 12 ft 6 in or 3.8 m}, for a prompt or a sentence. */
    public String examples() {
        return examples;
    }

    private Unit shown(UnitSystem system) {
        return UnitTable.of(this).shown(system).unit();
    }
}
