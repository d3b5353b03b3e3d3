package loamline.findings;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.reference.CauseSign;
import loamline.units.UnitSystem;

/** What a sign looks at in a core: its readings, what was written of it, the laboratory's report of its zone. */
final class Subject {
    /** A change of soil deeper than this does not stop grass roots, m (4 in). */
    static final double BREAK_WITHIN_M = 0.1016;

    /** Steps of fineness that make a sharp break. */
    private static final int SHARP = 2;

    private static final double NO = 0;
    private static final double YES = 1;

    /** By zone: the rating of phosphorus, 1 low to 3 high, and pH in water. */
    private final Map<String, OptionalDouble> phosphorus;

    private final Map<String, OptionalDouble> ph;
    private final Quantity wetness;
    private final boolean noted;

    Subject(List<LoggedCore> cores, Map<String, OptionalDouble> phosphorus, Map<String, OptionalDouble> ph) {
        this.phosphorus = phosphorus;
        this.ph = ph;
        this.noted = cores.stream().anyMatch(core -> !core.words().isEmpty());
        this.wetness = count(cores, Quantity.VWC) >= count(cores, Quantity.MOISTURE) ? Quantity.VWC : Quantity.MOISTURE;
    }

    private static int count(List<LoggedCore> cores, Quantity quantity) {
        return Comparison.values(cores, quantity).length;
    }

    /** The value of a core; empty if nobody looked. */
    OptionalDouble of(LoggedCore core, CauseSign sign) {
        String zone = core.core().zone();
        return switch (sign.subject()) {
            case "wetness" -> core.value(wetness);
            case "refused" -> OptionalDouble.of(core.isRefused() ? YES : NO);
            case "layerBreak" ->
                core.layers().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(breaks(core.layers()) ? YES : NO);
            case "words" -> words(core, sign.terms());
            case "labP" -> phosphorus.getOrDefault(zone, OptionalDouble.empty());
            case "labPh" -> ph.getOrDefault(zone, OptionalDouble.empty());
            default -> quantity(sign.subject()).map(core::value).orElse(OptionalDouble.empty());
        };
    }

    private static Optional<Quantity> quantity(String key) {
        return Quantity.of(key);
    }

    /** In a log without any notes nobody looked; in one with some, a blank says that there was nothing to say. */
    private OptionalDouble words(LoggedCore core, List<String> terms) {
        String text = core.text();
        if (!noted) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(terms.stream().anyMatch(text::contains) ? YES : NO);
    }

    private static boolean breaks(List<SoilLayer> layers) {
        for (int i = 1; i < layers.size(); i++) {
            int change = layers.get(i).fineness() - layers.get(i - 1).fineness();
            if (Math.abs(change) >= SHARP && layers.get(i).fromM() <= BREAK_WITHIN_M) {
                return true;
            }
        }
        return false;
    }

    /** A value of a subject in words. */
    static String words(String subject, double value, UnitSystem units) {
        return switch (subject) {
            case "wetness" ->
                value > Quantity.FEELS.size()
                        ? Quantity.VWC.words(value, units)
                        : Quantity.MOISTURE.words(value, units);
            default ->
                quantity(subject)
                        .map(quantity -> quantity.words(value, units))
                        .orElseGet(() -> String.format(Locale.ROOT, "%.1f", value));
        };
    }
}
