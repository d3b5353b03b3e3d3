package loamline.desk.facts;

import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;
import loamline.desk.theme.Icons;
import loamline.desk.theme.Words;
import org.kordamp.ikonli.feather.Feather;

/** The facts about what is selected, editable in place; folds away to a narrow strip. */
public final class FactsView extends BorderPane {
    private final Session session;
    private final BooleanProperty folded = new SimpleBooleanProperty();
    private final Button fold = new Button();
    private final Label title = Words.wrapped("", "facts-title");
    private final Label where = Words.wrapped("", "soft");
    private final VBox rows = new VBox();
    private final VBox fields = new VBox();
    private final ScrollPane scroll = new ScrollPane();
    private Facts shown = new Facts("", "", List.of(), List.of());

    public FactsView(Session session) {
        this.session = session;
        getStyleClass().add("facts");
        fold.getStyleClass().add("fold");
        fold.setOnAction(e -> folded.set(!folded.get()));
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        rows.getStyleClass().add("facts-rows");
        fields.getStyleClass().add("facts-fields");
        VBox content = new VBox(where, rows, fields);
        content.getStyleClass().add("facts-content");
        scroll.setContent(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        folded.addListener((o, before, now) -> layOut());
        InvalidationListener changed = o -> fill();
        session.results().addListener(changed);
        session.selection().addListener(changed);
        session.units().addListener(changed);
        layOut();
        fill();
    }

    /** Whether only a strip is left to be seen. */
    public BooleanProperty folded() {
        return folded;
    }

    private void layOut() {
        boolean away = folded.get();
        String help = away ? "Show the facts (F8)" : "Fold the facts away (F8)";
        fold.setGraphic(Icons.of(away ? Feather.CHEVRON_LEFT : Feather.CHEVRON_RIGHT));
        fold.setTooltip(new Tooltip(help));
        fold.setAccessibleText(help);
        HBox head = away ? new HBox(fold) : new HBox(8, title, fold);
        head.getStyleClass().add(away ? "facts-strip" : "facts-head");
        setTop(head);
        setCenter(away ? null : scroll);
        getStyleClass().remove("facts-folded");
        if (away) {
            getStyleClass().add("facts-folded");
        }
    }

    private void fill() {
        session.results()
                .get()
                .map(results -> Facts.of(
                        results, session.selection().get(), session.units().get()))
                .ifPresent(this::show);
    }

    /** Facts of the same make are filled in where they stand, so that a field keeps what is being typed. */
    private void show(Facts facts) {
        title.setText(facts.title());
        where.setText(facts.where());
        if (make(facts).equals(make(shown))) {
            for (int i = 0; i < facts.rows().size(); i++) {
                ((RowView) rows.getChildren().get(i)).show(facts.rows().get(i));
            }
            for (int i = 0; i < facts.fields().size(); i++) {
                ((FieldEditor) fields.getChildren().get(i)).show(facts.fields().get(i));
            }
        } else {
            rows.getChildren().setAll(facts.rows().stream().map(RowView::new).toList());
            fields.getChildren()
                    .setAll(facts.fields().stream()
                            .map(field -> new FieldEditor(field, this::set))
                            .toList());
        }
        shown = facts;
    }

    private static List<Object> make(Facts facts) {
        return List.of(
                facts.rows().stream()
                        .map(row -> row.name() + row.why().isPresent())
                        .toList(),
                facts.fields().stream().map(Field::spec).toList(),
                facts.fields().stream().map(Field::keys).toList());
    }

    private String set(Field field, String text) {
        Field.Answer answer = field.answer(
                text, session.history().get().now(), session.units().get());
        answer.edit().ifPresent(step -> session.edit(step.label(), step.after()));
        return answer.complaint();
    }
}
