package loamline.desk.store;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The notices, one under the other; takes no room while there are none. */
public final class NoticesView extends VBox {
    private final Notices notices;

    public NoticesView(Notices notices) {
        this.notices = notices;
        notices.all().addListener(o -> show());
        show();
    }

    private void show() {
        getChildren().setAll(notices.all().get().stream().map(this::line).toList());
    }

    private Node line(Notices.Notice notice) {
        Label text = new Label("▲ " + notice.text());
        text.setWrapText(true);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(8, text);
        line.getStyleClass().add("notice");
        notice.actions()
                .forEach(action -> line.getChildren()
                        .add(button(action.label(), notice.text(), () -> notices.use(notice, action))));
        line.getChildren().add(button("Close", "Close: " + notice.text(), () -> notices.dismiss(notice.about())));
        return line;
    }

    private static Button button(String label, String help, Runnable action) {
        Button button = new Button(label);
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }
}
