package loamline.desk.theme;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Icons in the colour and size of the text beside them; never without words. */
public final class Icons {
    private Icons() {}

    /** An icon for a control that has its own words. */
    public static FontIcon of(Feather icon) {
        return new FontIcon(icon);
    }

    /**
     * A button with an icon and words.
     *
     * @param help what it does, with its keys; shown over it and told to screen readers
     */
    public static Button button(Feather icon, String words, String help, Runnable action) {
        Button button = new Button(words, of(icon));
        button.setTooltip(new Tooltip(help));
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }
}
