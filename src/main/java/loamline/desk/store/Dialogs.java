package loamline.desk.store;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;

/** Asks in dialogs over a window. */
public final class Dialogs implements Asking {
    private static final ExtensionFilter PROJECTS = new ExtensionFilter("Yard projects", "*.loam.json");
    private static final ExtensionFilter GEOJSON = new ExtensionFilter("GeoJSON", "*.geojson");

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
    public Optional<Path> fileToOpen(Optional<Path> folder) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Open a yard");
        chooser.getExtensionFilters().add(new ExtensionFilter("Yards", "*.loam.json", "*.geojson", "*.json"));
        beginIn(chooser, folder);
        return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
    }

    @Override
    public Optional<Path> fileToSave(String title, Path suggested) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().addAll(PROJECTS, GEOJSON);
        chooser.setInitialFileName(String.valueOf(suggested.getFileName()));
        beginIn(chooser, Optional.ofNullable(suggested.getParent()));
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    private static void beginIn(FileChooser chooser, Optional<Path> folder) {
        folder.filter(Files::isDirectory).map(Path::toFile).ifPresent(chooser::setInitialDirectory);
    }
}
