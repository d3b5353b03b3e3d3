package loamline.desk.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;
import loamline.desk.theme.Words;
import loamline.desk.theme.Written;
import loamline.findings.AreaFinding;
import loamline.findings.Findings;
import loamline.findings.Quantity;
import loamline.sampling.CorePlan;

/** The Log step: readings between the cores, and for each part that struggles what ails it and what would tell. */
public final class LogStep extends VBox {
    private final Session session;
    private final LogModel model;
    private final ComboBox<Optional<Quantity>> shown = new ComboBox<>();
    private final VBox areas = new VBox(6);
    private boolean showing;

    /**
     * @param savePages asks where, and saves the findings
     * @param askForPhoto asks for the file of a photo
     */
    public LogStep(
            Session session,
            LogModel model,
            BiConsumer<CorePlan, Findings> savePages,
            Supplier<Optional<Path>> askForPhoto) {
        super(8);
        this.session = session;
        this.model = model;
        getStyleClass().add("log-step");
        shown.setConverter(Written.as(
                quantity -> quantity.map(each -> "On the map: " + each.title()).orElse("On the map: cores only")));
        shown.setAccessibleText("What the map shows between the cores");
        shown.setMaxWidth(Double.MAX_VALUE);
        shown.valueProperty().addListener((o, before, now) -> {
            if (!showing && now != null) {
                model.shown().set(now);
            }
        });
        Button pages = new Button("Save the findings …");
        pages.setMaxWidth(Double.MAX_VALUE);
        pages.setAccessibleHelp("What the cores showed and why, as a PDF");
        pages.setOnAction(e -> model.seen()
                .ifPresent(seen -> seen.findings().ifPresent(found -> savePages.accept(seen.plan(), found))));
        PhotosView photos = new PhotosView(model.photos(), askForPhoto);
        getChildren().addAll(shown, areas, pages, photos);
        InvalidationListener changed = o -> show();
        model.news().addListener(changed);
        session.units().addListener(changed);
        InvalidationListener pictured = o -> photos.show();
        session.history().addListener(pictured);
        session.results().addListener(pictured);
        show();
    }

    private void show() {
        showing = true;
        List<Optional<Quantity>> choices = new ArrayList<>(List.of(Optional.empty()));
        model.drawable().forEach(quantity -> choices.add(Optional.of(quantity)));
        shown.getItems().setAll(choices);
        shown.setValue(choices.contains(model.shown().get()) ? model.shown().get() : Optional.empty());
        showing = false;
        areas.getChildren()
                .setAll(model.findings()
                        .map(this::nodes)
                        .orElse(List.of(Words.wrapped(
                                "Bring the log in under the map, or type it: one row a core. Blank cells are allowed.",
                                "soft"))));
    }

    private List<Node> nodes(Findings findings) {
        List<Node> nodes = new ArrayList<>();
        findings.areas().forEach(area -> nodes.addAll(nodes(area)));
        if (nodes.isEmpty()) {
            nodes.add(Words.wrapped("No part of the lawn struggles, as far as the cores tell.", "soft"));
        }
        return nodes;
    }

    private List<Node> nodes(AreaFinding area) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.wrapped(area.name() + ": " + area.title(), "group-title"));
        nodes.add(Words.wrapped(area.words(session.units().get())));
        area.likely().ifPresent(likely -> {
            nodes.add(Words.wrapped("To be sure: " + likely.cause().confirm(), "soft"));
            nodes.add(Words.wrapped("What to do: " + likely.cause().action()));
            nodes.add(Words.wrapped(likely.cause().caution(), "soft"));
        });
        return nodes;
    }
}
