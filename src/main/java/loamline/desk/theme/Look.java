package loamline.desk.theme;

import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Parent;
import javafx.scene.Scene;
import loamline.desk.store.Settings;
import loamline.desk.store.Settings.Theme;
import loamline.scene.Palette;

/** Dresses a scene: letters, colours and size of text, as the settings have them and whenever they change. */
public final class Look {
    private static final String CONTROLS = "/atlantafx/base/theme/primer-light.css";
    private static final String OURS = "/loamline/desk/desk.css";

    private final ObjectProperty<Settings> settings;

    public Look(ObjectProperty<Settings> settings) {
        this.settings = settings;
    }

    /** The scene's root has the style class {@code desk} from here on. */
    public void dress(Scene scene) {
        Letters.load();
        Application.setUserAgentStylesheet(CONTROLS);
        scene.getStylesheets().add(Look.class.getResource(OURS).toExternalForm());
        scene.getRoot().getStyleClass().add("desk");
        settings.addListener((o, before, now) -> apply(scene.getRoot()));
        apply(scene.getRoot());
    }

    private void apply(Parent root) {
        boolean dark = settings.get().theme() == Theme.DARK;
        root.getStyleClass().removeAll("light", "dark");
        root.getStyleClass().add(dark ? "dark" : "light");
        root.setStyle("-fx-font-size: " + settings.get().textPx() + "px;");
    }

    /** The map's colours in the theme there is. */
    public Palette palette() {
        return settings.get().theme() == Theme.DARK ? Palette.DARK : Palette.LIGHT;
    }

    /** Light becomes dark and dark light. */
    public void switchTheme() {
        Settings now = settings.get();
        settings.set(now.withTheme(now.theme() == Theme.DARK ? Theme.LIGHT : Theme.DARK));
    }

    /** Larger or smaller text, within {@link Settings#LEAST_TEXT_PX} and {@link Settings#MOST_TEXT_PX}. */
    public void resizeText(int byPx) {
        settings.set(settings.get().withTextPx(settings.get().textPx() + byPx));
    }

    /** Text of the usual size. */
    public void resetText() {
        settings.set(settings.get().withTextPx(Settings.USUAL.textPx()));
    }
}
