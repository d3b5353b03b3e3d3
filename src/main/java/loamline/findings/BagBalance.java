package loamline.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.sampling.CorePlan.PlannedCore;

/**
 * Whether a bag holds one core from each stratum, and what to do about it if not.
 *
 * @param composite the bag's name
 * @param planned cores it should hold
 * @param inBag ids of the cores and spares that belong in it, in the plan's order
 * @param replaced refused core by the spare that stands for it
 * @param next spares still to be taken, each for a refused core
 * @param missing refused cores whose spares were refused too, or that have none
 * @param notLogged cores of which the log says nothing
 * @param surplus spares taken though their core is in the bag: leave them out of it
 */
public record BagBalance(
        String composite,
        int planned,
        List<String> inBag,
        Map<String, String> replaced,
        List<String> next,
        List<String> missing,
        List<String> notLogged,
        List<String> surplus) {
    public BagBalance {
        inBag = List.copyOf(inBag);
        replaced = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(replaced));
        next = List.copyOf(next);
        missing = List.copyOf(missing);
        notLogged = List.copyOf(notLogged);
        surplus = List.copyOf(surplus);
    }

    /**
     * The state of a bag.
     *
     * @param bag its cores and spares as planned
     * @param logged by id
     */
    static BagBalance of(String composite, List<PlannedCore> bag, Map<String, LoggedCore> logged) {
        Draft draft = new Draft(bag, logged);
        List<PlannedCore> cores =
                bag.stream().filter(core -> core.spareOf().isEmpty()).toList();
        cores.forEach(draft::add);
        return new BagBalance(
                composite,
                cores.size(),
                draft.inBag,
                draft.replaced,
                draft.next,
                draft.missing,
                draft.notLogged,
                draft.surplus);
    }

    /** Whether every stratum is in the bag once. */
    public boolean isBalanced() {
        return inBag.size() == planned && surplus.isEmpty();
    }

    private static final class Draft {
        private final List<PlannedCore> bag;
        private final Map<String, LoggedCore> logged;
        private final List<String> inBag = new ArrayList<>();
        private final Map<String, String> replaced = new LinkedHashMap<>();
        private final List<String> next = new ArrayList<>();
        private final List<String> missing = new ArrayList<>();
        private final List<String> notLogged = new ArrayList<>();
        private final List<String> surplus = new ArrayList<>();

        Draft(List<PlannedCore> bag, Map<String, LoggedCore> logged) {
            this.bag = bag;
            this.logged = logged;
        }

        void add(PlannedCore core) {
            List<String> spares = bag.stream()
                    .filter(spare -> spare.spareOf().equals(Optional.of(core.id())))
                    .map(PlannedCore::id)
                    .toList();
            List<String> taken = spares.stream().filter(this::taken).toList();
            if (taken(core.id())) {
                inBag.add(core.id());
                surplus.addAll(taken);
            } else if (!taken.isEmpty()) {
                inBag.add(taken.get(0));
                replaced.put(core.id(), taken.get(0));
                surplus.addAll(taken.subList(1, taken.size()));
            } else if (!logged.containsKey(core.id())) {
                notLogged.add(core.id());
            } else {
                spares.stream()
                        .filter(spare -> !logged.containsKey(spare))
                        .findFirst()
                        .ifPresentOrElse(next::add, () -> missing.add(core.id()));
            }
        }

        private boolean taken(String id) {
            return Optional.ofNullable(logged.get(id))
                    .filter(core -> !core.isRefused())
                    .isPresent();
        }
    }
}
