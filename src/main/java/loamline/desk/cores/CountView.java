package loamline.desk.cores;

import javafx.geometry.HPos;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** "How many are enough?": a table that unfolds, with the number in force marked. */
final class CountView extends VBox {
    private final Hyperlink ask = new Hyperlink("How many are enough?");
    private final VBox answer = new VBox(6);

    CountView() {
        super(4);
        answer.getStyleClass().add("why");
        answer.setVisible(false);
        answer.managedProperty().bind(answer.visibleProperty());
        ask.getStyleClass().add("ask");
        ask.setOnAction(e -> {
            answer.setVisible(!answer.isVisible());
            ask.setVisited(false); // the colour of a visited link says nothing here
        });
        getChildren().addAll(ask, answer);
    }

    /** @param cores a bag, now */
    void show(int cores) {
        CoreCount count = CoreCount.of(cores);
        answer.getChildren().setAll(words("A bag's mean may be off by, 9 times in 10:", "soft"), table(count));
        count.why().forEach(line -> answer.getChildren().add(words(line, "soft")));
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
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }
}
