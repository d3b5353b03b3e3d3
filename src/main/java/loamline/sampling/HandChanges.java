package loamline.sampling;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.Core;
import loamline.yard.Edits;
import loamline.yard.Extras;
import loamline.yard.OwnCore;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;

/**
 * Changes to planned cores by hand. The first of them writes all cores and spares of the plan into the yard, with how it
 * was planned; from then on they stay where they are until they are planned again. An id that the plan does not have
 * changes nothing.
 */
public final class HandChanges {
    private HandChanges() {}

    /** Whether the yard's cores are its own, and not planned afresh from its turf. */
    public static boolean isByHand(Yard yard) {
        return yard.all(Core.class).findAny().isPresent();
    }

    /** A yard with all cores and spares of its plan as its own; those it has keep key, lock and extras. */
    public static Yard written(Yard yard, CorePlan plan) {
        Yard all = yard.withPlanning(yard.planning().orElse(PlanOptions.USUAL));
        for (PlannedCore planned : plan.cores()) {
            Optional<Core> own = own(yard, planned);
            Core core = new Core(
                    own.map(Core::key).orElse(Edits.freeKey(all)),
                    planned.id(),
                    planned.composite(),
                    planned.zone(),
                    Frame.onStep(planned.at()),
                    own.filter(Core::locked).isPresent(),
                    own.map(Core::extras).orElse(Extras.NONE));
            all = own.isPresent() ? Edits.replace(all, core) : Edits.add(all, core);
        }
        return all;
    }

    /** The yard's own core that a plan means: by id, or by place where it has none. */
    private static Optional<Core> own(Yard yard, PlannedCore planned) {
        return yard.all(Core.class)
                .filter(core -> core.id().isBlank()
                        ? core.at().equals(planned.at())
                        : core.id().equals(planned.id())
                                && KeptCores.bagOf(core).equals(planned.composite()))
                .findFirst();
    }

    /** A core or a spare of the yard moved. */
    public static Yard moved(Yard yard, String id, Point to) {
        return core(yard, id)
                .map(core -> Edits.replace(yard, core.withShape(Frame.onStep(to))))
                .orElse(yard);
    }

    /** A core where its first spare was, and the spare where the core was; nothing without a spare. */
    public static Yard swapped(Yard yard, String id) {
        return own(yard, id)
                .filter(own -> !own.spares().isEmpty())
                .map(own -> {
                    Core spare = own.spares().get(0);
                    Yard half = Edits.replace(yard, own.core().withShape(spare.at()));
                    return Edits.replace(half, spare.withShape(own.core().at()));
                })
                .orElse(yard);
    }

    /** A core locked, or free again; spares follow their cores and have no lock. */
    public static Yard locked(Yard yard, String id, boolean locked) {
        return own(yard, id)
                .map(own -> Edits.replace(yard, own.core().withLocked(locked)))
                .orElse(yard);
    }

    /** The yard with a plan in which its locked cores were kept, see {@link CorePlanner#planRest}. */
    public static Yard replanned(Yard yard, CorePlan rest) {
        Set<String> free = OwnCore.of(yard).stream()
                .filter(own -> !own.core().locked())
                .flatMap(own -> Stream.concat(Stream.of(own.core()), own.spares().stream()))
                .map(Core::key)
                .collect(Collectors.toSet());
        return written(Edits.remove(yard, free), rest);
    }

    /** The yard without cores of its own, so that all are planned from its turf. */
    public static Yard afresh(Yard yard) {
        return Edits.remove(yard, yard.all(Core.class).map(Core::key).collect(Collectors.toSet()));
    }

    private static Optional<Core> core(Yard yard, String id) {
        return yard.all(Core.class).filter(core -> core.id().equals(id)).findFirst();
    }

    private static Optional<OwnCore> own(Yard yard, String id) {
        return OwnCore.of(yard).stream()
                .filter(own -> own.core().id().equals(id))
                .findFirst();
    }
}
