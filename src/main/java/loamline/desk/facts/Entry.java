package loamline.desk.facts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.Range;
import loamline.units.UnitSystem;
import loamline.yard.Bounds;

/** How a value is written in a field, and read back. */
sealed interface Entry {
    /** The value as text that {@link #read} understands. */
    String write(Object value, UnitSystem units);

    /** What a text that is not blank means, or why it means nothing. */
    Reading read(String text, UnitSystem units);

    /** The texts to choose from; empty where anything may be typed. */
    default List<String> choices() {
        return List.of();
    }

    /**
     * What became of a text.
     *
     * @param complaint what is wrong and what would be accepted; blank if there is a value
     */
    record Reading(Optional<Object> value, String complaint) {
        static Reading of(Object value) {
            return new Reading(Optional.of(value), "");
        }

        static Reading refused(String complaint) {
            return new Reading(Optional.empty(), complaint);
        }
    }

    /** A word or a name. */
    record Text() implements Entry {
        @Override
        public String write(Object value, UnitSystem units) {
            return value.toString();
        }

        @Override
        public Reading read(String text, UnitSystem units) {
            return Reading.of(text.strip());
        }
    }

    /**
     * A number with a unit.
     *
     * @param size what one of the property is in the measure's stored unit: 0.01 for per cent stored as such
     */
    record Quantity(Measure measure, double size, Bounds bounds) implements Entry {
        @Override
        public String write(Object value, UnitSystem units) {
            return Formatting.concise(measure, (double) value * size, units).text();
        }

        @Override
        public Reading read(String text, UnitSystem units) {
            ParseResult parsed = Parsing.parse(measure, text, units);
            if (parsed.value().isEmpty()) {
                return Reading.refused(
                        parsed.refusal().map(ParseResult.Refused::message).orElse(""));
            }
            double stored = parsed.value().getAsDouble();
            return complaint(stored, units).map(Reading::refused).orElseGet(() -> Reading.of(stored / size));
        }

        private Optional<String> complaint(double stored, UnitSystem units) {
            if (bounds.isAboveZero()) {
                return stored > 0 ? Optional.empty() : Optional.of("Write " + measure.noun() + " above 0.");
            }
            return new Range(measure, bounds.least() * size, bounds.most() * size).complaint(stored, units);
        }
    }

    /** A whole number without a unit. */
    record Count(Bounds bounds) implements Entry {
        @Override
        public String write(Object value, UnitSystem units) {
            return value.toString();
        }

        @Override
        public Reading read(String text, UnitSystem units) {
            String digits = text.strip();
            int number = digits.matches("\\d{1,6}") ? Integer.parseInt(digits) : -1;
            return number >= bounds.least() && number <= bounds.most()
                    ? Reading.of(number)
                    : Reading.refused(
                            "Write a whole number from " + (int) bounds.least() + " to " + (int) bounds.most() + ".");
        }
    }

    /**
     * One of a few.
     *
     * @param word what a value is called; may know values that are not among those to choose
     */
    record Choice(List<Object> values, Function<Object, String> word) implements Entry {
        public Choice {
            values = List.copyOf(values);
        }

        @Override
        public String write(Object value, UnitSystem units) {
            return word.apply(value);
        }

        @Override
        public Reading read(String text, UnitSystem units) {
            return values.stream()
                    .filter(value -> word.apply(value).equalsIgnoreCase(text.strip()))
                    .findFirst()
                    .map(Reading::of)
                    .orElseGet(() -> Reading.refused("Choose one of: " + String.join(", ", choices()) + "."));
        }

        @Override
        public List<String> choices() {
            return values.stream().map(word).toList();
        }
    }
}
