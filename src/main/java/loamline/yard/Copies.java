package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Features copied and put back, and the order they lie in. */
public final class Copies {
    private Copies() {}

    /** The features with some keys, in the yard's order; those of unknown kind are left out. */
    public static List<Feature> of(Yard yard, Set<String> keys) {
        return yard.features().stream()
                .filter(feature -> keys.contains(feature.key()))
                .filter(feature -> feature.kind().isPresent())
                .toList();
    }

    /**
     * Puts copies on top, moved by an offset in metres, under new keys. Copied heads get new ids, and copied cores none:
     * a core is taken once.
     */
    public static Combine.Outcome paste(Yard yard, List<Feature> copied, double dx, double dy) {
        Yard grown = yard;
        List<String> keys = new ArrayList<>();
        for (Feature feature : copied) {
            Feature fresh = feature.withKey(Edits.freeKey(grown));
            if (fresh instanceof Head head) {
                fresh = head.withId(Naming.freeHeadId(grown));
            } else if (fresh instanceof Core core) {
                fresh = new Core(
                        core.key(), "", core.composite(), core.zone(), core.at(), core.locked(), core.extras());
            }
            grown = Edits.add(grown, Reshape.mapped(fresh, p -> p.plus(dx, dy)));
            keys.add(fresh.key());
        }
        return new Combine.Outcome(grown, keys);
    }

    /** Features one place later in the yard's order, above the next that is not among them; on top they stay. */
    public static Yard raised(Yard yard, Set<String> keys) {
        List<Feature> order = new ArrayList<>(yard.features());
        for (int i = order.size() - 2; i >= 0; i--) {
            swapIf(
                    order,
                    i,
                    keys.contains(order.get(i).key())
                            && !keys.contains(order.get(i + 1).key()));
        }
        return yard.withFeatures(order);
    }

    /** Features one place earlier in the yard's order; at the bottom they stay. */
    public static Yard lowered(Yard yard, Set<String> keys) {
        List<Feature> order = new ArrayList<>(yard.features());
        for (int i = 0; i + 1 < order.size(); i++) {
            swapIf(
                    order,
                    i,
                    !keys.contains(order.get(i).key())
                            && keys.contains(order.get(i + 1).key()));
        }
        return yard.withFeatures(order);
    }

    private static void swapIf(List<Feature> order, int i, boolean swap) {
        if (swap) {
            java.util.Collections.swap(order, i, i + 1);
        }
    }
}
