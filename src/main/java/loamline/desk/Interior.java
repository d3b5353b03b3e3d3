package loamline.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import loamline.desk.cores.CoreTool;
import loamline.desk.cores.CoresStep;
import loamline.desk.facts.FactsView;
import loamline.desk.foot.Foot;
import loamline.desk.foot.ProblemsView;
import loamline.desk.map.Found;
import loamline.desk.map.MapLayer;
import loamline.desk.map.MapView;
import loamline.desk.map.Sight;
import loamline.desk.print.PagesView;
import loamline.desk.print.PrintModel;
import loamline.desk.print.PrintStep;
import loamline.desk.print.Saving;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.sheet.Lines;
import loamline.desk.sheet.Once;
import loamline.desk.sheet.SheetView;
import loamline.desk.sheet.Step;
import loamline.desk.sheet.Step.Start;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.store.NoticesView;
import loamline.desk.theme.Look;
import loamline.desk.tables.TablesView;
import loamline.desk.tool.LineTool;
import loamline.desk.tool.PointerTool;
import loamline.desk.tool.SnapToOthers;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolHost;
import loamline.desk.trace.DrawingTools;
import loamline.desk.trace.ImageDrops;
import loamline.desk.trace.ImageTracer;
import loamline.desk.trace.TraceModel;
import loamline.desk.trace.TraceStep;
import loamline.desk.water.WaterModel;
import loamline.desk.water.WaterStep;
import loamline.desk.zones.ZonesStep;
import loamline.sheets.CupPlanSheet;
import loamline.sheets.Paper;
import loamline.water.cups.CupPlan;
import loamline.yard.Head;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zones;

/** What is in the window: the sheet, the map, the facts and the foot, the keys, and what each step works with. */
final class Interior {
    /** The name of the facts among what the settings hold as folded away. */
    static final String FACTS = "facts";

    private static final String STEP = "step";
    private static final String SIGHT = "sight";
    private static final int TRACE = 0;
    private static final int CORES = 2;
    private static final String WATER = "Water";
    private static final int MOST_STEPS = 9;

    /** How much of the height the map keeps when a table comes up under it. */
    private static final double SHARE_OF_MAP = 0.6;

    private final Session session;
    private final Desk desk;
    private final Asking asking;
    private final Look look;
    private final ToolHost host;
    private final MapView map;
    private final TraceModel traced;
    private final PrintModel printed;
    private final Saving saving;
    private final WaterModel water;
    private final List<Step> steps;
    private final SheetView sheet;
    private final FactsView facts;
    private final YardName name;
    private final Foot foot;
    private final ProblemsView problems;
    private final List<Key> keys;
    private final Once<Node> help;
    private final StackPane inPlaceOfMap = new StackPane();
    private final StackPane stack = new StackPane();
    private final SplitPane middle = new SplitPane(stack);
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    Interior(Session session, Desk desk, Look look, String program, Asking asking) {
        this.session = session;
        this.desk = desk;
        this.look = look;
        this.asking = asking;
        host = new ToolHost(session, pointer());
        map = new MapView(session, host);
        traced = new TraceModel(session, host, new ImageTracer());
        printed = new PrintModel(session, usualPaper(), program);
        saving = new Saving(printed, this::askWhere);
        ImageDrops.takeOn(map, traced);
        water = new WaterModel(session);
        steps = steps();
        sheet = new SheetView(session, steps);
        facts = new FactsView(session);
        name = new YardName(session);
        problems = new ProblemsView(session, map::centreOn);
        foot = new Foot(session, problems, said);
        Editing editing = new Editing(host);
        map.setMenu(editing::menu);
        map.setLetters(editing::letter);
        map.setPicker(editing::pick);
        keys = keys();
        keys.addAll(editing.keys());
        help = Once.of(() -> laidOver(Cards.help(Keys.lines(keys))));
    }

    /** Fills a window with it, where it was left at the last step and sight, and listens to the keys. */
    void moveInto(Shell shell) {
        layOutMiddle();
        TopBar bar = new TopBar(session, desk.store(), look, name, saving::walkPlan, this::toggleHelp);
        shell.fill(new VBox(bar, new NoticesView(desk.store().notices())), sheet, middle, facts, foot);
        Keys.install(keys, shell.getScene());
        listen();
        Map<String, Object> kept = desk.ui().get();
        int last = kept.get(STEP) instanceof Number place ? place.intValue() : CORES;
        sheet.open(last < steps.size() ? last : CORES);
        Optional.ofNullable(kept.get(SIGHT)).flatMap(Sight::of).ifPresent(map::lookAt);
        map.onSight(sight -> remember(SIGHT, sight.map(Sight::numbers)));
        Platform.runLater(map::requestFocus); // after the window has chosen for itself
    }

    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().equals("US") ? Paper.LETTER : Paper.A4;
    }

    /** Every step of the visit that there is; another one is one entry more. */
    private List<Step> steps() {
        return List.of(
                Step.of("Trace", Lines::trace, () -> new TraceStep(traced, this::askForImage, new DrawingTools(host)))
                        .inHand(Interior::pointer),
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
                                () -> openStep(TRACE)))
                        .inHand(() -> CoreTool.IDLE),
                Step.of(
                                WATER,
                                (results, units) -> water.line(results, units),
                                () -> new WaterStep(session, water, map::centreOn, this::saveCupSheet))
                        .startingWith(results -> lacking(
                                results.yard().all(Head.class).findAny().isEmpty(),
                                "Where water misses follows from the sprinkler heads.",
                                "Draw the heads first",
                                () -> openStep(TRACE)))
                        .inHand(Interior::pointer)
                        .under(() -> new TablesView(water.readings(), this::askForTable, water.valves())),
                Step.of("Print", Lines::print, () -> new PrintStep(printed, saving))
                        .startingWith(results -> lacking(
                                !hasWalk(results),
                                "Pages for the walk are made from planned cores.",
                                "Plan the cores first",
                                () -> openStep(CORES)))
                        .inTheMiddle(() -> new PagesView(printed)));
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
                Key.of("File", "Shortcut+P", "Save the walk plan", saving::walkPlan),
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

    private void layOutMiddle() {
        inPlaceOfMap.setVisible(false);
        StackPane.setAlignment(problems, Pos.BOTTOM_LEFT);
        stack.getChildren().addAll(map, inPlaceOfMap, inset(Cards.welcome(desk.settings())), inset(problems));
        middle.getStyleClass().add("middle");
        middle.setOrientation(Orientation.VERTICAL);
        middle.setMinSize(0, 0);
        stack.setMinSize(0, 0);
    }

    private static Node inset(Node card) {
        StackPane.setMargin(card, new Insets(12));
        return card;
    }

    private Node laidOver(Node card) {
        stack.getChildren().add(inset(card));
        return card;
    }

    private static Tool pointer() {
        return PointerTool.with(new SnapToOthers());
    }

    /** Takes up the tool that the open step works with, and shows what it has found in the place of what others have. */
    private void settle() {
        Step step = steps.get(sheet.open().get());
        host.settle(step.tool().get());
        boolean water = step.title().equals(WATER);
        map.found().unbind();
        map.found().set(Found.NOTHING);
        if (water) {
            map.found().bind(this.water.found());
        }
        if (water == map.layers().shown().get().contains(MapLayer.CORES)) {
            map.layers().show(MapLayer.CORES, !water);
            map.layers().show(MapLayer.STRATA, !water);
        }
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

    private void saveCupSheet(CupPlan plan) {
        Yard yard = session.history().get().now();
        saving.pages(
                "Cup sheet",
                "cup-sheet-valve-" + plan.valve(),
                options -> new CupPlanSheet(yard, Zones.of(yard), plan, options).pdf());
    }

    private Optional<Path> askForTable() {
        Asking.Sort tables = new Asking.Sort("Tables", List.of("*.csv", "*.tsv", "*.txt"));
        return asking.fileToOpen(
                "Bring in a table",
                tables,
                desk.store().path().map(path -> path.toAbsolutePath().getParent()));
    }

    private void listen() {
        desk.settings().addListener((o, before, now) -> map.setPalette(look.palette()));
        map.setPalette(look.palette());
        sheet.open().addListener((o, before, now) -> {
            showMiddle();
            settle();
            remember(STEP, Optional.of(now));
        });
        host.said().addListener((o, before, now) -> said.set(now));
        session.results().addListener((o, before, now) -> showMiddle());
        water.known().addListener((o, before, now) -> sheet.fill());
        facts.folded().set(desk.settings().get().folded().contains(FACTS));
        facts.folded().addListener((o, before, now) -> rememberFold(now));
        desk.store().said().addListener((o, before, now) -> said.set(now));
    }

    /** Keeps a small thing of the window for when it comes up again after a kill. */
    private void remember(String what, Optional<?> value) {
        Map<String, Object> all = new LinkedHashMap<>(desk.ui().get());
        all.remove(what);
        value.ifPresent(there -> all.put(what, there));
        desk.ui().set(Map.copyOf(all));
    }

    /** What the open step wants in the map's place, unless it still lacks what it works on, and under it. */
    private void showMiddle() {
        Step step = steps.get(sheet.open().get());
        Optional<Node> wanted = session.results()
                .get()
                .filter(results -> step.start().apply(results).isEmpty())
                .flatMap(results -> step.middle().map(Once::get));
        wanted.ifPresent(node -> inPlaceOfMap.getChildren().setAll(node));
        inPlaceOfMap.setVisible(wanted.isPresent());
        map.setVisible(wanted.isEmpty());
        List<Node> parts = Stream.concat(Stream.<Node>of(stack), step.under().map(Once::get).stream())
                .toList();
        if (!middle.getItems().equals(parts)) {
            middle.getItems().setAll(parts);
            middle.setDividerPositions(SHARE_OF_MAP);
        }
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
        Node card = help.get();
        card.setVisible(!card.isVisible());
        if (card.isVisible()) {
            card.requestFocus();
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
