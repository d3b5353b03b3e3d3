package loamline.desk.cores;

import java.util.Optional;
import java.util.OptionalDouble;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import loamline.yard.PlanOptions;

/** A field of the plan's form that is written in. */
enum PlanField {
    BAGS("Bags", Optional.empty(), "A number of bags is a whole number from 1 on, or nothing to follow the zones."),
    CORES("Cores a bag", Optional.empty(), "Cores a bag is a whole number from 1 to " + PlanOptions.MOST_CORES + "."),
    EDGE("Off edges", Optional.of(Measure.LENGTH), "A distance from edges is 0 or more."),
    TRUNKS("Off trunks", Optional.of(Measure.LENGTH), "A distance from trunks is 0 or more."),
    HEADS("Off heads", Optional.of(Measure.LENGTH), "A distance from heads is 0 or more."),
    SPARES("Spares", Optional.empty(), "Spares a core are 0, 1 or 2."),
    SEED("Seed", Optional.empty(), "A seed is a whole number."),
    DEPTH("Probe to", Optional.of(Measure.SMALL_LENGTH), "A depth is above 0."),
    DIAMETER("Probe width", Optional.of(Measure.SMALL_LENGTH), "A probe's width is above 0.");

    private static final double MM_PER_M = 1000;

    private final String label;
    private final Optional<Measure> measure;
    private final String range;

    PlanField(String label, Optional<Measure> measure, String range) {
        this.label = label;
        this.measure = measure;
        this.range = range;
    }

    String label() {
        return label;
    }

    /** What is said of a number that is out of range. */
    String range() {
        return range;
    }

    /** The options' value as it is written. */
    String shown(PlanOptions options, UnitSystem units) {
        OptionalDouble metres = metres(options);
        if (metres.isPresent()) {
            return Formatting.editable(measure.orElseThrow(), stored(metres.getAsDouble()), units)
                    .text();
        }
        return switch (this) {
            case BAGS ->
                options.kits().isPresent() ? String.valueOf(options.kits().getAsInt()) : "";
            case CORES -> String.valueOf(options.coresPerComposite());
            case SPARES -> String.valueOf(options.sparesPerStratum());
            default -> String.valueOf(options.seed());
        };
    }

    /** The options' length for this field, m; empty for a field that is no length. */
    OptionalDouble metres(PlanOptions options) {
        return switch (this) {
            case EDGE -> OptionalDouble.of(options.edgeBufferM());
            case TRUNKS -> OptionalDouble.of(options.trunkBufferM());
            case HEADS -> OptionalDouble.of(options.headBufferM());
            case DEPTH -> OptionalDouble.of(options.probe().depthM());
            case DIAMETER -> OptionalDouble.of(options.probe().diameterM());
            default -> OptionalDouble.empty();
        };
    }

    private double stored(double metres) {
        return measure.filter(m -> m == Measure.SMALL_LENGTH).isPresent() ? metres * MM_PER_M : metres;
    }

    /** The same text for other units; one that is not understood stays. */
    String inUnits(String text, UnitSystem before, UnitSystem now) {
        return measure.map(m -> {
                    OptionalDouble value = Parsing.parse(m, text, before).value();
                    return value.isPresent()
                            ? Formatting.editable(m, value.getAsDouble(), now).text()
                            : text;
                })
                .orElse(text);
    }

    /** The length that a text says, m; or what is wrong with it. */
    PlanForm.Entry<Double> length(String text, UnitSystem units) {
        var parsed = Parsing.parse(measure.orElseThrow(), text, units);
        if (parsed.refusal().isPresent()) {
            return PlanForm.Entry.refused(parsed.refusal().get().message());
        }
        double metres = parsed.value().orElseThrow() / stored(1);
        boolean fits = measure.get() == Measure.SMALL_LENGTH ? metres > 0 : metres >= 0;
        return fits ? PlanForm.Entry.of(metres) : PlanForm.Entry.refused(range);
    }

    /** The whole number that a text says; or what is wrong with it. */
    PlanForm.Entry<Long> whole(String text, long least, long most) {
        try {
            long value = Long.parseLong(text.strip());
            return value >= least && value <= most ? PlanForm.Entry.of(value) : PlanForm.Entry.refused(range);
        } catch (NumberFormatException e) {
            return PlanForm.Entry.refused(range);
        }
    }
}
