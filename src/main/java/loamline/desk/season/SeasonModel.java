package loamline.desk.season;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import loamline.files.ClimateFile;
import loamline.files.LabFile;
import loamline.files.ProductFile;
import loamline.files.ServiceFile;
import loamline.files.TargetFile;
import loamline.reference.TurfTables;
import loamline.season.Ground;
import loamline.season.Purchase;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.season.Target;
import loamline.season.Visit;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.units.UnitSystem;
import loamline.water.need.MonthClimate;
import loamline.yard.Attachment;
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

    /** Empty without products to choose from. */
    private Optional<Season> planned(Yard yard) {
        var list = texts(yard, Sort.PRODUCTS)
                .flatMap(text -> ProductFile.parse(text).products().stream())
                .toList();
        if (list.isEmpty()) {
            return Optional.empty();
        }
        List<LabValue> lab = texts(yard, Sort.LAB)
                .flatMap(text -> LabFile.parse(text).values().stream())
                .toList();
        List<Visit> visits = texts(yard, Sort.SERVICE)
                .flatMap(text -> ServiceFile.parse(text).visits().stream())
                .toList();
        List<Target> wanted = texts(yard, Sort.TARGETS)
                .flatMap(text -> TargetFile.parse(text).targets().stream())
                .toList();
        SeasonOptions options = options(yard, lab);
        return Optional.of(
                Season.of(new SeasonInputs(Ground.of(yard, options.setbackM()), lab, list, visits, wanted, options)));
    }

    private static Stream<String> texts(Yard yard, Sort sort) {
        return yard.attached(sort).stream().map(Attachment::text);
    }

    private SeasonOptions options(Yard yard, List<LabValue> lab) {
        LocalDate from = lab.stream()
                .flatMap(v -> v.date().stream())
                .max(Comparator.naturalOrder())
                .orElse(today);
        return new SeasonOptions(
                from,
                Optional.empty(),
                law,
                false,
                false,
                meanC(yard),
                law.map(SoilOptions.USUAL::inState).orElse(SoilOptions.USUAL),
                TurfTables.published());
    }

    private static Map<Month, Double> meanC(Yard yard) {
        Map<Month, Double> means = new EnumMap<>(Month.class);
        texts(yard, Sort.CLIMATE)
                .flatMap(text -> ClimateFile.parse(text).value().stream())
                .flatMap(List<MonthClimate>::stream)
                .forEach(month ->
                        month.temperature().ifPresent(t -> means.put(month.month(), (t.minC() + t.maxC()) / 2)));
        return means;
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
