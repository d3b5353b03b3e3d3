package loamline.desk.facts;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.units.UnitSystem;
import loamline.yard.Feature;

/**
 * One thing about a feature that can be changed in place.
 *
 * @param label its name on screen
 * @param component the component of the feature's record
 * @param entry how it is written
 * @param needed whether it cannot be left blank
 * @param help what it is, in a line; may be empty
 */
record FieldSpec(String label, String component, Entry entry, boolean needed, String help) {
    /** What became of a text typed for a feature. */
    sealed interface Outcome {
        /** The feature as it is now. */
        record Changed(Feature after) implements Outcome {}

        /** Why it stays as it was. */
        record Refused(String words) implements Outcome {}
    }

    /** What the field shows for a feature; blank where nothing is known. */
    String shown(Feature feature, UnitSystem units) {
        Object raw = RecordCopy.get((Record) feature, RecordCopy.component((Record) feature, component));
        return plain(raw).map(value -> entry.write(value, units)).orElse("");
    }

    /** What a text makes of a feature; a blank text takes back what was known. */
    Outcome read(Feature feature, String text, UnitSystem units) {
        Record record = (Record) feature;
        RecordComponent part = RecordCopy.component(record, component);
        if (text.equals(shown(feature, units))) {
            return new Outcome.Changed(feature);
        }
        if (text.isBlank()) {
            return needed || part.getType().isPrimitive()
                    ? new Outcome.Refused(label + " cannot be blank.")
                    : changed(record, part, Optional.empty());
        }
        Entry.Reading reading = entry.read(text, units);
        return reading.value().isPresent()
                ? changed(record, part, reading.value())
                : new Outcome.Refused(reading.complaint());
    }

    private Outcome changed(Record record, RecordComponent part, Optional<Object> value) {
        return new Outcome.Changed((Feature) RecordCopy.with(record, component, wrapped(part.getType(), value)));
    }

    /** The value itself, out of whatever optional holds it. */
    private static Optional<Object> plain(Object raw) {
        if (raw instanceof Optional<?> optional) {
            return optional.map(Object.class::cast);
        } else if (raw instanceof OptionalDouble number) {
            return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
        } else if (raw instanceof OptionalInt number) {
            return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
        }
        return Optional.of(raw);
    }

    private static Object wrapped(Class<?> type, Optional<Object> value) {
        if (type == Optional.class) {
            return value;
        } else if (type == OptionalDouble.class) {
            return value.map(v -> OptionalDouble.of((double) v)).orElse(OptionalDouble.empty());
        } else if (type == OptionalInt.class) {
            return value.map(v -> OptionalInt.of((int) v)).orElse(OptionalInt.empty());
        }
        return value.orElse("");
    }
}
