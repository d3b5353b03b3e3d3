package loamline.desk.tables;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.Clipboard;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.account.Problem;
import loamline.desk.theme.Words;
import loamline.desk.theme.Written;
import loamline.files.RawTable;
import loamline.yard.Attachment;

/** The tables of one sort: one of them open to type into, ways to bring in another, and what is wrong with it. */
public final class TablesView extends BorderPane {
    private static final int MOST_PROBLEMS = 50;
    private static final double PROBLEMS_PX = 96;

    /** Room for a few rows, and for the buttons alone. */
    private static final double LEAST_PX = 200;

    private static final double EMPTY_PX = 96;

    private final String title;
    private final TablesModel model;
    private final Supplier<Optional<Path>> askForFile;
    private final ComboBox<Attachment> choice = new ComboBox<>();
    private final ComboBox<String> about = new ComboBox<>();
    private final TableGrid grid;
    private final Label none = Words.wrapped("", "soft");
    private final VBox problems = new VBox(2);
    private final ScrollPane troubles = new ScrollPane(problems);
    private boolean showing;

    /**
     * @param title what the tables are called above them
     * @param askForFile asks for a file to bring in
     * @param abouts what a table may be about, such as the valves there are; not asked for if the kind has no word for it
     */
    public TablesView(
            String title,
            TablesModel model,
            Supplier<Optional<Path>> askForFile,
            ObservableValue<List<String>> abouts) {
        this.title = title;
        this.model = model;
        this.askForFile = askForFile;
        grid = new TableGrid(model::change);
        grid.setAccessibleText("Table of " + model.kind().word());
        getStyleClass().add("tables");
        none.setText("No " + model.kind().word()
                + " yet. Bring in a CSV file, paste rows from a spreadsheet, or begin an empty table and type.");
        troubles.setFitToWidth(true);
        troubles.getStyleClass().add("tables-problems");
        troubles.setMaxHeight(PROBLEMS_PX);
        setTop(bar());
        setCenter(grid);
        setBottom(troubles);
        about.getItems().setAll(abouts.getValue());
        abouts.addListener((o, before, now) -> about.getItems().setAll(now));
        model.tables().addListener((o, before, now) -> show());
        model.open().addListener((o, before, now) -> show());
        model.said().addListener((o, before, now) -> show());
        show();
    }

    private Node bar() {
        choice.setConverter(Written.as(model::name));
        choice.setAccessibleText("Table of " + model.kind().word());
        choice.valueProperty().addListener((o, before, now) -> {
            if (!showing && now != null) {
                model.open().set(Optional.of(now));
            }
        });
        HBox open = new HBox(8, choice, askAbout());
        open.setAlignment(Pos.CENTER_LEFT);
        FlowPane bar = new FlowPane(
                8,
                6,
                open,
                button("Bring in a file …", "Takes in a CSV file as it is", this::bringIn),
                button("Paste", "Takes in cells copied from a spreadsheet", this::paste),
                button("New table", "Begins an empty table to type into", () -> model.begin(chosenAbout())),
                button("Remove", "Takes this table out of the yard; undo brings it back", model::remove));
        bar.getStyleClass().add("tables-bar");
        return bar;
    }

    private Node askAbout() {
        String word = model.kind().about();
        Label label = new Label(word.isEmpty() ? "" : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        label.setLabelFor(about);
        label.setMinWidth(Region.USE_PREF_SIZE);
        about.setAccessibleText(label.getText());
        about.valueProperty().addListener((o, before, now) -> {
            if (!showing && now != null) {
                model.tellAbout(now);
            }
        });
        HBox box = new HBox(6, label, about);
        box.setAlignment(Pos.CENTER_LEFT);
        box.setVisible(!word.isEmpty());
        box.setManaged(!word.isEmpty());
        return box;
    }

    private static Button button(String words, String help, Runnable action) {
        Button button = new Button(words);
        button.setAccessibleHelp(help);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    private void bringIn() {
        askForFile.get().ifPresent(file -> model.bringIn(file, chosenAbout()));
    }

    private void paste() {
        model.paste(
                Optional.ofNullable(Clipboard.getSystemClipboard().getString()).orElse(""), chosenAbout());
    }

    private String chosenAbout() {
        return Optional.ofNullable(about.getValue())
                .or(() -> about.getItems().stream().findFirst())
                .orElse("");
    }

    /** What the tables are called. */
    String title() {
        return title;
    }

    private void show() {
        showing = true;
        Optional<Attachment> open = model.open().get();
        choice.getItems().setAll(model.tables().get());
        choice.setValue(open.orElse(null));
        open.map(Attachment::about).filter(word -> !word.isEmpty()).ifPresent(about::setValue);
        open.ifPresent(table -> grid.show(RawTable.of(table.text())));
        setCenter(open.isPresent() ? grid : none);
        setMinHeight(open.isPresent() ? LEAST_PX : EMPTY_PX);
        setMaxHeight(open.isPresent() ? Double.MAX_VALUE : EMPTY_PX);
        problems.getChildren().setAll(lines());
        troubles.setVisible(!problems.getChildren().isEmpty());
        troubles.setManaged(!problems.getChildren().isEmpty());
        HBox.setHgrow(choice, Priority.ALWAYS);
        showing = false;
    }

    private List<Label> lines() {
        List<String> said =
                model.said().get().isEmpty() ? List.of() : List.of(model.said().get());
        List<Label> lines =
                said.stream().map(words -> Words.wrapped(words, "warn")).collect(Collectors.toList());
        model.problems().stream().limit(MOST_PROBLEMS).map(TablesView::line).forEach(lines::add);
        return lines;
    }

    private static Label line(Problem problem) {
        String line = problem.where().line().stream()
                .mapToObj(number -> "Line " + number + ": ")
                .findFirst()
                .orElse("");
        String words = problem.message();
        return Words.wrapped(
                line + Character.toUpperCase(words.charAt(0)) + words.substring(1),
                switch (problem.severity()) {
                    case ERROR -> "refused";
                    case WARNING -> "warn";
                    case INFO -> "soft";
                });
    }
}
