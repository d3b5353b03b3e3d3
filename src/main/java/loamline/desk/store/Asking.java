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

    /** A sort of files: its name in the plural, and patterns such as {@code *.json}. */
    record Sort(String name, List<String> patterns) {
        public Sort {
            patterns = List.copyOf(patterns);
        }
    }

    /**
     * A file to be opened.
     *
     * @param title of the dialog
     * @param folder where to begin
     */
    Optional<Path> fileToOpen(String title, Sort sort, Optional<Path> folder);

    /**
     * A file to be written; whoever asks has asked whether an existing one may be replaced.
     *
     * @param title of the dialog
     * @param sorts what it may be
     * @param suggested name to begin with, and folder if it has one
     */
    Optional<Path> fileToSave(String title, List<Sort> sorts, Path suggested);
}
