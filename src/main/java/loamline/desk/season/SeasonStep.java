package loamline.desk.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import loamline.desk.facts.Row;
import loamline.desk.facts.RowView;
import loamline.desk.session.Session;
import loamline.desk.theme.Words;
import loamline.desk.theme.Written;
import loamline.reference.TurfTables;
import loamline.season.Nutrient;
import loamline.season.Purchase;
import loamline.season.Season;
import loamline.season.Task;
import loamline.season.ZoneSeason;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;

/** The Season step: needs less the service, tasks by date, what to buy, and what stands in the way. */
public final class SeasonStep extends VBox {
    /** What of a season can be saved. */
    public enum Page {
        CLIENT_PLAN("Save the client plan …", "client-plan.pdf"),
        CALENDAR("Save the calendar …", "season.ics"),
        SHOPPING("Save the shopping list …", "shopping.csv");

        private final String words;
        private final String file;

        Page(String words, String file) {
            this.words = words;
            this.file = file;
        }

        /** What it is. */
        public String title() {
            return words.replace("Save the ", "").replace(" …", "");
        }

        /** The name of its file. */
        public String file() {
            return file;
        }
    }

    private final Session session;
    private final SeasonModel model;
    private final VBox plan = new VBox(4);

    /** @param save asks where, and saves */
    public SeasonStep(Session session, SeasonModel model, BiConsumer<Page, Season> save) {
        super(8);
        this.session = session;
        this.model = model;
        getStyleClass().add("season-step");
        ComboBox<Optional<String>> law = new ComboBox<>();
        law.getItems().add(Optional.empty());
        TurfTables.published()
                .rows("turf-laws.csv")
                .forEach(row -> law.getItems().add(Optional.of(row.text("state"))));
        law.setConverter(
                Written.as(state -> state.map(letters -> "Law of " + letters).orElse("No state’s law")));
        law.setAccessibleText("State whose law counts");
        law.setMaxWidth(Double.MAX_VALUE);
        law.valueProperty().bindBidirectional(model.state());
        getChildren().addAll(law, plan);
        for (Page page : Page.values()) {
            Button button = new Button(page.words);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setOnAction(e -> model.season().ifPresent(season -> save.accept(page, season)));
            getChildren().add(button);
        }
        InvalidationListener changed = o -> show();
        model.known().addListener(changed);
        session.units().addListener(changed);
        show();
    }

    private static Label title(String words) {
        return Words.wrapped(words, "group-title");
    }

    private void show() {
        plan.getChildren()
                .setAll(model.season()
                        .map(this::nodes)
                        .orElse(List.of(Words.wrapped(
                                "Bring a price list in under the map; a service’s visits and your targets, if there are"
                                        + " any.",
                                "soft"))));
    }

    private List<Node> nodes(Season season) {
        List<Node> nodes = new ArrayList<>();
        season.blocking().forEach(words -> nodes.add(Words.wrapped(words, "refused")));
        season.zones().forEach(zone -> zone(zone).forEach(nodes::add));
        nodes.add(title("Tasks"));
        season.tasks().forEach(task -> nodes.add(new RowView(row(task))));
        nodes.add(title("To buy"));
        season.purchases().forEach(purchase -> nodes.add(new RowView(row(purchase))));
        season.second()
                .ifPresent(second -> nodes.add(Words.wrapped(
                        String.format(
                                Locale.ROOT,
                                "All bags cost %.2f; the next best plan %.2f.",
                                season.cost(),
                                second.cost()),
                        "soft")));
        season.cautions().forEach(words -> nodes.add(Words.wrapped(words, "soft")));
        return nodes;
    }

    private Stream<Node> zone(ZoneSeason zone) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(title(zone.name()));
        for (Nutrient nutrient : List.of(Nutrient.N, Nutrient.P2O5, Nutrient.K2O, Nutrient.LIME)) {
            zone.remaining(nutrient).ifPresent(left -> {
                double surplus = zone.surplus(nutrient).orElse(0);
                String more = surplus > 0 ? ", service gives " + dose(surplus).text() + " too much" : "";
                nodes.add(new RowView(Row.of(
                        nutrient.key() + " to spread",
                        dose(left),
                        Optional.ofNullable(zone.accounts().get(nutrient)))));
                if (!more.isEmpty()) {
                    nodes.add(Words.wrapped(nutrient.key() + more + ".", "warn"));
                }
            });
        }
        zone.questions().forEach(words -> nodes.add(Words.wrapped(words, "warn")));
        return nodes.stream();
    }

    private Formatted dose(double gM2) {
        return Formatting.concise(Measure.AREAL_RATE, gM2, session.units().get());
    }

    private Row row(Task task) {
        String what = task.date() + "  " + task.action().title() + ", " + task.zone()
                + (task.product().isEmpty() ? "" : ": " + task.product());
        Formatted amount = task.kg() > 0
                ? Formatting.concise(Measure.MASS, task.kg(), session.units().get())
                : task.volumeM3() > 0
                        ? Formatting.concise(
                                Measure.VOLUME_BULK,
                                task.volumeM3(),
                                session.units().get())
                        : new Formatted("", "");
        return Row.of(what, amount, Optional.empty());
    }

    private Row row(Purchase purchase) {
        Formatted amount = purchase.bags() > 0
                ? new Formatted(String.valueOf(purchase.bags()), purchase.bags() == 1 ? "bag" : "bags")
                : purchase.volumeM3() > 0
                        ? Formatting.concise(
                                Measure.VOLUME_BULK,
                                purchase.volumeM3(),
                                session.units().get())
                        : Formatting.concise(
                                Measure.MASS, purchase.kg(), session.units().get());
        return Row.of(purchase.name(), amount, Optional.empty());
    }
}
