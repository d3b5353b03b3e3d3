package loamline.desk.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import loamline.account.Account;
import loamline.desk.facts.Row;
import loamline.desk.facts.RowView;
import loamline.desk.session.Session;
import loamline.desk.theme.Words;
import loamline.soil.Advice;
import loamline.soil.Gypsum;
import loamline.soil.Lime;
import loamline.soil.Rating;
import loamline.soil.SampleResult;
import loamline.soil.SoilReport;
import loamline.soil.Sulfur;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;

/** The Soil step: what each sample says, what to spread, what is open. */
public final class SoilStep extends VBox {
    private static final double G_PER_KG = 1000;

    private final Session session;
    private final SoilModel model;
    private final VBox samples = new VBox(4);

    /** @param savePages asks where, and saves the pages for the client */
    public SoilStep(Session session, SoilModel model, Consumer<SoilReport> savePages) {
        super(8);
        this.session = session;
        this.model = model;
        getStyleClass().add("soil-step");
        Button pages = new Button("Save the soil pages …");
        pages.setAccessibleHelp("A page for each sample that a client can read, as a PDF");
        pages.setMaxWidth(Double.MAX_VALUE);
        pages.setOnAction(e -> model.report().ifPresent(savePages));
        getChildren().addAll(samples, pages);
        InvalidationListener changed = o -> show();
        model.known().addListener(changed);
        session.units().addListener(changed);
        show();
    }

    private void show() {
        List<Node> nodes = new ArrayList<>();
        model.report().map(SoilReport::samples).orElse(List.of()).forEach(sample -> nodes.addAll(nodes(sample)));
        if (nodes.isEmpty()) {
            nodes.add(Words.wrapped("Bring a laboratory report in under the map, or type its values.", "soft"));
        }
        samples.getChildren().setAll(nodes);
    }

    private List<Node> nodes(SampleResult sample) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.wrapped("Sample " + sample.id(), "group-title"));
        if (!sample.zones().isEmpty()) {
            nodes.add(Words.wrapped(String.join(", ", sample.zones()), "soft"));
        }
        sample.ratings().forEach(rating -> nodes.add(new RowView(row(rating))));
        nodes.addAll(advised("Lime", sample.lime().map(Lime::productKgM2).map(kg -> kg * G_PER_KG)));
        sample.lime()
                .value()
                .filter(lime -> lime.dosesKgM2().size() > 1)
                .ifPresent(lime -> nodes.add(Words.wrapped(
                        "In " + lime.dosesKgM2().size() + " doses, " + lime.monthsBetween() + " months apart.",
                        "soft")));
        nodes.addAll(advised("P₂O₅", sample.needs().p2o5GM2()));
        nodes.addAll(advised("K₂O", sample.needs().k2oGM2()));
        sample.sulfur()
                .value()
                .filter(sulfur -> sulfur.kgM2() > 0)
                .ifPresent(sulfur -> nodes.addAll(
                        advised("Sulfur", sample.sulfur().map(Sulfur::kgM2).map(kg -> kg * G_PER_KG))));
        sample.gypsum()
                .value()
                .filter(gypsum -> gypsum.kgM2() > 0)
                .ifPresent(gypsum -> nodes.addAll(
                        advised("Gypsum", sample.gypsum().map(Gypsum::kgM2).map(kg -> kg * G_PER_KG))));
        sample.cautions().forEach(words -> nodes.add(Words.wrapped(words, "soft")));
        return nodes;
    }

    private static Row row(Rating rating) {
        String extractant = rating.value().made().extractantText();
        String name = rating.value().element().key() + (extractant.isEmpty() ? "" : ", " + extractant) + ": "
                + rating.name().orElse("not rated");
        Optional<Account> why = rating.standing()
                .account()
                .or(() -> Optional.of(Account.of("", rating.standing().reason())));
        String number = String.valueOf(rating.value().value());
        return Row.of(name, new Formatted(number, rating.value().made().unitText()), why);
    }

    /** A dose with its account, or why there is none. */
    private List<Node> advised(String name, Advice<Double> gramsM2) {
        return gramsM2.value()
                .<List<Node>>map(value -> List.of(new RowView(Row.of(
                        name,
                        Formatting.concise(
                                Measure.AREAL_RATE, value, session.units().get()),
                        gramsM2.account()))))
                .orElseGet(() -> List.of(Words.wrapped(name + ": " + gramsM2.reason(), "warn")));
    }
}
