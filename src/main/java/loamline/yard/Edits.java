package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Changes to a yard: pure functions, each giving a new yard. */
public final class Edits {
    private Edits() {}

    /** Adds a feature on top; its key is kept if free, otherwise made new. */
    public static Yard add(Yard yard, Feature feature) {
        List<Feature> more = new ArrayList<>(yard.features());
        more.add(yard.feature(feature.key()).isPresent() ? feature.withKey(freeKey(yard)) : feature);
        return yard.withFeatures(more);
    }

    /** Puts a feature in the place of the one with its key; without one the yard stays as it is. */
    public static Yard replace(Yard yard, Feature feature) {
        return yard.withFeatures(yard.features().stream()
                .map(old -> old.key().equals(feature.key()) ? feature : old)
                .toList());
    }

    /** Takes features out by key; keys that are not there are passed over. */
    public static Yard remove(Yard yard, Set<String> keys) {
        return yard.withFeatures(yard.features().stream()
                .filter(feature -> !keys.contains(feature.key()))
                .toList());
    }

    /** The first of f1, f2, … that no feature has. */
    public static String freeKey(Yard yard) {
        Set<String> taken = yard.features().stream().map(Feature::key).collect(Collectors.toSet());
        int n = 1;
        while (taken.contains("f" + n)) {
            n++;
        }
        return "f" + n;
    }
}
