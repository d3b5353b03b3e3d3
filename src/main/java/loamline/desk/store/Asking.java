package loamline.desk.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the user must be asked before files are touched; a dialog in the window, a script in tests. */
public interface Asking {
    /**
     * A question with a few answers.
     *
     * @param title what it is about
     * @param text the question, with what each answer leads to
     * @param choices the answers, the safest first
     * @param ifClosed the answer of one who gives none
     */
    record Question<A>(String title, String text, List<Choice<A>> choices, A ifClosed) {
        public Question {
            choices = List.copyOf(choices);
        }
    }

    /** An answer and what its button says. */
    record Choice<A>(A answer, String label) {}

    <A> A ask(Question<A> question);

    /**
     * A yard's file to be opened.
     *
     * @param folder where to begin
     */
    Optional<Path> fileToOpen(Optional<Path> folder);

    /**
     * A file to write the yard to; whoever asks has asked whether an existing one may be replaced.
     *
     * @param title of the dialog
     * @param suggested folder and name to begin with
     */
    Optional<Path> fileToSave(String title, Path suggested);
}
