package loamline.desk.facts;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.units.UnitSystem;
import loamline.yard.Edits;
import loamline.yard.Feature;
import loamline.yard.History;
import loamline.yard.Naming;
import loamline.yard.Yard;

/**
 * A field as it stands for what is selected.
 *
 * @param keys the features it is about, one or more
 * @param shown its text; blank where nothing is known or the features differ
 * @param mixed whether the features differ
 */
record Field(FieldSpec spec, List<String> keys, String shown, boolean mixed) {
    Field {
        keys = List.copyOf(keys);
    }

    static Field of(FieldSpec spec, List<Feature> features, UnitSystem units) {
        List<String> texts =
                features.stream().map(f -> spec.shown(f, units)).distinct().toList();
        boolean mixed = texts.size() > 1;
        return new Field(spec, features.stream().map(Feature::key).toList(), mixed ? "" : texts.get(0), mixed);
    }

    /** What became of a text: an edit, or nothing to do, or words against it. */
    record Answer(Optional<History.Step> edit, String complaint) {}

    /** What a text typed here does to a yard. All the features change in one edit, or none does. */
    Answer answer(String text, Yard yard, UnitSystem units) {
        Yard after = yard;
        for (Feature feature : features(yard)) {
            FieldSpec.Outcome outcome = spec.read(feature, text, units);
            if (outcome instanceof FieldSpec.Outcome.Refused refused) {
                return new Answer(Optional.empty(), refused.words());
            }
            after = Edits.replace(after, ((FieldSpec.Outcome.Changed) outcome).after());
        }
        return after.equals(yard)
                ? new Answer(Optional.empty(), "")
                : new Answer(Optional.of(new History.Step(label(yard, after, units), after)), "");
    }

    private List<Feature> features(Yard yard) {
        return keys.stream().flatMap(key -> yard.feature(key).stream()).toList();
    }

    /** As in "set height of House to 12 ft". */
    private String label(Yard before, Yard after, UnitSystem units) {
        List<Feature> features = features(before);
        String whose = features.size() == 1 ? Naming.title(features.get(0)) : features.size() + " features";
        String value = spec.shown(features(after).get(0), units);
        String what = spec.label().toLowerCase(Locale.ROOT) + " of " + whose;
        return value.isBlank() ? "clear " + what : "set " + what + " to " + value;
    }
}
