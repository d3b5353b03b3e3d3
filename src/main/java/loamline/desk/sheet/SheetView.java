package loamline.desk.sheet;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;

/** The sheet: a line a step, and the tools of the steps that have some. */
public final class SheetView extends ScrollPane {
    private final Session session;
    private final VBox lines = new VBox();

    /** @param tools beneath the lines, in order */
    public SheetView(Session session, List<Node> tools) {
        this.session = session;
        getStyleClass().add("sheet");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        VBox content = new VBox(lines);
        content.getChildren().addAll(tools);
        setContent(content);
        session.results().addListener((o, before, now) -> fill());
        session.units().addListener((o, before, now) -> fill());
    }

    private void fill() {
        List<Node> rows = session.results()
                .get()
                .map(results -> Steps.of(results, session.units().get()).stream()
                        .map(SheetView::line)
                        .toList())
                .orElse(List.of());
        lines.getChildren().setAll(rows);
    }

    private static Node line(Steps.Line line) {
        Label title = new Label(line.title());
        title.getStyleClass().add("step-title");
        Label result = new Label(line.result());
        result.getStyleClass().add("soft");
        result.setWrapText(true);
        VBox words = new VBox(2, title, result);
        HBox row = new HBox(10, StateSign.of(line.state()), words);
        row.getStyleClass().add("step");
        row.setPadding(new Insets(8, 16, 8, 16));
        row.setAccessibleText(line.title() + ", " + line.state().word() + ": " + line.result());
        return row;
    }
}
