package loamline.desk.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import loamline.desk.facts.Row;
import loamline.desk.facts.RowView;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.theme.Words;
import loamline.desk.theme.Written;
import loamline.desk.water.WaterModel.Look;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.water.Gap;
import loamline.water.ValveWater;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupTest;
import loamline.yard.Head;

/** The Water step: valves, holes, throws that fall short, cup tests due, and what the cups say. */
public final class WaterStep extends VBox {
    private final Session session;
    private final WaterModel model;
    private final Consumer<Point> goTo;
    private final Consumer<CupPlan> saveSheet;
    private final ComboBox<Look> look = new ComboBox<>();
    private final VBox valve = new VBox();
    private final VBox holes = new VBox(2);
    private final VBox coverage = new VBox();
    private final Label shortThrows = Words.wrapped("", "warn");
    private final VBox due = new VBox(6);
    private final VBox measured = new VBox(4);
    private boolean showing;

    /**
     * @param goTo brings a place to the middle of the map
     * @param saveSheet asks where, and saves the sheet of a cup test
     */
    public WaterStep(Session session, WaterModel model, Consumer<Point> goTo, Consumer<CupPlan> saveSheet) {
        super(8);
        this.session = session;
        this.model = model;
        this.goTo = goTo;
        this.saveSheet = saveSheet;
        getStyleClass().add("water-step");
        look.setMaxWidth(Double.MAX_VALUE);
        look.setAccessibleText("What the map shows");
        look.setConverter(Written.as(WaterStep::words));
        look.valueProperty().addListener((o, before, now) -> {
            if (!showing && now != null) {
                model.look().set(now);
            }
        });
        getChildren()
                .addAll(
                        title("On the map"),
                        look,
                        valve,
                        Words.wrapped("As mapped: ideal, no wind. Only cups measure.", "soft"),
                        title("What the cups say"),
                        measured,
                        title("Holes"),
                        holes,
                        shortThrows,
                        title("Cup tests due"),
                        due,
                        title("Turf reached by"),
                        coverage);
        InvalidationListener changed = o -> show();
        model.known().addListener(changed);
        model.look().addListener(changed);
        model.readings().open().addListener(changed);
        session.units().addListener(changed);
        show();
    }

    private static Label title(String words) {
        Label title = new Label(words);
        title.getStyleClass().add("group-title");
        return title;
    }

    private static String words(Look look) {
        return switch (look.what()) {
            case RATE -> look.valve().isEmpty() ? "Rate, all valves together" : "Rate of valve " + look.valve();
            case CUPS_TO_SET -> "Cups to set out, valve " + look.valve();
            case CUPS_READ -> "Cups as read";
            case NOTHING -> "Holes only";
        };
    }

    private void show() {
        showing = true;
        look.getItems().setAll(looks());
        look.setValue(model.look().get());
        showing = false;
        UnitSystem units = session.units().get();
        model.view().ifPresent(view -> show(view, units));
    }

    private List<Look> looks() {
        List<Look> looks = new ArrayList<>(List.of(Look.ALL));
        model.valves().get().forEach(name -> looks.add(new Look(Look.What.RATE, name)));
        model.view().stream()
                .flatMap(view -> view.worthwhile().stream())
                .forEach(plan -> looks.add(new Look(Look.What.CUPS_TO_SET, plan.valve())));
        model.openTest().ifPresent(test -> looks.add(new Look(Look.What.CUPS_READ, test.valve())));
        looks.add(Look.NOTHING);
        return looks;
    }

    private void show(WaterView view, UnitSystem units) {
        List<ValveWater> valves = view.water().valves();
        String wanted = model.look().get().valve();
        valve.getChildren().clear();
        for (int i = 0; i < valves.size(); i++) {
            if (valves.get(i).name().equals(wanted)) {
                rows(valve, WaterWords.valve(view, i, units));
            }
        }
        holes.getChildren()
                .setAll(view.water().gaps().stream()
                        .map(gap -> hole(gap, units))
                        .toList());
        orSay(holes, "No hole: every part of the turf is reached.");
        shortThrows.setText(WaterWords.shortThrows(view.water().headToHead()));
        coverage.getChildren().clear();
        rows(coverage, WaterWords.coverage(view, units));
        due.getChildren().setAll(view.worthwhile().stream().map(this::due).toList());
        orSay(due, "Nothing asks for one: no holes, no trouble spots.");
        measured.getChildren().setAll(measured(units));
    }

    private static void rows(VBox box, List<Row> rows) {
        rows.forEach(row -> box.getChildren().add(new RowView(row)));
    }

    private static void orSay(VBox box, String words) {
        if (box.getChildren().isEmpty()) {
            box.getChildren().add(Words.wrapped(words, "soft"));
        }
    }

    private Node hole(Gap gap, UnitSystem units) {
        return link(
                WaterWords.hole(gap, units),
                "Brings the hole to the middle of the map",
                () -> goTo.accept(gap.centroid()));
    }

    private static Hyperlink link(String words, String help, Runnable action) {
        Hyperlink link = new Hyperlink(words);
        link.setWrapText(true);
        link.setAccessibleHelp(help);
        link.setOnAction(e -> {
            action.run();
            link.setVisited(false);
        });
        return link;
    }

    private Node due(CupPlan plan) {
        Button sheet = new Button("Save the cup sheet …");
        sheet.setAccessibleHelp("A map with the places of the cups and a table to fill in, valve " + plan.valve());
        sheet.setOnAction(e -> saveSheet.accept(plan));
        Hyperlink onMap = link(
                "Show the cups on the map",
                "Shows where the cups of valve " + plan.valve() + " go",
                () -> model.look().set(new Look(Look.What.CUPS_TO_SET, plan.valve())));
        return new VBox(2, Words.wrapped(WaterWords.due(plan)), onMap, sheet);
    }

    private List<Node> measured(UnitSystem units) {
        Optional<CupTest> test = model.openTest();
        if (test.isEmpty()) {
            return List.of(Words.wrapped("Bring the readings in under the map, and say which valve ran.", "soft"));
        }
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.wrapped(
                "Valve " + test.get().valve() + ", " + test.get().cups().size() + " cups", "soft"));
        WaterWords.measured(test.get(), units).forEach(row -> nodes.add(new RowView(row)));
        WaterWords.heads(test.get()).forEach(words -> nodes.add(Words.wrapped(words)));
        suspects(test.get()).forEach(nodes::add);
        List<Row> times = WaterWords.runTimes(test.get(), units);
        if (times.isEmpty()) {
            nodes.add(Words.wrapped("Run times by month need a climate table: bring one in under the map.", "soft"));
        } else {
            nodes.add(title("Run times"));
            times.forEach(row -> nodes.add(new RowView(row)));
        }
        return nodes;
    }

    private Stream<Node> suspects(CupTest test) {
        return test.findings().faults().stream()
                .flatMap(fault -> session.shown()
                        .get()
                        .all(Head.class)
                        .filter(head -> head.id().equals(fault.head()))
                        .limit(1)
                        .map(head -> link("Show head " + head.id(), "Selects the head on the map", () -> {
                            session.selection().set(Selection.ofFeatures(List.of(head.key())));
                            goTo.accept(head.at());
                        })));
    }
}
