package loamline.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/** What is known of a core by a number: read on the walk, or modelled at its place. */
public enum Quantity {
    /** How far the probe went. */
    DEPTH("depthM", "depth reached", Measure.SMALL_LENGTH, Quantity.MM_PER_M),
    ROOT("rootM", "root depth", Measure.SMALL_LENGTH, Quantity.MM_PER_M),
    THATCH("thatchM", "thatch", Measure.SMALL_LENGTH, Quantity.MM_PER_M),
    TOPSOIL("topsoilM", "topsoil", Measure.SMALL_LENGTH, Quantity.MM_PER_M),
    /** By feel, a class of {@link #FEELS} from 1. */
    MOISTURE("moistureClass", "moisture by feel", ""),
    /** Volumetric water, %. */
    VWC("vwcPct", "moisture by meter", " %"),
    /** Penetrometer. */
    HARDNESS("hardnessKpa", "hardness", Measure.PRESSURE, 1),
    /** Time until a water drop is gone. */
    DROP("wdptS", "drop time", " s"),
    /** Turf quality, 1 to 9. */
    QUALITY("quality", "turf quality", ""),
    /** Modelled: direct sun a day. */
    SUN("sunHours", "sun, modelled", " h"),
    /** Modelled: rate of the heads over the lawn's mean. */
    WATER("waterShare", "water, modelled", Measure.PERCENT, 1);

    /** Feel classes, the driest first. Common practice, no source. */
    public static final List<String> FEELS = List.of("dry", "slightly moist", "moist", "wet", "saturated");

    /** Pounds to the square inch in kilopascals. */
    public static final double KPA_PER_PSI = 6.894757293168361;

    private static final double MM_PER_M = 1000;

    private final String key;
    private final String title;
    private final Optional<Measure> measure;
    private final double perStored;
    private final String suffix;

    Quantity(String key, String title, Measure measure, double perStored) {
        this(key, title, Optional.of(measure), perStored, "");
    }

    Quantity(String key, String title, String suffix) {
        this(key, title, Optional.empty(), 1, suffix);
    }

    Quantity(String key, String title, Optional<Measure> measure, double perStored, String suffix) {
        this.key = key;
        this.title = title;
        this.measure = measure;
        this.perStored = perStored;
        this.suffix = suffix;
    }

    /** The quantity with a key. */
    public static Optional<Quantity> of(String key) {
        return Arrays.stream(values()).filter(q -> q.key.equals(key)).findFirst();
    }

    /** Its name in files, with the unit. */
    public String key() {
        return key;
    }

    /** Its name for people. */
    public String title() {
        return title;
    }

    public boolean isModelled() {
        return this == SUN || this == WATER;
    }

    /** How it is measured on the map; a plain number otherwise. */
    public Optional<Measure> measure() {
        return measure;
    }

    /** From the unit kept here to that of its {@link #measure}. */
    public double perStored() {
        return perStored;
    }

    /** A value in words. */
    public String words(double value, UnitSystem units) {
        if (measure.isPresent()) {
            return Formatting.format(measure.get(), value * perStored, units).text();
        }
        if (this == MOISTURE) {
            int feel = (int) Math.rint(value);
            return FEELS.get(Math.max(1, Math.min(FEELS.size(), feel)) - 1);
        }
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value) + suffix;
    }
}
