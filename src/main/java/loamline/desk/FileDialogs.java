package loamline.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** How a person is asked for a file; empty if the person thinks better of it. */
interface FileDialogs {
    /** A file that is there, of some sort: its name in the plural, and patterns such as {@code *.json}. */
    Optional<Path> open(String title, String sort, List<String> patterns);

    /** A file to be written, with a name to begin with. */
    Optional<Path> save(String title, String name);

    /** The system's own dialogs, in front of a window. */
    static FileDialogs of(Stage owner) {
        return new FileDialogs() {
            @Override
            public Optional<Path> open(String title, String sort, List<String> patterns) {
                FileChooser chooser = new FileChooser();
                chooser.setTitle(title);
                chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(sort, patterns));
                return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
            }

            @Override
            public Optional<Path> save(String title, String name) {
                FileChooser chooser = new FileChooser();
                chooser.setTitle(title);
                chooser.setInitialFileName(name);
                return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
            }
        };
    }
}
