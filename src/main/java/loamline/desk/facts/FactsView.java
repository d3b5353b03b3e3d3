package loamline.desk.facts;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;

/** The facts about what is selected, with the account of its main number. */
public final class FactsView extends ScrollPane {
    private final Session session;
    private final VBox content = new VBox();

    public FactsView(Session session) {
        this.session = session;
        getStyleClass().add("facts");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        content.getStyleClass().add("facts-content");
        setContent(content);
        session.results().addListener((o, before, now) -> fill());
        session.selection().addListener((o, before, now) -> fill());
        session.units().addListener((o, before, now) -> fill());
    }

    private void fill() {
        content.getChildren().clear();
        session.results()
                .get()
                .map(results -> Facts.of(
                        results, session.selection().get(), session.units().get()))
                .ifPresent(this::show);
    }

    private void show(Facts facts) {
        content.getChildren().addAll(words(facts.title(), "facts-title"), words(facts.where(), "soft"));
        facts.rows().forEach(row -> content.getChildren().add(row(row)));
        facts.why().ifPresent(why -> content.getChildren().add(account(why)));
    }

    private static Node row(Facts.Row row) {
        Label name = new Label(row.name());
        name.setWrapText(true);
        name.setMinWidth(0);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label value = new Label(row.value());
        value.getStyleClass().add("fact-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        Label unit = new Label(row.unit());
        unit.getStyleClass().add("soft");
        unit.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(4, name, gap, value, unit);
        line.getStyleClass().add("fact");
        return line;
    }

    private static Node account(Facts.Why why) {
        VBox box = new VBox(
                6,
                words("Why", "why-title"),
                words(why.note(), "body"),
                words(why.formula(), "formula"),
                words(why.inputs(), "soft"),
                words(why.sources(), "soft"));
        box.getStyleClass().add("why");
        return box;
    }

    private static Label words(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        label.setManaged(!text.isBlank());
        return label;
    }
}
