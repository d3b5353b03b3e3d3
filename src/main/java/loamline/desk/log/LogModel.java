package loamline.desk.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
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
import loamline.desk.sheet.State;
import loamline.desk.sheet.Step.Line;
import loamline.desk.tables.TableKind;
import loamline.desk.tables.TablesModel;
import loamline.files.LogFile;
import loamline.files.Read;
import loamline.findings.CoreLog;
import loamline.findings.Findings;
import loamline.findings.LogRow;
import loamline.findings.Quantity;
import loamline.findings.Surface;
import loamline.findings.Surroundings;
import loamline.sampling.CorePlan;
import loamline.scene.Ramp;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;

/** The logs of the yard on show beside its plan, water, sun and soil, and what of the readings is seen on the map. */
public final class LogModel {
    private final Supplier<Surroundings> around;
    private final Derived<Optional<Seen>> derived;
    private final TablesModel logs;
    private final PhotoModel photos;
    private final ObjectProperty<Optional<Quantity>> shown = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Found> found = new ReadOnlyObjectWrapper<>(Found.NOTHING);
    private volatile Optional<CorePlan> plan = Optional.empty();
    private volatile Surroundings known = Surroundings.NONE;

    /** A plan and what the logs beside it say; no findings if they are of another yard, as the problems tell. */
    public record Seen(CorePlan plan, Optional<Findings> findings, List<Problem> problems) {}

    /**
     * @param around what is known of the ground beside the log, now
     * @param news changes whenever that does
     * @param folder where the yard's file is; empty if it has none yet
     */
    public LogModel(
            Session session,
            Supplier<Surroundings> around,
            List<ObservableValue<?>> news,
            Supplier<Optional<Path>> folder) {
        this.around = around;
        derived = new Derived<>(session, "log", "Reading the log", (yard, before) -> seen(yard));
        logs = new TablesModel(session, new TableKind(Sort.LOG, "logs of cores", "", LogFile.HEADER, this::problems));
        photos = new PhotoModel(session, logs, folder);
        session.results()
                .addListener((o, before, now) -> now.flatMap(Results::plan)
                        .filter(planned -> !plan.equals(Optional.of(planned)))
                        .ifPresent(this::replan));
        news.forEach(each -> each.addListener((o, before, now) -> lookAround()));
        InvalidationListener changed = o -> found.set(found());
        derived.value().addListener(changed);
        shown.addListener(changed);
    }

    private void replan(CorePlan planned) {
        plan = Optional.of(planned);
        derived.again();
    }

    private void lookAround() {
        known = around.get();
        derived.again();
    }

    private Optional<Seen> seen(Yard yard) {
        List<LogRow> rows = yard.attached(Sort.LOG).stream()
                .flatMap(table -> LogFile.parse(table.text()).value().stream())
                .flatMap(List::stream)
                .toList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        return plan.map(planned -> {
            CoreLog.Answer answer = CoreLog.of(planned, rows);
            return new Seen(planned, answer.log().map(log -> Findings.of(yard, log, known)), answer.problems());
        });
    }

    private List<Problem> problems(Attachment table) {
        Read<List<LogRow>> read = LogFile.parse(table.text());
        List<Problem> problems = new ArrayList<>(read.problems());
        plan.ifPresent(planned -> read.value()
                .ifPresent(rows -> problems.addAll(CoreLog.of(planned, rows).problems())));
        return problems;
    }

    private Found found() {
        return shown.get()
                .flatMap(quantity -> findings().flatMap(f -> f.surface(quantity)))
                .flatMap(LogModel::amounts)
                .map(Found::of)
                .orElse(Found.NOTHING);
    }

    /** Readings that are lengths or the like; what is only counted in classes is not drawn by colour. */
    private static Optional<Found.Amounts> amounts(Surface surface) {
        Quantity quantity = surface.quantity();
        Optional<Measure> measure = quantity.measure();
        return surface.values()
                .flatMap(grid -> measure.map(each ->
                        new Found.Amounts(grid.map(value -> value * quantity.perStored()), Ramp.CIVIDIS, each)));
    }

    /** Readings that can be seen between the cores. */
    List<Quantity> drawable() {
        return findings().map(Findings::surfaces).orElse(List.of()).stream()
                .filter(surface -> amounts(surface).isPresent())
                .map(Surface::quantity)
                .toList();
    }

    /** What the logs say; empty without one, or while it is worked out. */
    public Optional<Seen> seen() {
        return derived.value().get().flatMap(Derived.Of::value);
    }

    Optional<Findings> findings() {
        return seen().flatMap(Seen::findings);
    }

    /** What the step has come to. */
    public Line line(Results results, UnitSystem units) {
        if (results.yard().attached(Sort.LOG).isEmpty()) {
            return new Line("Nothing logged yet", State.NOT_STARTED);
        }
        return seen().map(LogModel::line).orElse(new Line("Being read", State.UNDER_WAY));
    }

    private static Line line(Seen seen) {
        int cores = seen.plan().mainCores().size();
        return seen.findings()
                .map(found -> new Line(
                        found.log().logged() + " of " + cores + " logged; "
                                + found.areas().size() + (found.areas().size() == 1 ? " part" : " parts")
                                + " that struggle",
                        found.log().logged() < cores ? State.UNDER_WAY : State.DONE))
                .orElse(new Line("The log is not of these cores", State.NEEDS_YOU));
    }

    /** The reading that is seen between the cores; empty for none. */
    ObjectProperty<Optional<Quantity>> shown() {
        return shown;
    }

    /** The photos that the logs name. */
    public PhotoModel photos() {
        return photos;
    }

    /** The tables of logs. */
    public TablesModel logs() {
        return logs;
    }

    /** Changes whenever something is worked out anew. */
    public ObservableValue<?> news() {
        return derived.value();
    }

    /** What is to be seen on the map. */
    public ReadOnlyObjectProperty<Found> onMap() {
        return found.getReadOnlyProperty();
    }
}
