package loamline.desk.trace;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import loamline.desk.session.Session;
import loamline.desk.tool.AssistTool;
import loamline.desk.tool.AssistTracer;
import loamline.desk.tool.NorthTool;
import loamline.desk.tool.ScaleTool;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolHost;
import loamline.files.Imagery;
import loamline.files.Read;
import loamline.yard.ImageEdits;
import loamline.yard.Yard;

/** What the Trace step shows and does. All methods are called on the screen's thread. */
public final class TraceModel {
    private static final Set<String> ENDINGS = Set.of("png", "jpg", "jpeg", "tif", "tiff");

    private final Session session;
    private final ToolHost host;
    private final AssistTracer tracer;
    private final ReadOnlyObjectWrapper<TraceState> state;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper offering = new ReadOnlyBooleanWrapper();
    private final BooleanProperty alongDrawn = new SimpleBooleanProperty(true);
    private final BooleanProperty withoutImage = new SimpleBooleanProperty();
    private Optional<Opened> offered = Optional.empty();
    private AssistTool.Settings settings = AssistTool.Settings.USUAL;

    /** An image as it was read. */
    private record Opened(Path file, Read<Imagery> read) {
        ImageOpening into(Yard yard) {
            return ImageOpening.of(yard, file.toString(), read);
        }
    }

    public TraceModel(Session session, ToolHost host, AssistTracer tracer) {
        this.session = session;
        this.host = host;
        this.tracer = tracer;
        state = new ReadOnlyObjectWrapper<>(stateNow());
        session.shown().addListener((o, before, now) -> refresh());
        session.results().addListener((o, before, now) -> refresh());
        session.units().addListener((o, before, now) -> refresh());
        host.current().addListener((o, before, now) -> refresh());
        alongDrawn.addListener((o, before, now) -> retake());
    }

    private TraceState stateNow() {
        return TraceState.of(
                session.shown().get(),
                session.results().get(),
                host.current().get(),
                session.units().get());
    }

    /** What was said of an image without a scale is over when it has one. */
    private void refresh() {
        boolean lackedScale = lacksScale();
        state.set(stateNow());
        if (lackedScale && !lacksScale() && offered.isEmpty()) {
            said.set("");
        }
    }

    private boolean lacksScale() {
        return state.get().image().filter(TraceState.Image::needsScale).isPresent();
    }

    /** A tool in hand is taken anew, so that it goes by what was just chosen. */
    private void retake() {
        Tool tool = host.current().get();
        if (tool instanceof ScaleTool) {
            measure();
        } else if (tool instanceof NorthTool) {
            turnNorth();
        }
    }

    /** Whether a file's name ends like an image's. */
    public static boolean isImage(Path file) {
        String name = String.valueOf(file.getFileName());
        return ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
    }

    /** Lays an image under the yard; what became of it is in {@link #said} and {@link #offering}. */
    public void open(Path image) {
        Path file = image.toAbsolutePath().normalize();
        say("", Optional.empty());
        session.work()
                .latest(
                        "open image",
                        "Opening " + file.getFileName(),
                        () -> new Opened(file, Imagery.read(file)),
                        this::opened);
    }

    private void opened(Opened opened) {
        ImageOpening opening = opened.into(yard());
        opening.placed().ifPresent(placed -> session.edit("place image", placed));
        say(opening.words(), opening.byScale().map(yard -> opened));
    }

    private void say(String words, Optional<Opened> offer) {
        said.set(words);
        offered = offer;
        offering.set(offer.isPresent());
    }

    /** Places the image by a scale that is then measured, as was offered. */
    void acceptOffer() {
        offered.flatMap(opened -> opened.into(yard()).byScale())
                .ifPresent(placed -> session.edit("place image", placed));
        say("The scale is not set: measure a distance that you know.", Optional.empty());
    }

    void declineOffer() {
        say("", Optional.empty());
    }

    /** Goes on without an image. */
    void drawWithout() {
        withoutImage.set(true);
    }

    void measure() {
        host.take(ScaleTool.of(alongDrawn.get()));
    }

    void forget(int position) {
        session.edit("remove known distance", ImageEdits.forgotten(yard(), position, alongDrawn.get()));
    }

    void turnNorth() {
        host.take(NorthTool.of(alongDrawn.get()));
    }

    /** Takes the assisted tool in hand. */
    public void assist() {
        host.take(AssistTool.of(tracer, settings));
    }

    /** Changes what the assisted tool goes by, now or when it is next in hand. */
    void assistWith(UnaryOperator<AssistTool.Settings> change) {
        AssistTool.Settings changed = change.apply(settings());
        settings = changed;
        if (state.get().assist().filter(inHand -> !inHand.equals(changed)).isPresent()) {
            host.send(changed);
        }
    }

    /** What the assisted tool goes by. */
    AssistTool.Settings settings() {
        return state.get().assist().orElse(settings);
    }

    /** The image as opaque as this, 0 to 1, while a slider moves. */
    void showOpacity(double opacity) {
        session.preview(withOpacity(opacity));
    }

    /** The image as opaque as this from now on. */
    void setOpacity(double opacity) {
        Yard changed = withOpacity(opacity);
        session.dropPreview();
        session.edit("set opacity", changed);
    }

    private Yard withOpacity(double opacity) {
        return yard().withBackdrop(yard().backdrop().map(image -> image.withOpacity(opacity)));
    }

    private Yard yard() {
        return session.history().get().now();
    }

    ReadOnlyObjectProperty<TraceState> state() {
        return state.getReadOnlyProperty();
    }

    /** What is to be said about the image; blank if nothing. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** Whether it is offered to place the image by scale. */
    ReadOnlyBooleanProperty offering() {
        return offering.getReadOnlyProperty();
    }

    /** Whether what is drawn goes along when the image is scaled or turned; so at first, as it was traced on it. */
    BooleanProperty alongDrawn() {
        return alongDrawn;
    }

    /** Whether somebody chose to go on without an image. */
    BooleanProperty withoutImage() {
        return withoutImage;
    }
}
