package loamline.desk.water;

import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import loamline.account.Problem;
import loamline.desk.map.Found;
import loamline.desk.session.Derived;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.sheet.Step;
import loamline.desk.tables.TableKind;
import loamline.desk.tables.TablesModel;
import loamline.files.CupTable;
import loamline.files.ReadingsFile;
import loamline.raster.Grid;
import loamline.scene.CupMap;
import loamline.scene.Ramp;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.water.Water;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupTest;
import loamline.water.cups.MeasuredRates;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Head;

/** The water of the yard on show, the readings of its cup tests, and what of all that is seen on the map. */
public final class WaterModel {
    private static final List<String> READING_COLUMNS = List.of("cup", "x_m", "y_m", "ml", "throat_cm2", "minutes");

    private final Session session;
    private final Derived<WaterView> derived;
    private final TablesModel readings;
    private final ReadOnlyObjectWrapper<List<String>> valves = new ReadOnlyObjectWrapper<>(List.of());
    private final ObjectProperty<Look> look = new SimpleObjectProperty<>(Look.ALL);
    private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOTHING);

    /**
     * What is seen on the map.
     *
     * @param what which water
     * @param valve of which valve; empty for all
     */
    record Look(What what, String valve) {
        static final Look ALL = new Look(What.RATE, "");
        static final Look NOTHING = new Look(What.NOTHING, "");

        /** Rates as mapped, the cups to set out, the cups that were read, or only the holes. */
        enum What {
            RATE,
            CUPS_TO_SET,
            CUPS_READ,
            NOTHING
        }
    }

    public WaterModel(Session session) {
        this.session = session;
        derived = new Derived<>(session, "water", "Working out the water", WaterView::of);
        readings = new TablesModel(
                session, new TableKind(Sort.READINGS, "cup readings", "valve", READING_COLUMNS, this::problems));
        InvalidationListener changed = o -> show();
        derived.value().addListener(changed);
        look.addListener(changed);
        readings.open().addListener(changed);
        show();
    }

    /** What is known; empty while nothing is. */
    Optional<WaterView> view() {
        return derived.value().get().map(Derived.Of::value);
    }

    /** Changes whenever something is worked out anew. */
    public ObservableValue<?> known() {
        return derived.value();
    }

    private List<Problem> problems(Attachment table) {
        List<Problem> ofText =
                ReadingsFile.parse(table.text(), session.shown().get().frame()).problems();
        return view().flatMap(view -> view.tested(table))
                .map(CupTable::problems)
                .orElse(ofText);
    }

    /** The test that the open table of readings belongs to. */
    Optional<CupTest> openTest() {
        return readings.open()
                .get()
                .flatMap(table -> view().flatMap(view -> view.tested(table)))
                .flatMap(CupTable::test);
    }

    private void show() {
        valves.set(CupTest.valves(session.shown().get()));
        found.set(view().map(this::found).orElse(Found.NOTHING));
    }

    private Found found(WaterView view) {
        Look now = look.get();
        Optional<Grid> rate = switch (now.what()) {
            case RATE ->
                now.valve().isEmpty() ? view.water().rateMmH() : view.water().rateMmH(now.valve());
            case CUPS_READ -> openTest().flatMap(CupTest::measured).map(MeasuredRates::mmH);
            case CUPS_TO_SET, NOTHING -> Optional.empty();
        };
        Optional<CupMap> cups = switch (now.what()) {
            case CUPS_TO_SET -> plan(now.valve()).map(CupMap::of);
            case CUPS_READ -> openTest().map(test -> CupMap.of(session.shown().get(), test));
            case RATE, NOTHING -> Optional.empty();
        };
        return new Found(
                rate.map(values -> new Found.Amounts(values, Ramp.CIVIDIS, Measure.DEPTH_RATE)),
                view.water().gaps(),
                cups,
                List.of());
    }

    /** The cup test that is due at a valve. */
    Optional<CupPlan> plan(String valve) {
        return view().flatMap(view -> view.worthwhile().stream()
                .filter(plan -> plan.valve().equals(valve))
                .findFirst());
    }

    ObjectProperty<Look> look() {
        return look;
    }

    /** What the step has come to, in a line. */
    public Step.Line line(Results results, UnitSystem units) {
        return WaterWords.line(view(), results.yard().all(Head.class).findAny().isPresent(), units);
    }

    /** The water as mapped; empty while it is worked out. */
    public Optional<Water> water() {
        return view().map(WaterView::water);
    }

    /** The tests whose readings can be read, the older first. */
    public List<CupTest> tests() {
        return view().stream()
                .flatMap(view -> view.tested().stream())
                .flatMap(tested -> tested.test().stream())
                .toList();
    }

    /** The tables of cup readings. */
    public TablesModel readings() {
        return readings;
    }

    /** The valves of the yard. */
    public ReadOnlyObjectProperty<List<String>> valves() {
        return valves.getReadOnlyProperty();
    }

    /** What is to be seen on the map. */
    public ReadOnlyObjectProperty<Found> found() {
        return found.getReadOnlyProperty();
    }
}
