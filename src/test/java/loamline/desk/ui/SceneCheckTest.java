package loamline.desk.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import loamline.desk.WindowDriver;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

/** The checks of the window find what is wrong. */
@Tag("window")
class SceneCheckTest {
    @BeforeAll
    static void start() throws TimeoutException {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void aSoundPaneHasNoComplaints() {
        assertThat(complaints(pane(100, new Label("Bags")))).isEmpty();
    }

    @Test
    void aCutTextIsFoundUnlessATooltipSaysAllOfIt() {
        Pane narrow = pane(30, new Label("Beyond the orchard"));
        assertThat(complaints(narrow)).singleElement().asString().startsWith("cut: \"Beyond the orchard\"");
        ((Label) narrow.getChildren().get(0)).setTooltip(new Tooltip("Beyond the orchard"));
        assertThat(complaints(narrow)).isEmpty();
    }

    @Test
    void thingsThatLieOverEachOtherAreFound() {
        assertThat(complaints(pane(100, new Label("Bags"), new Label("Cores"))))
                .anyMatch(complaint -> complaint.startsWith("overlap: "));
    }

    @Test
    void aThingBeyondTheWindowIsFound() {
        Pane pane = pane(100, new Label("Bags"));
        pane.getChildren().get(0).setLayoutX(150);
        assertThat(complaints(pane)).anyMatch(complaint -> complaint.startsWith("outside: "));
    }

    @Test
    void aFieldWithoutANameIsFound() {
        TextField field = new TextField("3 ft");
        assertThat(complaints(pane(100, field))).singleElement().asString().startsWith("nameless: ");
        field.setAccessibleText("Off edges");
        assertThat(complaints(pane(100, field))).isEmpty();
    }

    @Test
    void aFaintTextIsFound() {
        Label pale = new Label("Bags");
        pale.setStyle("-fx-text-fill: #999999; -fx-background-color: white;");
        assertThat(complaints(pane(100, pale))).singleElement().asString().startsWith("faint: \"Bags\"");
    }

    /** The greatest contrast there is, by the definition in WCAG 2.2. */
    @Test
    void blackOnWhiteHasAContrastOf21() {
        assertThat(Picture.contrast(0x000000, 0xFFFFFF)).isCloseTo(21, within(1e-9));
    }

    private static Pane pane(double width, Control... children) {
        Pane pane = new Pane(children);
        for (Control child : children) {
            child.setPrefWidth(width);
        }
        return pane;
    }

    private static List<String> complaints(Pane pane) {
        return WindowDriver.onScreen(() -> {
            Scene scene = pane.getScene() == null ? new Scene(pane, 200, 100) : pane.getScene();
            Picture picture = Picture.of(scene);
            return new SceneCheck(scene).complaints(picture);
        });
    }
}
