package loamline.desk.zones;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.tool.Effect;
import loamline.yard.PlanOptions;
import loamline.yard.Zone;

/** The tools of the Zones step: zones by bag, a proposal under a budget of lab samples, and the selected zone's name. */
public final class ZonesStep extends VBox {
    private final Session session;
    private final VBox groups = new VBox(8);
    private final Label why = words("soft");
    private final VBox merges = new VBox(6);
    private final TextField samples = new TextField("2");
    private final Label samplesRefused = words("refused");
    private final Button forget = button("Forget my bags", "Frees all zones of the bags you chose");
    private final VBox one = new VBox(6);
    private final TextField name = new TextField();
    private final Label nameRefused = words("refused");
    private final TextField grass = new TextField();

    /**
     * @param cutZone takes the tool in hand that cuts an outline along a line
     * @param cutAll cuts all zones by what is on the map
     */
    public ZonesStep(Session session, Runnable cutZone, Node cutAll) {
        this.session = session;
        getStyleClass().addAll("tools", "zones-tools");
        setSpacing(8);
        Button propose = button("Propose bags", "Chooses which zones share a bag under that many lab samples");
        propose.getStyleClass().add("primary");
        propose.setMaxWidth(Double.MAX_VALUE);
        propose.setOnAction(e -> answer(zones().map(bags -> bags.propose(samples.getText())), samplesRefused));
        Button cut = button("Cut a zone", "Cuts the selected zone in two along a line");
        cut.setOnAction(e -> cutZone.run());
        forget.setOnAction(e -> edit(zones().flatMap(ZoneBags::forget)));
        one();
        getChildren()
                .addAll(
                        propose,
                        field("Lab samples", samples),
                        samplesRefused,
                        groups,
                        why,
                        merges,
                        new FlowPane(6, 6, cut, forget),
                        cutAll,
                        one);
        session.results().addListener((o, before, now) -> fill());
        session.units().addListener((o, before, now) -> fill());
        session.selection().addListener((o, before, now) -> fillOne());
        session.history().addListener((o, before, now) -> {
            if (!before.now().planning().equals(now.now().planning())) {
                fillSamples();
            }
        });
        fillSamples();
        fill();
    }

    private void one() {
        commit(name, this::rename);
        commit(grass, text -> edit(zones().map(bags -> bags.grass(zone(), text))));
        one.managedProperty().bind(one.visibleProperty());
        one.getChildren().addAll(field("Name", name), nameRefused, field("Grass", grass));
    }

    /** Takes a text over on Enter and when the field is left. */
    private static void commit(TextField field, Consumer<String> taken) {
        field.setOnAction(e -> taken.accept(field.getText()));
        field.focusedProperty().addListener((o, before, now) -> {
            if (before) {
                taken.accept(field.getText());
            }
        });
    }

    private Optional<ZoneBags> zones() {
        return session.results()
                .get()
                .filter(results -> results.yard().equals(session.history().get().now()))
                .map(ZoneBags::of);
    }

    private String zone() {
        return session.selection().get().zone();
    }

    private void answer(Optional<ZoneBags.Answer> answer, Label refused) {
        refused.setText(answer.map(ZoneBags.Answer::refusal).orElse(""));
        edit(answer.flatMap(ZoneBags.Answer::edit));
    }

    private void edit(Optional<Effect.Edit> edit) {
        edit.ifPresent(e -> session.edit(e.label(), e.after()));
    }

    /** A renamed zone stays selected. */
    private void rename(String text) {
        Optional<ZoneBags.Answer> answer = zones().map(bags -> bags.rename(zone(), text));
        answer(answer, nameRefused);
        if (answer.flatMap(ZoneBags.Answer::edit).isPresent()) {
            select(text.strip());
        }
    }

    private void fillSamples() {
        PlanOptions options = session.history().get().now().planning().orElse(PlanOptions.USUAL);
        samples.setText(String.valueOf(options.kits().orElse(2)));
        samplesRefused.setText("");
    }

    private void fill() {
        Optional<ZoneBags> found = session.results().get().map(ZoneBags::of);
        groups.getChildren().clear();
        merges.getChildren().clear();
        found.ifPresent(bags -> {
            for (ZoneBags.Bag bag : bags.bags()) {
                groups.getChildren()
                        .add(new BagView(
                                bag,
                                bags.choices(),
                                this::move,
                                this::select,
                                session.units().get()));
            }
            why.setText(bags.why());
            for (String sentence : bags.merges()) {
                Label line = words("soft");
                line.setText(sentence);
                merges.getChildren().add(line);
            }
            forget.setDisable(bags.forget().isEmpty());
        });
        fillOne();
    }

    private void fillOne() {
        Optional<Zone> selected = session.results()
                .get()
                .flatMap(results -> results.zones().stream()
                        .filter(zone -> zone.name().equals(zone()))
                        .findFirst());
        one.setVisible(selected.isPresent());
        nameRefused.setText("");
        selected.ifPresent(zone -> {
            name.setText(zone.name());
            grass.setText(zone.grass());
        });
    }

    private void move(String zone, String bag) {
        edit(zones().flatMap(bags -> bags.move(zone, bag)));
    }

    private void select(String zone) {
        session.selection().set(Selection.ofZone(zone));
    }

    private static HBox field(String label, TextField text) {
        Label words = new Label(label);
        words.setLabelFor(text);
        words.setMinWidth(USE_PREF_SIZE);
        text.setAccessibleText(label);
        text.setPrefColumnCount(6);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(8, words, text);
        line.setAlignment(javafx.geometry.Pos.BASELINE_LEFT);
        return line;
    }

    private static Button button(String words, String help) {
        Button button = new Button(words);
        button.setAccessibleHelp(help);
        button.setTooltip(new Tooltip(help));
        return button;
    }

    private static Label words(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }
}
