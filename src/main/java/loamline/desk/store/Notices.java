package loamline.desk.store;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Lines above the map that stay until they are answered: nothing waits for them. */
public final class Notices {
    /** What notices are about; a newer one takes the place of an older one. */
    public enum About {
        RECOVERY,
        DISK,
        OPENING,
        SAVING,
        AUTOSAVE,
        SETTINGS
    }

    /** @param actions besides closing it */
    public record Notice(About about, String text, List<Action> actions) {
        public Notice {
            actions = List.copyOf(actions);
        }
    }

    /** A button of a notice; using it closes the notice. */
    public record Action(String label, Runnable run) {}

    private final ReadOnlyObjectWrapper<List<Notice>> all = new ReadOnlyObjectWrapper<>(List.of());

    public ReadOnlyObjectProperty<List<Notice>> all() {
        return all.getReadOnlyProperty();
    }

    void show(About about, String text, Action... actions) {
        dismiss(about);
        List<Notice> more = new ArrayList<>(all.get());
        more.add(new Notice(about, text, List.of(actions)));
        all.set(List.copyOf(more));
    }

    /** Closes a notice, if there is one. */
    public void dismiss(About about) {
        all.set(all.get().stream().filter(notice -> notice.about() != about).toList());
    }

    /** Does what a button says, and closes its notice. */
    public void use(Notice notice, Action action) {
        dismiss(notice.about());
        action.run().run();
    }
}
