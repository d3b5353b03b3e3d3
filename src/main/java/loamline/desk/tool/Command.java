package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import loamline.desk.session.Selection;
import loamline.yard.Feature;
import loamline.yard.Yard;

/**
 * Something that can be done to what is selected, for menus, keys and buttons alike.
 *
 * @param label what the menu says
 * @param shortcut as "Ctrl+Shift+A", where Ctrl is Cmd on a Mac; blank for none
 * @param action what it does; empty if it cannot be done now
 */
public record Command(String label, String shortcut, Function<Context, Optional<List<Effect>>> action) {
    /**
     * What commands depend on.
     *
     * @param yard the current yard
     * @param selection what is selected
     * @param copied what was copied last
     */
    public record Context(Yard yard, Selection selection, List<Feature> copied) {
        public Context {
            copied = List.copyOf(copied);
        }

        /** Keys of the selected features that can be edited: those of a known kind. */
        Set<String> keys() {
            return Set.copyOf(features().stream().map(Feature::key).toList());
        }

        /** The selected features that can be edited, in the yard's order. */
        List<Feature> features() {
            return yard.features().stream()
                    .filter(feature -> selection.keys().contains(feature.key()))
                    .filter(feature -> feature.kind().isPresent())
                    .toList();
        }
    }

    /** Whether it can be done now. */
    public boolean isEnabled(Context context) {
        return action.apply(context).isPresent();
    }

    /** What it does, in order; nothing if it cannot be done now. */
    public List<Effect> on(Context context) {
        return action.apply(context).orElse(List.of());
    }
}
