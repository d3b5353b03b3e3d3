package loamline.scene;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/** A scene in the making: marks by layer, room that is taken, and labels that still look for theirs. */
final class Sketch {
    private static final double BIT_MM = 2;

    /** Corners nearer than this on paper cannot be told apart. */
    private static final double LEAST_STEP_MM = 0.03;

    private final SceneOptions options;
    private final Map<Layer, List<Mark>> layers = new EnumMap<>(Layer.class);
    private final List<PaperRect> taken = new ArrayList<>();
    private final List<LabelPlacer.Crossable> crossable = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    Sketch(SceneOptions options) {
        this.options = options;
    }

    SceneOptions options() {
        return options;
    }

    View view() {
        return options.view();
    }

    Ink ink(Role role) {
        return options.palette().of(role);
    }

    /** The colour of a wash over the ground. */
    Ink wash(Role role) {
        return ink(role).at(options.wash());
    }

    Pen pen(Role role, double widthMm) {
        return Pen.solid(ink(role), widthMm);
    }

    /** Lets somebody draw if the layer is wanted. */
    void on(Layer layer, Consumer<Sketch> drawing) {
        if (options.layers().contains(layer)) {
            drawing.accept(this);
        }
    }

    void add(Layer layer, Mark mark) {
        layers.computeIfAbsent(layer, l -> new ArrayList<>()).add(mark);
    }

    /** Adds a path in metres; an empty one is passed over. */
    void draw(Layer layer, Path path, Paint paint) {
        if (!path.isEmpty()) {
            add(layer, new Mark.Drawn(path, paint));
        }
    }

    void draw(Layer layer, Region ground, Paint paint) {
        draw(layer, Path.of(ground.outline().thinned(view().metres(LEAST_STEP_MM))), paint);
    }

    /** Words with their middle a little way from a place. */
    void write(Layer layer, Point at, Point middleMm, Label.Line line) {
        double left = middleMm.x() - options.text().widthMm(line.words(), line.type()) / 2;
        double baseline = middleMm.y() + options.text().capHeightMm(line.type()) / 2;
        add(layer, new Mark.Words(at, Run.plain(new Point(left, baseline), line.words(), line.type(), line.ink())));
    }

    /** Keeps labels off a piece of paper round a place. */
    void block(Point at, PaperRect boxMm) {
        taken.add(onPaper(at, boxMm));
    }

    /** Lets labels cross a square round a place only at a price. */
    void avoid(Point at, double sideMm, double price) {
        PaperRect square = PaperRect.centred(new Point(0, 0), sideMm, sideMm);
        crossable.add(new LabelPlacer.Crossable(onPaper(at, square), price));
    }

    /** Lets labels cross a line only at a price a bit; a bit is {@value #BIT_MM} mm long. */
    void avoid(Polyline line, double price) {
        for (double alongM = 0; alongM < line.lengthM(); alongM += view().metres(BIT_MM)) {
            avoid(line.at(alongM), BIT_MM / 2, price);
        }
    }

    private PaperRect onPaper(Point at, PaperRect boxMm) {
        Point mm = view().onPaper(at);
        return boxMm.moved(mm.x(), mm.y());
    }

    void label(Label label) {
        labels.add(label);
    }

    /** The scene, its labels placed. */
    Scene scene() {
        on(
                Layer.LABELS,
                sketch -> new LabelPlacer(view().paper(), options.text(), taken, crossable)
                        .place(labels)
                        .forEach(this::write));
        return new Scene(view(), layers);
    }

    private void write(LabelPlacer.Placed placed) {
        Point middle = placed.room().centre();
        Point at = view().onGround(middle);
        double top = placed.room().topMm() - middle.y();
        for (Label.Line line : placed.lines()) {
            double baseline = top + Run.HALO_MM + options.text().capHeightMm(line.type());
            double left = -options.text().widthMm(line.words(), line.type()) / 2;
            Optional<Ink> halo = Optional.of(ink(Role.PANEL).at(0.85));
            add(
                    Layer.LABELS,
                    new Mark.Words(
                            at, new Run(new Point(left, baseline), line.words(), line.type(), line.ink(), halo)));
            top += Label.lineMm(line.type(), options.text());
        }
    }
}
