package loamline.desk.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import loamline.account.Problem;
import loamline.desk.session.Derived;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.sheet.State;
import loamline.desk.sheet.Step.Line;
import loamline.desk.tables.TableKind;
import loamline.desk.tables.TablesModel;
import loamline.files.ProductFile;
import loamline.files.SeasonTables;
import loamline.files.ServiceFile;
import loamline.files.TargetFile;
import loamline.reference.TurfTables;
import loamline.season.Ground;
import loamline.season.Purchase;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.soil.SoilOptions;
import loamline.units.UnitSystem;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;

/** The season's plan of the yard on show, from the tables that it carries. */
public final class SeasonModel {
    private static final List<String> PRODUCTS = List.of(
            "name", "n", "p2o5", "k2o", "s", "fe", "cce", "slow_n_pct", "form", "bag_kg", "price", "salt_index");
    private static final List<String> SERVICE =
            List.of("date", "product", "n", "p2o5", "k2o", "slow_n_pct", "kg", "area_m2", "rate_g_m2_n");
    private static final List<String> TARGETS =
            List.of("zone", "grass", "region", "use", "n_g_m2", "seed_mix", "overseed", "topdress_mm");

    private final LocalDate today;
    private final Derived<Optional<Season>> derived;
    private final TablesModel products;
    private final TablesModel service;
    private final TablesModel targets;
    private final ObjectProperty<Optional<String>> state = new SimpleObjectProperty<>(Optional.empty());
    private volatile Optional<String> law = Optional.empty();
    private volatile Map<String, Double> sunHours = Map.of();

    /** @param today the season's first day where no laboratory report has a date */
    public SeasonModel(Session session, LocalDate today) {
        this.today = today;
        derived = new Derived<>(session, "season", "Planning the season", (yard, before) -> planned(yard));
        state.addListener((o, before, now) -> {
            law = now;
            derived.again();
        });
        products = tables(
                session,
                Sort.PRODUCTS,
                "price lists",
                PRODUCTS,
                text -> ProductFile.parse(text).problems());
        service = tables(
                session,
                Sort.SERVICE,
                "service visits",
                SERVICE,
                text -> ServiceFile.parse(text).problems());
        targets = tables(
                session,
                Sort.TARGETS,
                "targets",
                TARGETS,
                text -> TargetFile.parse(text).problems());
    }

    private static TablesModel tables(
            Session session,
            Sort sort,
            String word,
            List<String> columns,
            java.util.function.Function<String, List<Problem>> check) {
        return new TablesModel(session, new TableKind(sort, word, "", columns, table -> check.apply(table.text())));
    }

    /** Takes note of the sun of zones, hours a day in the growing season. */
    public void shine(Map<String, Double> hours) {
        if (!hours.equals(sunHours)) {
            sunHours = hours;
            derived.again();
        }
    }

    /** Empty without products to choose from. */
    private Optional<Season> planned(Yard yard) {
        SeasonTables tables = SeasonTables.of(yard);
        if (tables.products().isEmpty()) {
            return Optional.empty();
        }
        SeasonOptions options = options(tables);
        return Optional.of(Season.of(new SeasonInputs(
                Ground.of(yard, options.setbackM()),
                tables.lab(),
                tables.products(),
                tables.visits(),
                tables.targets(),
                options,
                sunHours)));
    }

    private SeasonOptions options(SeasonTables tables) {
        LocalDate from = tables.lab().stream()
                .flatMap(v -> v.date().stream())
                .max(Comparator.naturalOrder())
                .orElse(today);
        return new SeasonOptions(
                from,
                Optional.empty(),
                law,
                false,
                false,
                tables.meanC(),
                law.map(SoilOptions.USUAL::inState).orElse(SoilOptions.USUAL),
                TurfTables.published());
    }

    /** The plan; empty while there is none. */
    public Optional<Season> season() {
        return derived.value().get().flatMap(Derived.Of::value);
    }

    /** What the step has come to. */
    public Line line(Results results, UnitSystem units) {
        if (results.yard().attached(Sort.PRODUCTS).isEmpty()) {
            return new Line("No price list yet", State.NOT_STARTED);
        }
        return season().map(SeasonModel::line).orElse(new Line("Being planned", State.UNDER_WAY));
    }

    private static Line line(Season season) {
        if (!season.isOptimal()) {
            return new Line("No plan: " + season.blocking().get(0), State.NEEDS_YOU);
        }
        int bags = season.purchases().stream().mapToInt(Purchase::bags).sum();
        return new Line(
                String.format(
                        Locale.ROOT, "%d tasks, %d bags, %.2f", season.tasks().size(), bags, season.cost()),
                State.DONE);
    }

    /** The state whose law counts; empty for none. */
    ObjectProperty<Optional<String>> state() {
        return state;
    }

    public TablesModel products() {
        return products;
    }

    public TablesModel service() {
        return service;
    }

    public TablesModel targets() {
        return targets;
    }

    /** Changes whenever something is worked out anew. */
    public ObservableValue<?> known() {
        return derived.value();
    }
}
