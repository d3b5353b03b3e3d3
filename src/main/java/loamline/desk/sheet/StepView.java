package loamline.desk.sheet;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import loamline.desk.session.Results;
import loamline.desk.theme.PressRow;
import loamline.desk.theme.Words;
import loamline.units.UnitSystem;

/** A step of the sheet: its sign, title and result as one button, and its tools beneath while it is open. */
final class StepView extends VBox {
    private final Step step;
    private final int number;
    private final PressRow head;
    private final StackPane sign = new StackPane();
    private final Label result = Words.wrapped("", "soft");
    private final VBox start = new VBox(8);
    private final StackPane tools = new StackPane();
    private String sentence = "";
    private boolean open;

    /** @param number its place in the sheet, from 1, and the digit of its key */
    StepView(Step step, int number, Runnable onOpen) {
        this.step = step;
        this.number = number;
        getStyleClass().add("step");
        Label title = new Label(step.title());
        title.getStyleClass().add("step-title");
        VBox words = new VBox(1, title, result);
        HBox.setHgrow(words, Priority.ALWAYS);
        sign.setMaxHeight(USE_PREF_SIZE);
        head = new PressRow(onOpen, sign, words);
        head.getStyleClass().add("step-head");
        head.setAccessibleHelp("Opens the step (Ctrl+" + number + ")");
        start.getStyleClass().add("start");
        tools.getStyleClass().add("step-tools");
        getChildren().add(head);
    }

    @Override
    public void requestFocus() {
        head.requestFocus();
    }

    void setOpen(boolean now) {
        open = now;
        getStyleClass().remove("step-open");
        if (now) {
            getStyleClass().add("step-open");
        }
    }

    void show(Results results, UnitSystem units) {
        Step.Line line = step.line().apply(results, units);
        sign.getChildren().setAll(StateSign.of(line.state()));
        result.setText(line.result());
        head.setAccessibleText(step.title() + ", step " + number + ", "
                + line.state().word() + ": " + line.result() + (open ? ", open" : ""));
        Optional<Step.Start> lacks = step.start().apply(results);
        lacks.ifPresent(this::fillStart);
        List<Node> parts = open ? List.of(head, lacks.isPresent() ? start : tools()) : List.of(head);
        if (!getChildren().equals(parts)) {
            getChildren().setAll(parts);
        }
    }

    /** The step's tools, made when they are of use first. */
    private Node tools() {
        if (tools.getChildren().isEmpty()) {
            tools.getChildren().add(step.tools().get());
        }
        return tools;
    }

    private void fillStart(Step.Start lacks) {
        if (lacks.sentence().equals(sentence)) {
            return;
        }
        sentence = lacks.sentence();
        Button button = new Button(lacks.button());
        button.getStyleClass().add("primary");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(e -> lacks.action().run());
        start.getChildren().setAll(Words.wrapped(lacks.sentence()), button);
    }
}
