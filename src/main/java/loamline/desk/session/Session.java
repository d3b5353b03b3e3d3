package loamline.desk.session;

import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.History;
import loamline.yard.Yard;

/**
 * The one holder of the current yard with its history, of what was computed from it, and of what is selected. Only
 * here is the yard replaced. All methods are called on the screen's thread.
 */
public final class Session {
    private static final String PLANNING = "Planning the cores";

    private final ReadOnlyObjectWrapper<History> history;
    private final ReadOnlyObjectWrapper<Yard> shown;
    private final ReadOnlyObjectWrapper<Optional<Results>> results = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Selection> selection = new SimpleObjectProperty<>(Selection.NOTHING);
    private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.US);
    private final BooleanProperty seen = new SimpleBooleanProperty();
    private final Work work;

    /** A session on a yard, which computes at once. */
    public Session(Yard first, Work work) {
        this(History.of(first), work);
        compute();
    }

    private Session(History first, Work work) {
        this.work = work;
        history = new ReadOnlyObjectWrapper<>(first);
        shown = new ReadOnlyObjectWrapper<>(first.now());
    }

    /** A session on a yard of which nothing is computed before {@link #begin}, so that a window can come up first. */
    public static Session resting(Yard first, Work work) {
        return new Session(History.of(first), work);
    }

    /** Puts another yard in the place of this one, with its own history; all is computed in the background. */
    public void open(History opened) {
        selection.set(Selection.NOTHING);
        results.set(Optional.empty());
        stand(opened);
        measure();
    }

    /** Computes the yard of a resting session in the background; nothing is told before all of it is known. */
    public void begin() {
        Yard yard = shown.get();
        work.latest(
                "plan", PLANNING, "Try again", progress -> Results.ground(yard).planned(), this::take);
    }

    /** Zones and problems are shown as soon as they are there; the cores are planned without waiting for that. */
    private void measure() {
        Yard yard = shown.get();
        work.latest(
                "plan",
                PLANNING,
                "Try again",
                progress -> {
                    Results ground = Results.ground(yard);
                    work.tell(() -> take(ground));
                    return ground.planned();
                },
                this::take);
    }

    /** Takes up what was computed, unless the yard has moved on or more is known of it. */
    private void take(Results computed) {
        boolean more = results.get()
                .filter(there ->
                        there.yard().equals(computed.yard()) && there.plan().isPresent())
                .isPresent();
        if (!more && computed.yard().equals(shown.get())) {
            results.set(Optional.of(computed));
        }
    }

    /** One edit, undone as one; an edit that changes nothing is none. */
    public void edit(String label, Yard after) {
        become(history.get().then(label, after));
    }

    public void undo() {
        become(history.get().undone());
    }

    public void redo() {
        become(history.get().redone());
    }

    /** Says that the yard as it stands is on disk. */
    public void markSaved() {
        history.set(history.get().markedSaved());
    }

    /** Says that no state of the yard is on disk any more. */
    public void markUnsaved() {
        history.set(history.get().markedUnsaved());
    }

    /** Shows a yard while it is being changed, as in a drag, without an entry in the history. */
    public void preview(Yard moving) {
        shown.set(moving);
        compute();
    }

    /** Ends a preview that led to nothing, if there is one. */
    public void dropPreview() {
        if (!shown.get().equals(history.get().now())) {
            become(history.get());
        }
    }

    private void become(History changed) {
        stand(changed);
        compute();
    }

    private void stand(History changed) {
        history.set(changed);
        shown.set(changed.now());
        selection.set(selection
                .get()
                .within(changed.now().features().stream().map(Feature::key).collect(Collectors.toSet())));
    }

    /** Zones at once; the plan in the background, unless the yard is still in motion. */
    private void compute() {
        Yard yard = shown.get();
        if (results.get().filter(r -> r.yard().equals(yard)).isEmpty()) {
            Results ground = Results.ground(yard);
            results.set(Optional.of(ground));
        }
        if (yard.equals(history.get().now())) {
            plan();
        }
    }

    private void plan() {
        Results ground = results.get().orElseThrow();
        if (ground.plan().isPresent()) {
            return;
        }
        work.latest("plan", PLANNING, "Plan again", progress -> ground.planned(), this::take);
    }

    /** The yard with all that was done to it; what undo and redo move through. */
    public ReadOnlyObjectProperty<History> history() {
        return history.getReadOnlyProperty();
    }

    /** The yard to be seen: the current one, or the one in motion. */
    public ReadOnlyObjectProperty<Yard> shown() {
        return shown.getReadOnlyProperty();
    }

    /** What was computed last. */
    public ReadOnlyObjectProperty<Optional<Results>> results() {
        return results.getReadOnlyProperty();
    }

    /** Whether a plan has been drawn; what is not needed for that may begin then. */
    public BooleanProperty seen() {
        return seen;
    }

    public ObjectProperty<Selection> selection() {
        return selection;
    }

    public ObjectProperty<UnitSystem> units() {
        return units;
    }

    public Work work() {
        return work;
    }
}
