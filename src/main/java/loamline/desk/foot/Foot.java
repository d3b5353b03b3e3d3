package loamline.desk.foot;

import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import loamline.account.Severity;
import loamline.desk.session.Session;
import loamline.units.UnitSystem;

/** The line under the map. */
public final class Foot extends HBox {
    private final Session session;
    private final ProblemsView problems;
    private final Button count = new Button();

    /** @param said the last thing the program said; blank if nothing */
    public Foot(Session session, ProblemsView problems, ObservableStringValue said) {
        super(12);
        this.session = session;
        this.problems = problems;
        getStyleClass().add("foot");
        count.getStyleClass().add("problem-count");
        count.setMinWidth(Region.USE_PREF_SIZE);
        count.setTooltip(new Tooltip("Show what was found (Ctrl+E)"));
        count.setAccessibleHelp("Shows what was found, with a way to each (Ctrl+E)");
        count.setOnAction(e -> toggleProblems());
        session.results().addListener(o -> count());
        count();
        Label words = new Label();
        words.textProperty().bind(said);
        words.getStyleClass().add("soft");
        words.setMinWidth(0);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setTooltip(new Tooltip());
        words.getTooltip().textProperty().bind(said);
        setHgrow(words, Priority.ALWAYS);
        getChildren().addAll(count, saved(), words, new WorkView(session.work()), units());
    }

    /** Shows the list of problems, or takes it away. */
    public void toggleProblems() {
        problems.setVisible(!problems.isVisible());
        if (problems.isVisible()) {
            problems.requestFocus();
        }
    }

    private void count() {
        List<Trouble> troubles = session.results().get().stream()
                .flatMap(results -> Trouble.of(results.problems(), results.yard()).stream())
                .toList();
        Severity worst = Trouble.worst(troubles).orElse(Severity.INFO);
        count.setText(Trouble.counted(troubles));
        count.setGraphic(troubles.isEmpty() ? null : SeveritySign.of(worst));
        count.getStyleClass().removeIf(style -> style.startsWith("count-"));
        count.getStyleClass()
                .add("count-" + (troubles.isEmpty() ? "none" : worst.name().toLowerCase(Locale.ROOT)));
    }

    private Node saved() {
        Label saved = new Label();
        saved.setMinWidth(Region.USE_PREF_SIZE);
        saved.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> session.history().get().isUnsaved() ? "● Unsaved changes" : "Saved", session.history()));
        saved.getStyleClass().add("soft");
        return saved;
    }

    private Node units() {
        HBox box = new HBox(
                unit(UnitSystem.US, "ft", "US customary units (Ctrl+U switches)"),
                unit(UnitSystem.METRIC, "m", "Metric units (Ctrl+U switches)"));
        box.getStyleClass().add("units");
        return box;
    }

    private ToggleButton unit(UnitSystem system, String words, String help) {
        ToggleButton button = new ToggleButton(words);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText(help);
        button.setOnAction(e -> {
            session.units().set(system);
            button.setSelected(true);
        });
        session.units().addListener((o, before, now) -> button.setSelected(now == system));
        button.setSelected(session.units().get() == system);
        return button;
    }

    /** Feet become metres and metres feet. */
    public void switchUnits() {
        session.units().set(session.units().get() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US);
    }
}
