package loamline.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import loamline.desk.cores.CoreTool;
import loamline.desk.cores.CoresStep;
import loamline.desk.facts.FactsView;
import loamline.desk.foot.Foot;
import loamline.desk.foot.ProblemsView;
import loamline.desk.map.MapView;
import loamline.desk.print.PagesView;
import loamline.desk.print.PrintModel;
import loamline.desk.print.PrintStep;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.session.Work;
import loamline.desk.sheet.Lines;
import loamline.desk.sheet.SheetView;
import loamline.desk.sheet.Step;
import loamline.desk.sheet.Step.Start;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.store.Home;
import loamline.desk.store.Later;
import loamline.desk.store.NoticesView;
import loamline.desk.theme.Look;
import loamline.desk.tool.Hand;
import loamline.desk.tool.LineTool;
import loamline.desk.tool.PointerTool;
import loamline.desk.tool.SnapToOthers;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolHost;
import loamline.desk.trace.DrawingTools;
import loamline.desk.trace.ImageTracer;
import loamline.desk.trace.TraceModel;
import loamline.desk.trace.TraceStep;
import loamline.desk.zones.ZonesStep;
import loamline.sheets.Paper;
import loamline.yard.Turf;
import loamline.yard.Yard;

/** The window: its parts, their places, and its keys. */
final class Window {
    private static final String FACTS = "facts";
    private static final String STEP = "step";
    private static final int TRACE = 0;
    private static final int CORES = 2;
    private static final int MOST_STEPS = 9;
    private static final double WIDTH_PX = 1280;
    private static final double HEIGHT_PX = 800;

    private final Stage stage;
    private final Asking asking;
    private final ToolHost host;
    private final Session session;
    private final Desk desk;
    private final Look look;
    private final MapView map;
    private final TraceStep trace;
    private final PrintStep print;
    private final PagesView pages;
    private final SheetView sheet;
    private final FactsView facts;
    private final YardName name;
    private final Foot foot;
    private final Node help;
    private final List<Step> steps;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    Window(Stage stage, Yard first, String program, Asking asking) {
        this.stage = stage;
        this.asking = asking;
        session = Session.resting(first, Work.ofWindow());
        desk = new Desk(session, Home.ofUser(), asking, Later.byTheClock(), Platform::runLater);
        host = new ToolHost(session, PointerTool.with(new SnapToOthers()));
        look = new Look(desk.settings());
        map = new MapView(session, host);
        PrintModel model = new PrintModel(session, usualPaper(), program);
        print = new PrintStep(model, this::askWhere);
        pages = new PagesView(model);
        trace = new TraceStep(
                new TraceModel(session, host, new ImageTracer()), this::askForImage, new DrawingTools(host));
        trace.takeDropsOn(map);
        steps = steps();
        sheet = new SheetView(session, steps);
        facts = new FactsView(session);
        name = new YardName(session);
        ProblemsView problems = new ProblemsView(session, map::centreOn);
        foot = new Foot(session, problems, said);
        Editing editing = new Editing(host);
        map.setMenu(editing::menu);
        map.setLetters(editing::letter);
        map.setPicker(editing::pick);
        List<Key> keys = keys();
        keys.addAll(editing.keys());
        help = Cards.help(Keys.lines(keys));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene = new Scene(
                layOut(problems), Math.min(WIDTH_PX, screen.getWidth()), Math.min(HEIGHT_PX, screen.getHeight()));
        Keys.install(keys, scene);
        look.dress(scene);
        stage.setScene(scene);
        stage.setMinWidth(1000);
        stage.setMinHeight(640);
        listen();
        sheet.open(CORES);
    }

    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().equals("US") ? Paper.LETTER : Paper.A4;
    }

    /** Shows the window, and begins to compute when its first frame is drawn. */
    void show(Optional<Path> file) {
        stage.show();
        desk.start(file);
        if (desk.ui().get().get(STEP) instanceof Number place && place.intValue() < steps.size()) {
            openStep(place.intValue());
        }
        map.requestFocus();
        FirstFrame.then(session::begin);
    }

    /** Every step of the visit that there is; another one is one entry more. */
    private List<Step> steps() {
        return List.of(
                Step.of("Trace", Lines::trace, () -> trace),
                Step.of("Zones", Lines::zones, () -> new ZonesStep(session, this::cutZone))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "Zones are parts of the turf that are treated alike.",
                                "Trace the turf first",
                                () -> openStep(TRACE))),
                Step.of("Cores", Lines::cores, () -> new CoresStep(session, map::runWalk))
                        .startingWith(results -> lacking(
                                results.zones().isEmpty(),
                                "Cores are spread over the turf, each for the same ground.",
                                "Trace the turf first",
                                () -> openStep(TRACE))),
                Step.of("Print", Lines::print, () -> print)
                        .startingWith(results -> lacking(
                                !hasWalk(results),
                                "Pages for the walk are made from planned cores.",
                                "Plan the cores first",
                                () -> openStep(CORES)))
                        .inTheMiddle(pages));
    }

    private static Optional<Start> lacking(boolean lacks, String sentence, String button, Runnable action) {
        return lacks ? Optional.of(new Start(sentence, button, action)) : Optional.empty();
    }

    /** A plan that is being made anew is as good as there. */
    private static boolean hasWalk(Results results) {
        return !results.zones().isEmpty()
                && results.plan().map(plan -> !plan.walks().isEmpty()).orElse(true);
    }

    private void openStep(int place) {
        sheet.open(place);
    }

    private List<Key> keys() {
        List<Key> keys = new ArrayList<>(List.of(
                Key.of("File", "Shortcut+N", "New yard", desk.store()::newYard),
                Key.of("File", "Shortcut+O", "Open a yard", desk.store()::open),
                Key.of("File", "Shortcut+S", "Save", desk.store()::save),
                Key.of("File", "Shortcut+Shift+S", "Save as", desk.store()::saveAs),
                Key.of("File", "Shortcut+P", "Save the walk plan", print::saveWalkPlan),
                Key.of("Edit", "Shortcut+Z", "Undo", session::undo),
                Key.of("Edit", "Shortcut+Y Shortcut+Shift+Z", "Redo", session::redo),
                Key.of("Edit", "F2", "Rename the yard", name::edit),
                Key.of("Window", "F1", "Show or hide the keys", this::toggleHelp),
                Key.of("Window", "F8", "Fold the facts away, or show them", this::foldFacts),
                Key.of("Window", "Shortcut+E", "Show or hide the problems", foot::toggleProblems),
                Key.of("Window", "Shortcut+U", "Switch between feet and metres", foot::switchUnits),
                Key.of("Window", "Shortcut+T", "Switch between light and dark", look::switchTheme),
                Key.of(
                        "Window",
                        "Shortcut+Equals Shortcut+Plus Shortcut+Shift+Equals Shortcut+Add",
                        "Larger text",
                        () -> look.resizeText(1)),
                Key.of("Window", "Shortcut+Minus Shortcut+Subtract", "Smaller text", () -> look.resizeText(-1)),
                Key.of("Window", "Shortcut+0 Shortcut+Numpad0", "Text of the usual size", look::resetText)));
        for (int i = 0; i < Math.min(MOST_STEPS, steps.size()); i++) {
            int place = i;
            keys.add(Key.of("Steps", "Shortcut+" + (i + 1), steps.get(i).title(), () -> openStep(place)));
        }
        return keys;
    }

    private BorderPane layOut(ProblemsView problems) {
        TopBar bar = new TopBar(session, desk.store(), look, name, print::saveWalkPlan, this::toggleHelp);
        StackPane middle = new StackPane(map);
        steps.forEach(step -> step.middle().ifPresent(node -> {
            node.setVisible(false);
            middle.getChildren().add(node);
        }));
        StackPane.setAlignment(problems, Pos.BOTTOM_LEFT);
        List<Node> cards = List.of(Cards.welcome(desk.settings()), problems, help);
        cards.forEach(card -> StackPane.setMargin(card, new Insets(12)));
        middle.getChildren().addAll(cards);
        middle.getStyleClass().add("middle");
        middle.setMinSize(0, 0);
        BorderPane root = new BorderPane(); // filled in the order in which Tab goes
        root.setTop(new VBox(bar, new NoticesView(desk.store().notices())));
        root.setLeft(sheet);
        root.setCenter(middle);
        root.setRight(facts);
        root.setBottom(foot);
        return root;
    }

    /** The tool that is in hand while nothing else is: each step has what it works on. */
    private void settleTool() {
        Tool home = switch (sheet.open().get()) {
            case CORES -> CoreTool.IDLE;
            case TRACE -> PointerTool.with(new SnapToOthers());
            default -> new Hand();
        };
        host.settle(home);
    }

    /** Takes up the tool that cuts the outlines of the selected zone. */
    private void cutZone() {
        String zone = session.selection().get().zone();
        List<String> keys = session.shown()
                .get()
                .all(Turf.class)
                .filter(turf -> turf.zone().equals(zone))
                .map(Turf::key)
                .toList();
        if (!keys.isEmpty()) {
            session.selection().set(Selection.ofFeatures(keys));
        }
        host.take(LineTool.cutting().with(new SnapToOthers()));
        map.requestFocus();
    }

    private Optional<Path> askForImage() {
        Asking.Sort images = new Asking.Sort("Aerial images", List.of("*.png", "*.jpg", "*.jpeg", "*.tif", "*.tiff"));
        return asking.fileToOpen(
                "Open an aerial image",
                images,
                desk.store().path().map(path -> path.toAbsolutePath().getParent()));
    }

    private void listen() {
        desk.settings().addListener((o, before, now) -> map.setPalette(look.palette()));
        map.setPalette(look.palette());
        sheet.open().addListener((o, before, now) -> {
            showMiddle();
            settleTool();
            desk.ui().set(Map.of(STEP, now));
        });
        host.said().addListener((o, before, now) -> said.set(now));
        session.results().addListener((o, before, now) -> showMiddle());
        facts.folded().set(desk.settings().get().folded().contains(FACTS));
        facts.folded().addListener((o, before, now) -> rememberFold(now));
        desk.store().said().addListener((o, before, now) -> said.set(now));
        stage.titleProperty().bind(desk.store().title());
        stage.focusedProperty().addListener((o, before, now) -> desk.store().lookAtDisk());
        stage.setOnCloseRequest(request -> {
            if (!desk.close()) {
                request.consume();
            }
        });
    }

    /** What the open step wants in the map's place, unless it still lacks what it works on. */
    private void showMiddle() {
        boolean covered = false;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            boolean ready = session.results()
                    .get()
                    .filter(results -> step.start().apply(results).isEmpty())
                    .isPresent();
            boolean shown = i == sheet.open().get() && ready;
            step.middle().ifPresent(node -> node.setVisible(shown));
            covered = covered || (shown && step.middle().isPresent());
        }
        map.setVisible(!covered);
    }

    private void rememberFold(boolean folded) {
        List<String> all = new ArrayList<>(desk.settings().get().folded());
        all.remove(FACTS);
        if (folded) {
            all.add(FACTS);
        }
        desk.settings().set(desk.settings().get().withFolded(all));
    }

    private void foldFacts() {
        facts.folded().set(!facts.folded().get());
    }

    private void toggleHelp() {
        help.setVisible(!help.isVisible());
        if (help.isVisible()) {
            help.requestFocus();
        } else {
            map.requestFocus();
        }
    }

    private Optional<Path> askWhere(String title, String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.'));
        Asking.Sort sort = new Asking.Sort(ending.substring(1).toUpperCase(Locale.ROOT), List.of("*" + ending));
        return asking.fileToSave(title, List.of(sort), Path.of(fileName));
    }
}
