package loamline.desk.store;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** Asks in dialogs over a window. */
public final class Dialogs implements Asking {
    private final Window owner;

    public Dialogs(Window owner) {
        this.owner = owner;
    }

    @Override
    public <A> A ask(Question<A> question) {
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, question.text());
        alert.initOwner(owner);
        alert.setTitle(question.title());
        alert.setHeaderText(question.title());
        alert.setGraphic(null);
        alert.getDialogPane().getStylesheets().addAll(owner.getScene().getStylesheets());
        alert.getDialogPane().getStyleClass().addAll(owner.getScene().getRoot().getStyleClass());
        alert.getButtonTypes()
                .setAll(question.choices().stream()
                        .map(c -> button(question, c))
                        .toList());
        Optional<ButtonType> pressed = alert.showAndWait();
        return question.choices().stream()
                .filter(c -> pressed.filter(p -> p.getText().equals(c.label())).isPresent())
                .findFirst()
                .map(Choice::answer)
                .orElse(question.ifClosed());
    }

    private static <A> ButtonType button(Question<A> question, Choice<A> choice) {
        boolean cancels = choice.answer().equals(question.ifClosed());
        return new ButtonType(choice.label(), cancels ? ButtonData.CANCEL_CLOSE : ButtonData.OTHER);
    }

    @Override
    public Optional<Path> fileToOpen(String title, Sort sort, Optional<Path> folder) {
        FileChooser chooser = chooser(title, List.of(sort), folder);
        return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
    }

    @Override
    public Optional<Path> fileToSave(String title, List<Sort> sorts, Path suggested) {
        FileChooser chooser = chooser(title, sorts, Optional.ofNullable(suggested.getParent()));
        chooser.setInitialFileName(String.valueOf(suggested.getFileName()));
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    private static FileChooser chooser(String title, List<Sort> sorts, Optional<Path> folder) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        sorts.forEach(sort -> chooser.getExtensionFilters().add(new ExtensionFilter(sort.name(), sort.patterns())));
        folder.filter(Files::isDirectory).map(Path::toFile).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }
}
