package loamline.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Probe;

/** Quantities as they stand on pages. */
record Figures(UnitSystem units) {
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    String length(double m) {
        return Formatting.format(Measure.LENGTH, m, units).text();
    }

    String area(double m2) {
        return Formatting.format(Measure.AREA, m2, units).text();
    }

    String area(double m2, double standardErrorM2) {
        Formatted both = Formatting.withStandardError(Measure.AREA, m2, standardErrorM2, units);
        return both.text();
    }

    String volume(double ml) {
        return Formatting.format(Measure.VOLUME_SMALL, ml, units).text();
    }

    String rate(double mmH) {
        return Formatting.format(Measure.DEPTH_RATE, mmH, units).text();
    }

    /** Depth of water. */
    String depth(double mm) {
        return Formatting.format(Measure.SMALL_LENGTH, mm, units).text();
    }

    /** A weight on an area, given in g/m². */
    String dose(double gM2) {
        return Formatting.format(Measure.AREAL_RATE, gM2, units).text();
    }

    /** A probe's depth or diameter as people say it, to three digits: 0.75 in, 4 in, 102 mm. */
    String small(double m) {
        double shown = Measure.SMALL_LENGTH.toShown(1000 * m, units);
        double rounded = new BigDecimal(shown, THREE_DIGITS).doubleValue();
        return Formatting.editable(Measure.SMALL_LENGTH, Measure.SMALL_LENGTH.toStored(rounded, units), units)
                .text();
    }

    String probe(Probe probe) {
        return small(probe.diameterM()) + " × " + small(probe.depthM());
    }

    static String count(int n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }

    static String percent(double ratio, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f %%", 100 * ratio);
    }

    /** A probability; none is told as certain. */
    static String sure(double probability) {
        return probability > 0.99 ? "over 99 %" : probability < 0.01 ? "under 1 %" : percent(probability, 0);
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }
}
