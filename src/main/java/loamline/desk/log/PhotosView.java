package loamline.desk.log;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import loamline.desk.log.PhotoModel.Photo;
import loamline.desk.theme.Words;

/** The photos of the cores: small pictures that open in a window of their own, and names of those that are not there. */
final class PhotosView extends VBox {
    private static final double SMALL_PX = 52;
    private static final double SHARP = 2;
    private static final double LARGE_PX = 800;

    private final PhotoModel model;
    private final FlowPane pictures = new FlowPane(6, 6);
    private final VBox lacking = new VBox(2);
    private final ComboBox<String> core = new ComboBox<>();
    private List<Photo> shown = List.of();

    /** @param ask for a picture's file */
    PhotosView(PhotoModel model, Supplier<Optional<Path>> ask) {
        super(6);
        this.model = model;
        Label title = new Label("Photos");
        title.getStyleClass().add("group-title");
        pictures.setPrefWrapLength(SMALL_PX); // the sheet says how wide it is
        core.setPromptText("Core");
        core.setAccessibleText("Core that the photo is of");
        Button attach = new Button("Add photo …");
        attach.setMinWidth(USE_PREF_SIZE);
        attach.setAccessibleHelp("Writes the name of a picture in the yard’s folder into the log");
        attach.disableProperty().bind(core.valueProperty().isNull());
        attach.setOnAction(e -> ask.get().ifPresent(file -> model.attach(core.getValue(), file)));
        attach.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(attach, Priority.ALWAYS);
        Label said = Words.wrapped("", "warn");
        said.textProperty().bind(model.said());
        getChildren().addAll(title, pictures, lacking, new HBox(6, core, attach), said);
        for (Node node : List.of(pictures, lacking)) {
            node.managedProperty().bind(node.visibleProperty());
        }
        show();
    }

    /** Looks at the logs and the files again. */
    void show() {
        List<String> cores = model.cores();
        if (!core.getItems().equals(cores)) {
            core.getItems().setAll(cores);
        }
        List<Photo> photos = model.photos();
        if (!photos.equals(shown) || pictures.getChildren().isEmpty()) {
            shown = photos;
            pictures.getChildren()
                    .setAll(photos.stream()
                            .filter(photo -> photo.file().isPresent())
                            .map(photo -> picture(photo, photo.file().get()))
                            .toList());
            pictures.setVisible(!pictures.getChildren().isEmpty());
            lacking.getChildren().clear();
            lacking.setVisible(false);
            photos.stream().filter(photo -> photo.file().isEmpty()).forEach(photo -> lack(photo.words()));
        }
    }

    private void lack(String words) {
        lacking.getChildren().add(Words.wrapped(words, "soft"));
        lacking.setVisible(true);
    }

    private Node picture(Photo photo, Path file) {
        Image image = new Image(file.toUri().toString(), SHARP * SMALL_PX, SHARP * SMALL_PX, true, true, true);
        ImageView small = new ImageView(image);
        small.setPreserveRatio(true);
        small.setFitWidth(SMALL_PX);
        small.setFitHeight(SMALL_PX);
        Button open = new Button(photo.core(), small);
        open.setMnemonicParsing(false); // a name may hold an underscore
        open.setContentDisplay(ContentDisplay.TOP);
        open.getStyleClass().add("photo");
        open.setTooltip(new Tooltip(photo.name()));
        open.setAccessibleText("Photo of core " + photo.core() + ": " + photo.name());
        open.setOnAction(e -> openLarge(photo, file));
        image.errorProperty().addListener((o, before, failed) -> {
            pictures.getChildren().remove(open);
            lack(photo.words() + ", no picture that can be shown here");
        });
        return open;
    }

    private static void openLarge(Photo photo, Path file) {
        ImageView large = new ImageView(new Image(file.toUri().toString(), true));
        large.setPreserveRatio(true);
        Scene scene = new Scene(new StackPane(large), LARGE_PX, LARGE_PX);
        large.fitWidthProperty().bind(scene.widthProperty());
        large.fitHeightProperty().bind(scene.heightProperty());
        Stage window = new Stage();
        window.setTitle(photo.core() + ": " + photo.name());
        scene.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                window.close();
            }
        });
        window.setScene(scene);
        window.show();
    }
}
