package loamline.desk.store;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.desk.session.Selection;
import loamline.files.Fingerprint;
import loamline.yard.Extras;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/**
 * All that a killed program is to come back with. Undo is not: the history starts anew.
 *
 * <p>Written as a project file with one member more, so that in need it opens like any other yard.
 *
 * @param yard as it stands
 * @param file where it was opened from or saved to; empty for a yard without a file
 * @param known what that file held when it was last read or written
 * @param unsaved whether the yard was changed since
 * @param selection what is selected
 * @param ui small things of the window, such as step and view: JSON values by name
 */
record Snapshot(
        Yard yard,
        Optional<Path> file,
        Optional<Fingerprint> known,
        boolean unsaved,
        Selection selection,
        Map<String, Object> ui) {
    private static final String MEMBER = "loamlineRecovery";

    /** The yard with everything else as one more member of its file. */
    Yard asYard() {
        Map<String, @Nullable Object> state = new LinkedHashMap<>();
        file.ifPresent(path -> state.put("file", path.toString()));
        known.ifPresent(fingerprint -> state.put("sha256", fingerprint.sha256()));
        state.put("unsaved", unsaved);
        state.put("selected", selection.keys());
        state.put("core", selection.core());
        state.put("zone", selection.zone());
        state.put("window", ui);
        Map<String, @Nullable Object> members =
                new LinkedHashMap<>(yard.extras().members());
        members.put(MEMBER, state);
        return withExtras(yard, members);
    }

    /** From a yard made by {@link #asYard}; what is missing there is as in a yard just drawn and not saved. */
    static Snapshot of(Yard read) {
        Map<String, @Nullable Object> members =
                new LinkedHashMap<>(read.extras().members());
        Map<?, ?> state = members.remove(MEMBER) instanceof Map<?, ?> map ? map : Map.of();
        Map<String, Object> ui = new LinkedHashMap<>();
        if (state.get("window") instanceof Map<?, ?> map) {
            map.forEach((name, value) -> {
                if (value != null) {
                    ui.put(String.valueOf(name), value);
                }
            });
        }
        List<String> keys = state.get("selected") instanceof List<?> list ? Settings.texts(list) : List.of();
        return new Snapshot(
                withExtras(read, members),
                Settings.path(state.get("file")),
                text(state, "sha256").map(Fingerprint::new),
                !Boolean.FALSE.equals(state.get("unsaved")),
                new Selection(
                        keys,
                        text(state, "core").orElse(""),
                        text(state, "zone").orElse("")),
                ui);
    }

    private static Optional<String> text(Map<?, ?> state, String name) {
        return state.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    private static Yard withExtras(Yard yard, Map<String, @Nullable Object> members) {
        return yard.withExtras(new Extras(members));
    }
}
