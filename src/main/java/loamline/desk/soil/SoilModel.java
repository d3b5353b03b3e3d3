package loamline.desk.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import loamline.account.Problem;
import loamline.desk.session.Derived;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.sheet.State;
import loamline.desk.sheet.Step.Line;
import loamline.desk.tables.TableKind;
import loamline.desk.tables.TablesModel;
import loamline.files.LabFile;
import loamline.soil.LabValue;
import loamline.soil.SampleResult;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;

/** The laboratory reports of the yard on show and what they mean together. */
public final class SoilModel {
    private static final List<String> COLUMNS =
            List.of("sample", "zones", "element", "value", "unit", "extractant", "depth_cm", "method", "lab", "date");
    private static final double G_PER_KG = 1000;

    private final Derived<SoilReport> derived;
    private final TablesModel reports;

    public SoilModel(Session session) {
        derived = new Derived<>(
                session, "soil", "Reading the laboratory reports", (yard, before) -> report(yard.attached(Sort.LAB)));
        reports = new TablesModel(
                session, new TableKind(Sort.LAB, "laboratory reports", "", COLUMNS, SoilModel::problems));
    }

    /** All reports together, so that a value is set beside the last of its kind. */
    private static SoilReport report(List<Attachment> tables) {
        List<LabValue> values = tables.stream()
                .flatMap(table -> LabFile.parse(table.text()).values().stream())
                .toList();
        return SoilReport.of(values, SoilOptions.USUAL);
    }

    private static List<Problem> problems(Attachment table) {
        List<Problem> problems = new ArrayList<>(LabFile.parse(table.text()).problems());
        problems.addAll(report(List.of(table)).problems());
        return problems;
    }

    /** What the reports mean; empty while that is worked out. */
    public Optional<SoilReport> report() {
        return derived.value().get().map(Derived.Of::value);
    }

    /** What the step has come to: the sample that is farthest from its target. */
    public Line line(Results results, UnitSystem units) {
        if (results.yard().attached(Sort.LAB).isEmpty()) {
            return new Line("No laboratory report yet", State.NOT_STARTED);
        }
        List<SampleResult> samples = report().map(SoilReport::samples).orElse(List.of());
        return samples.stream()
                .findFirst()
                .map(first -> new Line(words(first, samples.size(), units), State.DONE))
                .orElse(new Line("The reports need you", State.NEEDS_YOU));
    }

    private static String words(SampleResult sample, int samples, UnitSystem units) {
        String ph = sample.waterPh().map(value -> "pH " + value).orElse("pH not told");
        String lime = sample.lime()
                .value()
                .map(need -> need.productKgM2() > 0
                        ? "lime "
                                + Formatting.concise(Measure.AREAL_RATE, need.productKgM2() * G_PER_KG, units)
                                        .text()
                        : "no lime")
                .orElse("lime not told");
        return sample.id() + ": " + ph + ", " + lime + (samples > 1 ? "; " + (samples - 1) + " more" : "");
    }

    /** The tables of laboratory values. */
    public TablesModel reports() {
        return reports;
    }

    /** Changes whenever something is worked out anew. */
    public ObservableValue<?> known() {
        return derived.value();
    }
}
