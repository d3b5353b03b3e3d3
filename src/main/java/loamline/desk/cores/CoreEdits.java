package loamline.desk.cores;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.desk.tool.Effect;
import loamline.desk.tool.Surroundings;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.sampling.HandChanges;
import loamline.yard.Core;
import loamline.yard.OwnCore;
import loamline.yard.Yard;

/**
 * What hands can do to cores. The cores are those of the plan or, while it is being made again, the yard's own; with
 * neither there is nothing to do.
 */
public final class CoreEdits {
    private final Yard yard;
    private final Optional<CorePlan> plan;

    public CoreEdits(Yard yard, Optional<CorePlan> plan) {
        this.yard = yard;
        this.plan = plan;
    }

    static CoreEdits of(Surroundings around) {
        return new CoreEdits(around.yard(), around.plan());
    }

    /** A core or spare on the map. */
    record Spot(String id, Point at) {}

    /** All cores and spares. */
    Stream<Spot> spots() {
        return plan.map(p -> p.cores().stream().map(core -> new Spot(core.id(), core.at())))
                .orElseGet(() -> yard.all(Core.class).map(core -> new Spot(core.id(), core.at())));
    }

    Optional<Spot> spot(String id) {
        return spots().filter(spot -> !id.isBlank() && spot.id().equals(id)).findFirst();
    }

    /** The yard with the cores as its own. */
    Optional<Yard> written() {
        return plan.map(p -> HandChanges.written(yard, p))
                .or(() -> Optional.of(yard).filter(HandChanges::isByHand));
    }

    /** Moves a core or a spare. */
    public Optional<Effect.Edit> move(String id, Point to) {
        return edit("move core " + id, all -> HandChanges.moved(all, id, to));
    }

    /** Locks a core, or frees it; nothing for a spare. */
    public Optional<Effect.Edit> lock(String id) {
        boolean lock = !isLocked(id);
        return edit((lock ? "lock core " : "unlock core ") + id, all -> HandChanges.locked(all, id, lock));
    }

    /** Puts a core where its spare is, and the spare in its place. Of a spare, the core it stands in for is meant. */
    public Optional<Effect.Edit> swap(String id) {
        String core = coreOf(id);
        return edit("use the spare of core " + core, all -> HandChanges.swapped(all, core));
    }

    /** Drops all hand changes; nothing while there are none. */
    public Optional<Effect.Edit> afresh() {
        return HandChanges.isByHand(yard)
                ? Optional.of(new Effect.Edit("plan the cores afresh", HandChanges.afresh(yard)))
                : Optional.empty();
    }

    public boolean isLocked(String id) {
        return yard.all(Core.class).anyMatch(core -> core.id().equals(id) && core.locked());
    }

    /** The locked cores, in a line; blank if there are none. */
    public String lockedWords() {
        String ids = yard.all(Core.class)
                .filter(Core::locked)
                .map(Core::id)
                .sorted(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()))
                .collect(Collectors.joining(", "));
        return ids.isEmpty() ? "" : "Locked: " + ids;
    }

    private String coreOf(String id) {
        Stream<String> planned = plan.stream()
                .flatMap(p -> p.cores().stream())
                .filter(core -> core.id().equals(id))
                .flatMap(core -> core.spareOf().stream());
        Stream<String> own = OwnCore.of(yard).stream()
                .filter(o -> o.spares().stream().anyMatch(spare -> spare.id().equals(id)))
                .map(o -> o.core().id());
        return Stream.concat(planned, own).findFirst().orElse(id);
    }

    private Optional<Effect.Edit> edit(String label, UnaryOperator<Yard> change) {
        return written()
                .flatMap(all -> Optional.of(change.apply(all)).filter(after -> !after.equals(all)))
                .map(after -> new Effect.Edit(label, after));
    }
}
