package loamline.desk.trace;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import loamline.account.Account;
import loamline.desk.theme.Written;
import loamline.desk.tool.AssistTool;
import loamline.yard.Kind;

/** The tools of the Trace step: the image, its scale and north, outlines from the image, and outlines by hand. */
public final class TraceStep extends VBox {
    private final TraceModel model;
    private final Supplier<Optional<Path>> askForImage;
    private final Slider opacity = slider("How opaque the image is");
    private final Slider tolerance = slider("How much counts as alike");
    private final ComboBox<Kind> kind = new ComboBox<>();
    private final CheckBox along = new CheckBox("Take the drawing along");
    private final Label name = words("soft");
    private final Label scale = words("body");
    private final VBox distances = group();
    private final Label warning = words("warn");
    private final Label why = words("soft");
    private final Button askWhy = new Button("Why this scale");
    private final Button measure =
            button("Measure a distance", "Click its two ends and type its length", this::measure);
    private final Button north = button("Set north", "Draw a line that points north", this::turnNorth);
    private final Button trace =
            button("Trace from the image", "Click inside a lawn, a roof or a drive; Enter accepts", this::assist);
    private final Label doubts = words("warn");
    private final VBox image = group();
    private final VBox assisted = group();
    private boolean showing;

    /**
     * @param askForImage asks for an image's file; empty if the person turns back
     * @param drawingTools what draws by hand, as labelled buttons in groups
     */
    public TraceStep(TraceModel model, Supplier<Optional<Path>> askForImage, Node drawingTools) {
        super(12);
        this.model = model;
        this.askForImage = askForImage;
        getStyleClass().add("trace-step");
        VBox byHand = group(title("Draw by hand"), drawingTools);
        prepare();
        getChildren().addAll(empty(), said(), image, assisted, byHand);
        var inUse = model.withoutImage()
                .or(Bindings.createBooleanBinding(() -> !model.state().get().isEmpty(), model.state()));
        show(byHand, inUse);
        show(getChildren().get(0), inUse.not());
        model.state().addListener((o, before, now) -> fill());
        fill();
    }

    private void measure() {
        model.measure();
    }

    private void turnNorth() {
        model.turnNorth();
    }

    private void assist() {
        model.assist();
    }

    private void prepare() {
        along.selectedProperty().bindBidirectional(model.alongDrawn());
        opacity.valueProperty().addListener((o, before, now) -> opacityMoved());
        opacity.valueChangingProperty().addListener((o, before, now) -> opacityMoved());
        tolerance.valueProperty().addListener((o, before, now) -> assistWith(kind.getValue(), now.doubleValue()));
        kind.getItems().setAll(AssistTool.KINDS);
        kind.setConverter(Written.as(each -> each.name().charAt(0) + each.word().substring(1)));
        kind.setAccessibleText("What it is traced as");
        kind.valueProperty().addListener((o, before, now) -> assistWith(now, tolerance.getValue()));
        kind.setMaxWidth(Double.MAX_VALUE);
        askWhy.getStyleClass().add("small");
        askWhy.setOnAction(e -> show(why, !why.isVisible()));
        show(why, false);
        Button another = open("Open another image …");
        image.getChildren()
                .setAll(
                        title("Image"),
                        name,
                        row("Opacity", opacity),
                        scale,
                        distances,
                        warning,
                        askWhy,
                        why,
                        measure,
                        north,
                        along,
                        another);
        assisted.getChildren().setAll(title("From the image"), trace, row("As", kind), row("Alike", tolerance), doubts);
    }

    private void opacityMoved() {
        if (!showing && opacity.isValueChanging()) {
            model.showOpacity(opacity.getValue());
        } else if (!showing) {
            model.setOpacity(opacity.getValue());
        }
    }

    private void assistWith(Kind as, double alike) {
        if (!showing) {
            model.assistWith(old -> new AssistTool.Settings(as, alike));
        }
    }

    private Node empty() {
        Label belongs = words("body");
        belongs.setText("Outlines are traced on an aerial image of the yard.");
        Button open = open("Open an aerial image …");
        open.getStyleClass().add("primary");
        return group(belongs, open, button("Draw without one", "Draw to scale on empty ground", model::drawWithout));
    }

    private Button open(String text) {
        return button(
                text,
                "Open a PNG, JPEG, TIFF or GeoTIFF; or drop it on the map",
                () -> askForImage.get().ifPresent(model::open));
    }

    private Node said() {
        Label said = words("warn");
        said.textProperty().bind(model.said());
        Button byScale = button("Place it by scale", "Lay the image under the drawing", model::acceptOffer);
        Button leave = button("Leave it out", "Go on without this image", model::declineOffer);
        HBox offer = new HBox(8, byScale, leave);
        show(offer, model.offering());
        VBox box = group(said, offer);
        show(box, said.textProperty().isNotEmpty());
        return box;
    }

    private void fill() {
        showing = true;
        TraceState now = model.state().get();
        show(image, now.image().isPresent());
        show(assisted, now.image().isPresent());
        now.image().ifPresent(shown -> {
            fillImage(shown);
            fillAssisted(now);
        });
        showing = false;
    }

    private void fillImage(TraceState.Image shown) {
        if (!opacity.isValueChanging()) {
            opacity.setValue(shown.opacity());
        }
        name.setText(shown.words());
        scale.setText((shown.needsScale() ? "▲ " : "") + shown.scale().line());
        mark(scale, "warn", shown.needsScale());
        mark(measure, "primary", shown.needsScale());
        distances.getChildren().clear();
        for (int i = 0; i < shown.scale().rows().size(); i++) {
            distances.getChildren().add(distance(i, shown.scale().rows().get(i)));
        }
        show(distances, !distances.getChildren().isEmpty());
        warning.setText(
                shown.scale().warning().isEmpty() ? "" : "▲ " + shown.scale().warning());
        show(askWhy, shown.why().isPresent());
        why.setText(shown.why().map(TraceStep::words).orElse(""));
        show(north, shown.canTurn());
        show(along, shown.canTakeAlong());
    }

    private static String words(Account account) {
        return account.formula() + "\n" + account.note() + "\n"
                + account.sources().get(0).citation();
    }

    private static void mark(Node node, String style, boolean now) {
        node.getStyleClass().remove(style);
        if (now) {
            node.getStyleClass().add(style);
        }
    }

    private Node distance(int position, ScaleWords.Row row) {
        Label length = new Label(row.length());
        Label residual = new Label((row.isOff() ? "▲ " : "") + row.residual());
        residual.getStyleClass().add(row.isOff() ? "warn" : "soft");
        residual.setTooltip(new Tooltip("How much longer it is on the image than you measured"));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button remove = new Button("Remove");
        remove.getStyleClass().add("small");
        remove.setAccessibleText("Remove the distance " + row.length());
        remove.setOnAction(e -> model.forget(position));
        HBox line = new HBox(8, length, gap, residual, remove);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private void fillAssisted(TraceState now) {
        AssistTool.Settings settings = model.settings();
        kind.setValue(settings.kind());
        if (!tolerance.isValueChanging()) {
            tolerance.setValue(settings.tolerance());
        }
        trace.setText(now.assist().isPresent() ? "Click on the image …" : "Trace from the image");
        doubts.setText(String.join("\n", now.doubts()));
    }

    private static VBox group(Node... nodes) {
        VBox box = new VBox(8, nodes);
        box.setFillWidth(true);
        return box;
    }

    private static Label title(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("group-title");
        return label;
    }

    private static Label words(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        label.managedProperty().bind(label.textProperty().isNotEmpty().and(label.visibleProperty()));
        return label;
    }

    private static Slider slider(String name) {
        Slider slider = new Slider(0, 1, 1);
        slider.setBlockIncrement(0.05);
        slider.setAccessibleText(name);
        slider.setTooltip(new Tooltip(name));
        HBox.setHgrow(slider, Priority.ALWAYS);
        return slider;
    }

    private static Node row(String name, Region control) {
        Label label = new Label(name);
        label.setLabelFor(control);
        label.setMinWidth(56);
        HBox.setHgrow(control, Priority.ALWAYS);
        HBox row = new HBox(8, label, control);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Button button(String text, String help, Runnable action) {
        Button button = new Button(text);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setTooltip(new Tooltip(help));
        button.setAccessibleHelp(help);
        button.setOnAction(e -> action.run());
        return button;
    }

    private static void show(Node node, boolean now) {
        node.setVisible(now);
        if (!node.managedProperty().isBound()) {
            node.setManaged(now);
        }
    }

    private static void show(Node node, ObservableValue<Boolean> when) {
        node.visibleProperty().bind(when);
        node.managedProperty().bind(when);
    }
}
