package loamline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.desk.cores.CoresStep;
import loamline.desk.facts.FactsView;
import loamline.desk.map.MapView;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.session.Work;
import loamline.desk.sheet.SheetView;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.store.Home;
import loamline.desk.store.Later;
import loamline.desk.store.NoticesView;
import loamline.desk.zones.ZonesStep;
import loamline.files.AtomicFiles;
import loamline.files.FileTrouble;
import loamline.scene.Palette;
import loamline.sheets.Paper;
import loamline.sheets.SheetOptions;
import loamline.sheets.WalkPlan;
import loamline.units.UnitSystem;
import loamline.yard.Yard;

/** The window's parts and what its buttons do. */
final class Window {
    private static final Asking.Sort PDF = new Asking.Sort("PDF", List.of("*.pdf"));

    private final Stage stage;
    private final Asking asking;
    private final String program;
    private final Session session;
    private final Desk desk;
    private final MapView map;
    private final BorderPane root = new BorderPane();
    private final Label said = new Label();

    Window(Stage stage, Yard first, String program, Asking asking) {
        this.stage = stage;
        this.asking = asking;
        session = Session.resting(first, Work.ofWindow());
        desk = new Desk(session, Home.ofUser(), asking, Later.byTheClock(), Platform::runLater);
        map = new MapView(session);
        this.program = program;
        root.getStyleClass().addAll("desk", "light");
        root.setTop(new VBox(top(), new NoticesView(desk.store().notices())));
        root.setLeft(
                new SheetView(session, List.of(new ZonesStep(session, map::fit), new CoresStep(session, map::fit))));
        root.setCenter(map);
        root.setRight(new FactsView(session));
        root.setBottom(foot());
        Scene scene = new Scene(root, 1280, 800);
        scene.getStylesheets()
                .add(Objects.requireNonNull(Window.class.getResource("/loamline/desk/desk.css"), "desk.css")
                        .toExternalForm());
        shortcut(scene, KeyCode.N, desk.store()::newYard);
        shortcut(scene, KeyCode.O, desk.store()::open);
        shortcut(scene, KeyCode.S, desk.store()::save);
        scene.getAccelerators()
                .put(
                        new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                        desk.store()::saveAs);
        shortcut(scene, KeyCode.P, this::savePlan);
        stage.setScene(scene);
        stage.setMinWidth(1000);
        stage.setMinHeight(640);
        session.results()
                .addListener((o, before, now) -> now.ifPresent(results -> said.setText(summary(results.problems()))));
        stage.titleProperty().bind(desk.store().title());
        desk.store().said().addListener((o, before, now) -> said.setText(now));
        stage.focusedProperty().addListener((o, before, now) -> desk.store().lookAtDisk());
        stage.setOnCloseRequest(request -> {
            if (!desk.close()) {
                request.consume();
            }
        });
    }

    private static void shortcut(Scene scene, KeyCode key, Runnable action) {
        scene.getAccelerators().put(new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN), action);
    }

    /** Shows the window, and begins to compute when its first frame is drawn. */
    void show(Optional<Path> file) {
        stage.show();
        desk.start(file);
        map.requestFocus();
        FirstFrame.then(() -> session.open(session.history().get()));
    }

    private Node top() {
        Label name = new Label();
        name.getStyleClass().add("yard-name");
        name.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> session.results().get().map(r -> r.yard().name()).orElse(""), session.results()));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button units = button("ft | m", "Switch between US and metric units", this::switchUnits);
        Button theme = button("Light | dark", "Switch between light and dark", this::switchTheme);
        HBox bar = new HBox(
                8,
                name,
                gap,
                units,
                theme,
                button("Fit", "Show the whole yard (F)", map::fit),
                button("New", "Begin an empty yard (Ctrl+N)", desk.store()::newYard),
                button("Open …", "Open a yard (Ctrl+O)", desk.store()::open),
                button("Save", "Save the yard (Ctrl+S)", desk.store()::save),
                button("Save as …", "Save the yard under another name (Ctrl+Shift+S)", desk.store()::saveAs),
                button("Save a copy …", "Save a copy and go on with this file", desk.store()::saveCopy),
                button("Save walk plan …", "Save the walk plan as PDF (Ctrl+P)", this::savePlan));
        bar.getStyleClass().add("top");
        return bar;
    }

    private static Button button(String text, String help, Runnable action) {
        Button button = new Button(text);
        button.setAccessibleHelp(help);
        button.setTooltip(new javafx.scene.control.Tooltip(help));
        button.setOnAction(e -> action.run());
        return button;
    }

    private Node foot() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox foot = new HBox(12, said, gap, new WorkView(session.work()));
        foot.getStyleClass().add("foot");
        return foot;
    }

    private void switchUnits() {
        session.units().set(session.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
    }

    private void switchTheme() {
        boolean dark = root.getStyleClass().remove("light");
        if (!dark) {
            root.getStyleClass().remove("dark");
        }
        root.getStyleClass().add(dark ? "dark" : "light");
        map.setPalette(dark ? Palette.DARK : Palette.LIGHT);
    }

    private void savePlan() {
        session.results()
                .get()
                .filter(results -> results.plan().isPresent())
                .ifPresent(results -> asking.fileToSave("Save the walk plan", List.of(PDF), Path.of("walk-plan.pdf"))
                        .ifPresent(file -> savePlan(results, file)));
    }

    private void savePlan(Results results, Path file) {
        boolean american = Locale.getDefault().getCountry().equals("US");
        SheetOptions sheets = SheetOptions.usual(
                american ? Paper.LETTER : Paper.A4, session.units().get(), program);
        byte[] pdf =
                new WalkPlan(results.yard(), results.zones(), results.plan().orElseThrow(), sheets).pdf();
        try {
            AtomicFiles.write(file, out -> out.write(pdf));
            said.setText("Walk plan saved to " + file);
        } catch (IOException e) {
            said.setText(file + " " + FileTrouble.of(e).message());
        }
    }

    private static String summary(List<Problem> problems) {
        List<Problem> worse =
                problems.stream().filter(p -> p.severity() != Severity.INFO).toList();
        if (worse.isEmpty()) {
            return "No problems found";
        }
        String more = worse.size() > 1 ? " (and " + (worse.size() - 1) + " more)" : "";
        return "▲ " + worse.get(0).message() + more;
    }
}
