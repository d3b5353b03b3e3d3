package loamline.desk.tool;

import java.util.List;
import java.util.concurrent.Callable;
import loamline.desk.session.Selection;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** What a tool wants done. */
public sealed interface Effect {
    /** An entry in the history. */
    record Edit(String label, Yard after) implements Effect {}

    /** The yard in motion, as in a drag. */
    record Preview(Yard moving) implements Effect {}

    /** The motion led to nothing. */
    record DropPreview() implements Effect {}

    record Select(Selection selection) implements Effect {}

    /** Something to be said in the foot, as why an input was refused. */
    record Say(String words) implements Effect {}

    /** Features to be kept for pasting. */
    record Copy(List<Feature> copied) implements Effect {
        public Copy {
            copied = List.copyOf(copied);
        }
    }

    /** Another tool comes in hand. */
    record Take(Tool tool) implements Effect {}

    /**
     * Something to be found out in the background; what is found comes back as an input, to whatever tool is then in
     * hand. Asking again gives up what was asked before.
     *
     * @param words what is done, for the foot
     */
    record Later(String words, Callable<Input> task) implements Effect {}

    /** The tool is done; the window goes back to the pointer. */
    record Done() implements Effect {}
}
