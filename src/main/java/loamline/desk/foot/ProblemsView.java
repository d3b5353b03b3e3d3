package loamline.desk.foot;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.theme.Icons;
import loamline.desk.theme.PressRow;
import loamline.desk.theme.Words;
import loamline.geometry.Point;
import org.kordamp.ikonli.feather.Feather;

/** The problems one under the other, over the foot: a click goes to one, a button mends it where that is safe. */
public final class ProblemsView extends BorderPane {
    /** A longer list is scrolled. */
    private static final double MOST_HEIGHT_PX = 320;

    private final Session session;
    private final Consumer<Point> goTo;
    private final VBox lines = new VBox();
    private final ScrollPane scroll = new ScrollPane(lines);
    private final Button close = Icons.button(Feather.X, "Close", "Close the list (Esc)", () -> setVisible(false));

    /** @param goTo brings a place into sight on the map */
    public ProblemsView(Session session, Consumer<Point> goTo) {
        this.session = session;
        this.goTo = goTo;
        getStyleClass().addAll("card", "problems");
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Label title = new Label("Problems found");
        title.getStyleClass().add("card-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox head = new HBox(8, title, close);
        head.getStyleClass().add("card-head");
        setTop(head);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        setCenter(scroll);
        setVisible(false);
        managedProperty().bind(visibleProperty());
        visibleProperty().addListener((o, before, now) -> fill());
        session.results().addListener((o, before, now) -> fill());
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                setVisible(false);
                e.consume();
            }
        });
    }

    private void fill() {
        if (isVisible()) {
            List<Node> all = session.results().get().stream()
                    .flatMap(results -> Trouble.of(results.problems(), results.yard()).stream())
                    .map(this::line)
                    .toList();
            lines.getChildren().setAll(all.isEmpty() ? List.of(Words.wrapped("No problems found.", "problem")) : all);
            applyCss();
            double height = lines.prefHeight(prefWidth(-1));
            scroll.setPrefViewportHeight(Math.min(MOST_HEIGHT_PX, height));
        }
    }

    @Override
    public void requestFocus() {
        close.requestFocus();
    }

    private Node line(Trouble trouble) {
        Label words = Words.wrapped(trouble.words());
        HBox.setHgrow(words, Priority.ALWAYS);
        PressRow go = new PressRow(() -> go(trouble), SeveritySign.of(trouble.severity()), words);
        go.getStyleClass().add("problem-go");
        go.setAccessibleText(Trouble.word(trouble.severity()) + ": " + trouble.words());
        go.setDisable(trouble.feature().isEmpty());
        HBox.setHgrow(go, Priority.ALWAYS);
        HBox line = new HBox(8, go);
        line.getStyleClass().add("problem");
        trouble.repair().ifPresent(step -> {
            Button repair = new Button("Repair");
            repair.setMinWidth(Region.USE_PREF_SIZE);
            repair.setTooltip(new Tooltip("To " + step.label()));
            repair.setAccessibleHelp("To " + step.label());
            repair.setOnAction(e -> {
                requestFocus();
                session.edit(step.label(), step.after());
            });
            line.getChildren().add(repair);
        });
        return line;
    }

    private void go(Trouble trouble) {
        trouble.feature().ifPresent(key -> session.selection().set(Selection.ofFeatures(List.of(key))));
        trouble.at().ifPresent(goTo);
    }
}
