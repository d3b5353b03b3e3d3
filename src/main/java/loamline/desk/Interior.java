package loamline.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import loamline.desk.cores.CoreTool;
import loamline.desk.facts.FactsView;
import loamline.desk.foot.Foot;
import loamline.desk.foot.ProblemsView;
import loamline.desk.map.Found;
import loamline.desk.map.MapLayer;
import loamline.desk.map.MapView;
import loamline.desk.map.Sight;
import loamline.desk.session.Session;
import loamline.desk.sheet.Once;
import loamline.desk.sheet.SheetView;
import loamline.desk.sheet.Step;
import loamline.desk.store.Asking;
import loamline.desk.store.Desk;
import loamline.desk.store.NoticesView;
import loamline.desk.theme.Look;
import loamline.desk.tool.ToolHost;

/** What is in the window: the sheet, the map, the facts and the foot, the keys, and what each step works with. */
final class Interior {
    /** The name of the facts among what the settings hold as folded away. */
    static final String FACTS = "facts";

    private static final String STEP = "step";
    private static final String SIGHT = "sight";
    private static final int MOST_STEPS = 9;

    /** How much of the height the map keeps when a table comes up under it. */
    private static final double SHARE_OF_MAP = 0.6;

    private final Session session;
    private final Desk desk;
    private final Look look;
    private final ToolHost host;
    private final MapView map;
    private final Visit visit;
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
        host = new ToolHost(session, Visit.pointer());
        map = new MapView(session, host);
        visit = new Visit(session, desk, host, map, asking, program, this::openStep);
        steps = visit.steps();
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
        TopBar bar = new TopBar(session, desk.store(), look, name, visit::saveWalkPlan, this::toggleHelp);
        shell.fill(new VBox(bar, new NoticesView(desk.store().notices())), sheet, middle, facts, foot);
        Keys.install(keys, shell.getScene());
        listen();
        Map<String, Object> kept = desk.ui().get();
        int last = kept.get(STEP) instanceof Number place ? place.intValue() : Visit.CORES;
        sheet.open(last < steps.size() ? last : Visit.CORES);
        Optional.ofNullable(kept.get(SIGHT)).flatMap(Sight::of).ifPresent(map::lookAt);
        map.onSight(sight -> remember(SIGHT, sight.map(Sight::numbers)));
        Platform.runLater(map::requestFocus); // after the window has chosen for itself
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
                Key.of("File", "Shortcut+P", "Save the walk plan", visit::saveWalkPlan),
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

    /** Takes up the tool that the open step works with, and shows what it has found in the place of what others have. */
    private void settle() {
        Step step = steps.get(sheet.open().get());
        host.settle(step.tool().get());
        map.found().unbind();
        map.found().set(Found.NOTHING);
        Optional<ObservableValue<Found>> found = visit.found(step);
        found.ifPresent(map.found()::bind);
        boolean cores = step.tool().get() instanceof CoreTool || found.isEmpty();
        if (map.layers().shown().get().contains(MapLayer.CORES) != cores) {
            map.layers().show(MapLayer.CORES, cores);
            map.layers().show(MapLayer.STRATA, cores);
        }
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
        visit.onNews(sheet::fill);
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
        List<Node> inPlace = wanted.stream().toList();
        if (!inPlaceOfMap.getChildren().equals(inPlace)) {
            inPlaceOfMap.getChildren().setAll(inPlace);
        }
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
}
