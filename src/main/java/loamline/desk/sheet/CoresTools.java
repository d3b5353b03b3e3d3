package loamline.desk.sheet;

import java.util.OptionalInt;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import loamline.desk.session.Session;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.yard.PlanOptions;

/** The tools of the Cores step: how many, how far off edges, and where in a stratum. */
public final class CoresTools extends VBox {
    private static final int MOST_BAGS = 6;
    private static final int MOST_CORES = 50;

    private final Session session;
    private final Spinner<Integer> bags = new Spinner<>(1, MOST_BAGS, 2);
    private final Spinner<Integer> cores = new Spinner<>(1, MOST_CORES, PlanOptions.USUAL.coresPerComposite());
    private final TextField edge = new TextField("3 ft");
    private final ComboBox<String> place = new ComboBox<>();
    private final Label refused = new Label();

    public CoresTools(Session session) {
        this.session = session;
        getStyleClass().add("tools");
        place.getItems().addAll("centre", "random");
        place.setValue("centre");
        refused.getStyleClass().add("refused");
        refused.setWrapText(true);
        refused.setManaged(false);
        fill();
        session.units()
                .addListener((o, before, now) -> Parsing.parse(Measure.LENGTH, edge.getText(), before)
                        .value()
                        .ifPresent(this::showEdge));
    }

    private void showEdge(double edgeM) {
        edge.setText(
                Formatting.format(Measure.LENGTH, edgeM, session.units().get()).text());
    }

    private void fill() {
        Button plan = new Button("Plan the cores");
        plan.getStyleClass().add("primary");
        plan.setMaxWidth(Double.MAX_VALUE);
        plan.setOnAction(e -> plan());
        GridPane fields = new GridPane();
        fields.getStyleClass().add("fields");
        field(fields, 0, "Bags", bags);
        field(fields, 1, "Cores a bag", cores);
        field(fields, 2, "Off edges", edge);
        field(fields, 3, "Place", place);
        getChildren().addAll(plan, fields, refused);
    }

    private static void field(GridPane grid, int row, String name, Control control) {
        Label label = new Label(name);
        label.setLabelFor(control);
        label.setMinWidth(USE_PREF_SIZE);
        control.setAccessibleText(name);
        control.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(control, Priority.ALWAYS);
        grid.addRow(row, label, control);
    }

    private void plan() {
        ParseResult parsed =
                Parsing.parse(Measure.LENGTH, edge.getText(), session.units().get());
        String complaint = parsed.refusal().map(ParseResult.Refused::message).orElse("");
        if (parsed.value().isPresent() && parsed.value().getAsDouble() < 0) {
            complaint = "A distance from edges is 0 or more.";
        }
        refused.setText(complaint);
        refused.setManaged(!complaint.isEmpty());
        if (complaint.isEmpty()) {
            double edgeM = parsed.value().getAsDouble();
            showEdge(edgeM);
            PlanOptions asked = options(edgeM);
            session.edit(
                    "plan " + asked.coresPerComposite() + " cores a bag",
                    session.history().get().now().withPlanning(asked));
        }
    }

    private PlanOptions options(double edgeM) {
        PlanOptions now = session.history().get().now().planning().orElse(PlanOptions.USUAL);
        return new PlanOptions(
                OptionalInt.of(bags.getValue()),
                cores.getValue(),
                edgeM,
                now.trunkBufferM(),
                now.headBufferM(),
                "random".equals(place.getValue()) ? PlanOptions.Place.RANDOM : PlanOptions.Place.CENTRE,
                now.sparesPerStratum(),
                now.seed(),
                now.walk(),
                now.probe(),
                now.extras());
    }
}
