package loamline.desk.cores;

import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** How many cores are enough: a table with the number in force marked, and where its figures come from. */
final class CountView extends VBox {
    private int cores;

    CountView() {
        super(6);
        getStyleClass().add("why");
        sceneProperty().addListener((o, before, now) -> fill());
    }

    /** @param aBag cores a bag, now */
    void show(int aBag) {
        cores = aBag;
        fill();
    }

    /** The figures are worked out only while they are to be seen. */
    private void fill() {
        if (getScene() == null) {
            return;
        }
        CoreCount count = CoreCount.of(cores);
        getChildren().setAll(wrapped("9 times in 10, a bag's mean is off by less than"), table(count));
        count.why().forEach(line -> getChildren().add(wrapped(line)));
    }

    private static GridPane table(CoreCount count) {
        GridPane table = new GridPane();
        table.setHgap(10);
        table.setVgap(2);
        for (int i = 0; i <= count.elements().size(); i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHalignment(HPos.RIGHT);
            table.getColumnConstraints().add(column);
        }
        table.add(words("Cores", "soft"), 0, 0);
        for (int i = 0; i < count.elements().size(); i++) {
            table.add(words(count.elements().get(i), "soft"), i + 1, 0);
        }
        for (CoreCount.Row row : count.rows()) {
            int line = table.getRowCount();
            String style = row.current() ? "count-now" : "count";
            table.add(words((row.current() ? "▸ " : "") + row.cores(), style), 0, line);
            for (int i = 0; i < row.words().size(); i++) {
                table.add(words(row.words().get(i), style), i + 1, line);
            }
        }
        return table;
    }

    private static Label words(String text, String style) {
        Label label = new Label(text);
        label.setMinWidth(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    private static Label wrapped(String text) {
        Label label = words(text, "soft");
        label.setMinWidth(0);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
