package loamline.desk;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import loamline.sampling.PlanOptions;
import loamline.units.UnitSystem;
import loamline.yard.Yard;

/** The one holder of the current yard, of what was computed from it, and of what is selected. */
final class Session {
    private final ReadOnlyObjectWrapper<Optional<Results>> results = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper work = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Selection> selection = new SimpleObjectProperty<>(Selection.NOTHING);
    private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.US);
    private final ExecutorService background;
    private final Consumer<Runnable> onScreen;

    /** A session of the running window. */
    static Session ofWindow() {
        ExecutorService background = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "loamline work");
            thread.setDaemon(true);
            return thread;
        });
        return new Session(background, Platform::runLater);
    }

    Session(ExecutorService background, Consumer<Runnable> onScreen) {
        this.background = background;
        this.onScreen = onScreen;
    }

    /** Computes everything for a yard, in the background. */
    void plan(Yard yard, PlanOptions options) {
        work.set("Planning the cores of " + yard.name() + " …");
        background.execute(() -> {
            Results computed = Results.of(yard, options);
            onScreen.accept(() -> {
                selection.set(Selection.NOTHING);
                results.set(Optional.of(computed));
                work.set("");
            });
        });
    }

    /** What was computed last; empty until the first time. */
    ReadOnlyObjectProperty<Optional<Results>> results() {
        return results.getReadOnlyProperty();
    }

    /** What runs in the background, in words; blank if nothing does. */
    ReadOnlyStringProperty work() {
        return work.getReadOnlyProperty();
    }

    ObjectProperty<Selection> selection() {
        return selection;
    }

    ObjectProperty<UnitSystem> units() {
        return units;
    }
}
