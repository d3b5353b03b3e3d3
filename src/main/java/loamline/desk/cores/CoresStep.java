package loamline.desk.cores;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.tool.Effect;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sampling.HandChanges;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;

/** The tools of the Cores step: how cores are planned, how many are enough, and what to do with the selected one. */
public final class CoresStep extends VBox {
    private static final List<PlanField> MAIN = List.of(PlanField.BAGS, PlanField.CORES, PlanField.EDGE);
    private static final String CENTRE = "centre";
    private static final String RANDOM = "random";
    private static final String ONE_BAG = "one bag";
    private static final String ALL_BAGS = "all bags";

    private final Session session;
    private final Map<PlanField, FieldRow> fields = new EnumMap<>(PlanField.class);
    private final ComboBox<String> place = new ComboBox<>();
    private final ComboBox<String> walk = new ComboBox<>();
    private final Button plan = new Button("Plan the cores");
    private final Button lock = button("Lock", "Planning the rest again leaves the core where it is (L)");
    private final Button spare = button("Use spare", "Puts the core where its spare is (S)");
    private final Button afresh = button("Plan afresh", "Drops everything that was set by hand");
    private final TitledPane more = new TitledPane();
    private final CountView count = new CountView();
    private final Label locked = line("", "soft");
    private final VBox soil = new VBox(4);
    private PlanForm form;

    /** @param showWalk lets the walk run on the map */
    public CoresStep(Session session, Runnable showWalk) {
        this.session = session;
        form = PlanForm.of(options(), session.units().get());
        getStyleClass().addAll("tools", "cores-tools");
        setSpacing(8);
        plan.getStyleClass().add("primary");
        plan.setMaxWidth(Double.MAX_VALUE);
        place.getItems().addAll(CENTRE, RANDOM);
        walk.getItems().addAll(ONE_BAG, ALL_BAGS);
        Button show = button("Show the walk", "Runs the walk on the map");
        show.setOnAction(e -> showWalk.run());
        FlowPane hand = new FlowPane(6, 6, show, lock, spare, afresh);
        getChildren().addAll(plan, mainFields(), moreFields(), count, hand, locked, soil);
        act();
        follow();
    }

    private VBox mainFields() {
        VBox rows = rows(MAIN);
        rows.getChildren().add(new FieldRow("Place", place));
        return rows;
    }

    private TitledPane moreFields() {
        VBox rows = rows(List.of(PlanField.values()).stream()
                .filter(field -> !MAIN.contains(field))
                .toList());
        rows.getChildren().add(new FieldRow("Walk", walk));
        more.setText("More");
        more.setContent(rows);
        more.setExpanded(false);
        more.setAnimated(false);
        more.getStyleClass().add("more");
        return more;
    }

    private VBox rows(List<PlanField> shown) {
        VBox rows = new VBox(6);
        for (PlanField field : shown) {
            TextField text = new TextField();
            text.setPromptText(field == PlanField.BAGS ? "by zones" : "");
            text.textProperty().addListener((o, before, now) -> form = form.with(field, now));
            text.setOnAction(e -> plan());
            FieldRow row = new FieldRow(field.label(), text);
            fields.put(field, row);
            rows.getChildren().add(row);
        }
        return rows;
    }

    private static Button button(String words, String help) {
        Button button = new Button(words);
        button.setAccessibleHelp(help);
        button.setTooltip(new javafx.scene.control.Tooltip(help));
        return button;
    }

    private void act() {
        plan.setOnAction(e -> plan());
        lock.setOnAction(e -> edit(edits().lock(selected())));
        spare.setOnAction(e -> edit(edits().swap(selected())));
        afresh.setOnAction(e -> edit(edits().afresh()));
        place.valueProperty()
                .addListener((o, before, now) ->
                        form = form.with(RANDOM.equals(now) ? PlanOptions.Place.RANDOM : PlanOptions.Place.CENTRE));
        walk.valueProperty()
                .addListener((o, before, now) ->
                        form = form.with(ALL_BAGS.equals(now) ? PlanOptions.Rounds.ALL : PlanOptions.Rounds.ONE));
        session.history().addListener((o, before, now) -> {
            if (!before.now().planning().equals(now.now().planning())) {
                follow();
            }
        });
        session.results().addListener((o, before, now) -> fill());
        session.selection().addListener((o, before, now) -> fill());
        session.units().addListener((o, before, now) -> write(form.in(now)));
    }

    private Yard yard() {
        return session.history().get().now();
    }

    private PlanOptions options() {
        return yard().planning().orElse(PlanOptions.USUAL);
    }

    private String selected() {
        return session.selection().get().core();
    }

    private Optional<CorePlan> plannedNow() {
        return session.results()
                .get()
                .filter(results -> results.yard().equals(yard()))
                .flatMap(Results::plan);
    }

    private CoreEdits edits() {
        return new CoreEdits(yard(), plannedNow());
    }

    private void edit(Optional<Effect.Edit> edit) {
        edit.ifPresent(e -> session.edit(e.label(), e.after()));
    }

    /** Plans as the form says, locked cores staying where they are; says what in the form cannot be. */
    private void plan() {
        PlanForm.Checked checked = form.checked(options());
        fields.forEach((field, row) -> row.complain(checked.complaints().getOrDefault(field, "")));
        if (checked.complaints().keySet().stream().anyMatch(field -> !MAIN.contains(field))) {
            more.setExpanded(true);
        }
        checked.options().ifPresent(this::plan);
    }

    private void plan(PlanOptions asked) {
        Yard base = yard();
        Yard wanted = base.withPlanning(asked);
        if (!HandChanges.isByHand(base)) {
            session.edit("plan " + asked.coresPerComposite() + " cores a bag", wanted);
            return;
        }
        session.work()
                .latest(
                        "plan the rest",
                        "Planning the rest of the cores",
                        "Plan again",
                        progress -> HandChanges.replanned(wanted, CorePlanner.planRest(wanted)),
                        after -> {
                            if (yard().equals(base)) {
                                session.edit("plan the rest again", after);
                            }
                        });
    }

    /** Writes the options in force into the form. */
    private void follow() {
        write(PlanForm.of(options(), session.units().get()));
        fill();
    }

    private void write(PlanForm changed) {
        fields.forEach((field, row) -> {
            text(row).set(changed.text(field));
            row.complain("");
        });
        place.setValue(changed.place() == PlanOptions.Place.RANDOM ? RANDOM : CENTRE);
        walk.setValue(changed.walk() == PlanOptions.Rounds.ALL ? ALL_BAGS : ONE_BAG);
        form = changed;
    }

    private static StringProperty text(FieldRow row) {
        return ((TextField) row.control()).textProperty();
    }

    private void fill() {
        boolean byHand = HandChanges.isByHand(yard());
        String id = selected();
        CoreEdits edits = edits();
        plan.setText(byHand ? "Plan the rest again" : "Plan the cores");
        plan.setAccessibleText(plan.getText());
        afresh.setDisable(!byHand);
        lock.setText(edits.isLocked(id) ? "Unlock" : "Lock");
        lock.setDisable(edits.lock(id).isEmpty());
        spare.setDisable(edits.swap(id).isEmpty());
        locked.setText(edits.lockedWords());
        count.show(options().coresPerComposite());
        soil.getChildren()
                .setAll(plannedNow().map(BagSoil::of).orElse(List.of()).stream()
                        .map(CoresStep::line)
                        .toList());
    }

    private static Label line(BagSoil bag) {
        return bag.tooLittle() ? line("▲ " + bag.words(), "refused") : line(bag.words(), "soft");
    }

    private static Label line(String words, String style) {
        Label line = new Label(words);
        line.getStyleClass().add(style);
        line.managedProperty().bind(line.textProperty().isNotEmpty());
        line.setWrapText(true);
        line.setMinHeight(USE_PREF_SIZE);
        return line;
    }
}
