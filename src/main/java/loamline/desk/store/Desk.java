package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import loamline.desk.session.Session;
import loamline.desk.store.Notices.About;
import loamline.desk.store.Notices.Action;
import loamline.files.FileTrouble;

/**
 * The window's memory from start to end: settings, the yard's file, and recovery after a run that did not end
 * cleanly. All methods are called on the screen's thread.
 */
public final class Desk {
    /** Between looks at the yard's file, while the window is open. */
    private static final long LOOK_MS = 2000;

    private final Session session;
    private final Home home;
    private final Later later;
    private final Consumer<Runnable> onScreen;
    private final Store store;
    private final ObjectProperty<Settings> settings;
    private final ObjectProperty<Map<String, Object>> ui = new SimpleObjectProperty<>(Map.of());
    private Optional<Recovery> recovery = Optional.empty();

    /** @param onScreen runs something on the screen's thread */
    public Desk(Session session, Home home, Asking asking, Later later, Consumer<Runnable> onScreen) {
        this.session = session;
        this.home = home;
        this.later = later;
        this.onScreen = onScreen;
        store = new Store(session, home, asking, later, onScreen);
        Path file = home.config().resolve("settings.json");
        settings = new SimpleObjectProperty<>(Settings.read(file));
        session.units().set(settings.get().units());
        session.units()
                .addListener((o, before, now) -> settings.set(settings.get().withUnits(now)));
        settings.addListener((o, before, now) -> {
            session.units().set(now.units());
            later.in(0, this::writeSettings);
        });
    }

    /**
     * Takes up what the last run left if it did not end cleanly, else opens a file; from here on every change is kept
     * in the recovery file.
     *
     * @param asked a file to open; empty to stay with the session's first yard
     */
    public void start(Optional<Path> asked) {
        try {
            recovery = Recovery.begin(
                    home.state().resolve("recovery"), later, outcome -> onScreen.accept(() -> autosaved(outcome)));
            Optional<Recovery.Found> found =
                    recovery.isPresent() ? recovery.get().found() : Optional.empty();
            if (recovery.isEmpty()) {
                autosaved(Optional.of(new IOException("so many windows are open that none is left for this one")));
            }
            found.ifPresentOrElse(left -> resume(left, asked), () -> asked.ifPresent(store::open));
        } catch (IOException e) {
            autosaved(Optional.of(e));
            asked.ifPresent(store::open);
        }
        InvalidationListener changed = o -> keep();
        session.history().addListener(changed);
        session.selection().addListener(changed);
        store.file().addListener(changed);
        ui.addListener(changed);
        keep();
        later.in(LOOK_MS, this::lookAgain);
    }

    private void resume(Recovery.Found left, Optional<Path> asked) {
        left.aside()
                .ifPresent(aside -> store.notices()
                        .show(
                                About.RECOVERY,
                                "The last run did not end as it should, and what it left cannot be read. It is kept as "
                                        + aside + "."));
        left.state().ifPresentOrElse(state -> resume(state, asked), () -> asked.ifPresent(store::open));
    }

    private void resume(Snapshot state, Optional<Path> asked) {
        store.resume(state);
        ui.set(state.ui());
        Action discard = new Action(
                state.file().isPresent() ? "Discard, and open the file as saved" : "Discard, and start anew",
                store::reopen);
        String text = "The last run did not end as it should. “" + store.name()
                + "” is open as it was; undo begins anew from here.";
        boolean other = asked.isPresent()
                && !asked.map(Path::toAbsolutePath).equals(state.file().map(Path::toAbsolutePath));
        if (other) {
            Path file = asked.get();
            Action open = new Action("Open “" + YardFile.name(file) + "”", () -> store.open(file));
            store.notices().show(About.RECOVERY, text, discard, open);
        } else {
            store.notices().show(About.RECOVERY, text, discard);
        }
    }

    private void keep() {
        recovery.ifPresent(r -> r.changed(new Snapshot(
                session.history().get().now(),
                store.file().get().path(),
                store.file().get().known(),
                session.history().get().isUnsaved(),
                session.selection().get(),
                ui.get())));
    }

    private void autosaved(Optional<Exception> trouble) {
        trouble.ifPresentOrElse(
                e -> store.notices()
                        .show(
                                About.AUTOSAVE,
                                "Changes are not being kept safe: " + home.state() + " " + inWords(e)
                                        + ". Save often until this line is gone."),
                () -> store.notices().dismiss(About.AUTOSAVE));
    }

    private static String inWords(Exception e) {
        return e instanceof IOException io ? FileTrouble.of(io).message() : String.valueOf(e.getMessage());
    }

    private void lookAgain() {
        onScreen.accept(() -> {
            store.lookAtDisk();
            later.in(LOOK_MS, this::lookAgain);
        });
    }

    private void writeSettings() {
        try {
            settings.get().write(home.config().resolve("settings.json"));
        } catch (IOException e) {
            onScreen.accept(() -> store.notices()
                    .show(About.SETTINGS, "Settings cannot be kept: " + home.config() + " " + inWords(e) + "."));
        }
    }

    /** Ends the run if nothing is lost by it, asking about unsaved changes; whether the window may close. */
    public boolean close() {
        boolean leave = store.mayLeave();
        if (leave) {
            try {
                if (recovery.isPresent()) {
                    recovery.get().end();
                }
            } catch (IOException e) {
                // its file stays, and the next start opens this state once more: nothing is lost by that
            }
            recovery = Optional.empty();
        }
        return leave;
    }

    /** Ends as a killed program does; for tests within one program. */
    void abandon() throws IOException {
        if (recovery.isPresent()) {
            recovery.get().abandon();
        }
        recovery = Optional.empty();
    }

    public Store store() {
        return store;
    }

    /** What the user chose; a change is written to disk. */
    public ObjectProperty<Settings> settings() {
        return settings;
    }

    /** Small things of the window that come back after a killed run, such as step and view: JSON values by name. */
    public ObjectProperty<Map<String, Object>> ui() {
        return ui;
    }
}
