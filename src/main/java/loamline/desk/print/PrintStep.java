package loamline.desk.print;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import loamline.desk.theme.Written;
import loamline.sheets.Paper;

/** The tools of the Print step: how pages are made, and one button for every file that can be taken along. */
public final class PrintStep extends VBox {
    private final PrintModel model;
    private final Saving saving;

    /** @param others pages of other steps */
    public PrintStep(PrintModel model, Saving saving, List<StepPages> others) {
        super(8);
        this.model = model;
        this.saving = saving;
        getStyleClass().add("print-step");
        Button plan = new Button("Save walk plan …");
        plan.getStyleClass().add("primary");
        plan.setMaxWidth(Double.MAX_VALUE);
        plan.setAccessibleHelp("Saves the walk plan as a PDF (Ctrl+P)");
        plan.setOnAction(e -> saving.save(Output.WALK_PLAN));
        Label also = new Label("Also save");
        also.getStyleClass().add("group-title");
        getChildren().addAll(plan, fields(), also);
        Arrays.stream(Output.values())
                .filter(output -> output != Output.WALK_PLAN)
                .map(this::button)
                .forEach(getChildren()::add);
        Label pages = new Label("Pages of other steps");
        pages.getStyleClass().add("group-title");
        getChildren().add(pages);
        others.forEach(other -> getChildren()
                .add(button(
                        other.title() + " (PDF) …",
                        "PDF, on the paper and in the colours chosen above",
                        () -> saving.save(other))));
        Label said = new Label();
        said.textProperty().bind(model.said());
        said.setWrapText(true);
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        said.getStyleClass().add("soft");
        getChildren().add(said);
    }

    private GridPane fields() {
        ComboBox<Paper> paper = new ComboBox<>();
        paper.getItems().setAll(Paper.values());
        paper.setConverter(Written.as(each -> each == Paper.A4 ? "A4" : "Letter"));
        paper.valueProperty().bindBidirectional(model.paper());
        DatePicker date = new DatePicker();
        date.setPromptText("by hand");
        date.valueProperty().addListener((o, before, now) -> model.date().set(Optional.ofNullable(now)));
        CheckBox grey = new CheckBox("Shades of grey");
        grey.selectedProperty().bindBidirectional(model.grey());
        GridPane fields = new GridPane();
        fields.getStyleClass().add("fields");
        field(fields, 0, "Paper", paper);
        field(fields, 1, "Visit on", date);
        fields.add(grey, 0, 2, 2, 1);
        return fields;
    }

    private static void field(GridPane grid, int row, String name, Control control) {
        Label label = new Label(name);
        label.setLabelFor(control);
        label.setMinWidth(USE_PREF_SIZE);
        control.setAccessibleText(name);
        control.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(control, Priority.ALWAYS);
        grid.addRow(row, label, control);
    }

    private Button button(Output output) {
        String title = output.title() + " (" + output.format() + ") …";
        return button(title, output.kind(), () -> saving.save(output));
    }

    private static Button button(String title, String help, Runnable action) {
        Button button = new Button(title);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }
}
