package loamline.desk.cores;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.units.UnitSystem;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;

/**
 * The form in which a person says how cores are to be planned, as it is written: also what cannot be understood is kept.
 *
 * @param texts what stands in each field
 * @param units what bare numbers mean
 */
record PlanForm(Map<PlanField, String> texts, PlanOptions.Place place, PlanOptions.Rounds walk, UnitSystem units) {
    PlanForm {
        texts = Collections.unmodifiableMap(new EnumMap<>(texts));
    }

    /** A value, or why there is none. */
    record Entry<T>(Optional<T> value, String complaint) {
        static <T> Entry<T> of(T value) {
            return new Entry<>(Optional.of(value), "");
        }

        static <T> Entry<T> refused(String complaint) {
            return new Entry<>(Optional.empty(), complaint);
        }
    }

    /**
     * What a form says.
     *
     * @param options empty if anything was refused
     * @param complaints by field, why its text was refused
     */
    record Checked(Optional<PlanOptions> options, Map<PlanField, String> complaints) {
        Checked {
            complaints = Collections.unmodifiableMap(new LinkedHashMap<>(complaints));
        }
    }

    static PlanForm of(PlanOptions options, UnitSystem units) {
        Map<PlanField, String> texts = new EnumMap<>(PlanField.class);
        for (PlanField field : PlanField.values()) {
            texts.put(field, field.shown(options, units));
        }
        return new PlanForm(texts, options.place(), options.walk(), units);
    }

    String text(PlanField field) {
        return texts.getOrDefault(field, "");
    }

    PlanForm with(PlanField field, String text) {
        Map<PlanField, String> changed = new EnumMap<>(texts);
        changed.put(field, text);
        return new PlanForm(changed, place, walk, units);
    }

    PlanForm with(PlanOptions.Place changed) {
        return new PlanForm(texts, changed, walk, units);
    }

    PlanForm with(PlanOptions.Rounds changed) {
        return new PlanForm(texts, place, changed, units);
    }

    /** The same lengths in other units. */
    PlanForm in(UnitSystem changed) {
        Map<PlanField, String> converted = new EnumMap<>(PlanField.class);
        texts.forEach((field, text) -> converted.put(field, field.inUnits(text, units, changed)));
        return new PlanForm(converted, place, walk, changed);
    }

    /** @param now the options in force: what was not touched stays as it is to the last digit */
    Checked checked(PlanOptions now) {
        Reading reading = new Reading(now);
        OptionalInt bags = text(PlanField.BAGS).isBlank()
                ? OptionalInt.empty()
                : OptionalInt.of((int) reading.whole(PlanField.BAGS, 1, Integer.MAX_VALUE));
        int cores = (int) reading.whole(PlanField.CORES, 1, PlanOptions.MOST_CORES);
        double edgeM = reading.metres(PlanField.EDGE);
        double trunksM = reading.metres(PlanField.TRUNKS);
        double headsM = reading.metres(PlanField.HEADS);
        int spares = (int) reading.whole(PlanField.SPARES, 0, PlanOptions.MOST_SPARES);
        long seed = reading.whole(PlanField.SEED, Long.MIN_VALUE, Long.MAX_VALUE);
        double depthM = reading.metres(PlanField.DEPTH);
        double diameterM = reading.metres(PlanField.DIAMETER);
        if (!reading.complaints.isEmpty()) {
            return new Checked(Optional.empty(), reading.complaints);
        }
        Probe probe = new Probe(diameterM, depthM);
        return new Checked(
                Optional.of(new PlanOptions(
                        bags, cores, edgeM, trunksM, headsM, place, spares, seed, walk, probe, now.extras())),
                Map.of());
    }

    /** Reads field by field and collects what is refused; a refused field reads as its least value. */
    private final class Reading {
        private final PlanOptions now;
        private final Map<PlanField, String> complaints = new EnumMap<>(PlanField.class);

        Reading(PlanOptions now) {
            this.now = now;
        }

        long whole(PlanField field, long least, long most) {
            return taken(field, field.whole(text(field), least, most), least);
        }

        double metres(PlanField field) {
            boolean untouched = text(field).equals(field.shown(now, units));
            return untouched ? field.metres(now).orElseThrow() : taken(field, field.length(text(field), units), 0.0);
        }

        private <T> T taken(PlanField field, Entry<T> entry, T otherwise) {
            if (entry.value().isEmpty()) {
                complaints.put(field, entry.complaint());
            }
            return entry.value().orElse(otherwise);
        }
    }
}
