package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.geometry.Shape;
import loamline.yard.KeepAway;
import loamline.yard.Trouble;
import loamline.yard.Yard;

/** Spots: keep-away ones dashed with a small cross, trouble spots with a wavy outline and their word. */
final class SpotSigns {
    private static final double LINE_MM = 0.3;
    private static final double WASH_OPACITY = 0.07;
    private static final double CROSS_HALF_MM = 0.9;
    private static final double WAVE_MM = 3.2;
    private static final double WAVE_HEIGHT_MM = 0.38;
    private static final int FEWEST_WAVES = 6;
    private static final int POINTS_A_WAVE = 12;
    private static final double CROSS_PRICE = 0.4;
    private static final double LINE_PRICE = 0.1;
    /** A word inside its spot is liked less than one beside it. */
    private static final double INSIDE_PRICE = 0.15;

    private static final int RANK = 1;
    private static final double WORD_PT = 8;

    private SpotSigns() {}

    static void keepAways(Sketch sketch, Yard yard) {
        yard.all(KeepAway.class).forEach(spot -> {
            Region ground = Region.around(spot.place(), spot.radiusM());
            Pen dashes = Pen.dashed(sketch.ink(Role.WARN), LINE_MM, 1.3, 0.8);
            sketch.draw(Layer.SPOTS, ground, Paint.both(sketch.ink(Role.WARN).at(WASH_OPACITY), dashes));
            middle(spot.place()).ifPresent(at -> {
                sketch.add(Layer.SPOTS, new Mark.Stamp(at, cross(), Paint.line(sketch.pen(Role.WARN, LINE_MM))));
                sketch.avoid(at, 3 * CROSS_HALF_MM, CROSS_PRICE);
            });
            if (spot.place() instanceof Polyline line) {
                sketch.avoid(line, LINE_PRICE);
            }
            word(sketch, spot.reason(), Role.WARN, ground);
        });
    }

    private static Optional<Point> middle(Shape place) {
        if (place instanceof Point p) {
            return Optional.of(p);
        }
        return place instanceof Polyline line
                ? Optional.of(line.at(line.lengthM() / 2))
                : Places.middle(Region.of((Outline) place));
    }

    private static Path cross() {
        double h = CROSS_HALF_MM;
        return Path.joined(
                List.of(Path.open(new Point(-h, -h), new Point(h, h)), Path.open(new Point(-h, h), new Point(h, -h))));
    }

    static void troubles(Sketch sketch, Yard yard) {
        yard.all(Trouble.class).forEach(spot -> {
            Region ground = Region.of(spot.outline());
            List<Path> rings = ground.outline()
                    .rings()
                    .map(ring -> wavy(ring, sketch.view()))
                    .toList();
            sketch.draw(
                    Layer.SPOTS,
                    Path.joined(rings),
                    Paint.both(sketch.ink(Role.ERROR).at(WASH_OPACITY), sketch.pen(Role.ERROR, LINE_MM)));
            word(sketch, spot.note(), Role.ERROR, ground);
        });
    }

    /** A ring that swings a little to both sides of the one given, a whole number of times. */
    private static Path wavy(List<Point> ring, View view) {
        List<Point> closed = new ArrayList<>(ring);
        closed.add(ring.get(0));
        Polyline line = new Polyline(closed);
        double lengthM = line.lengthM();
        int waves = (int) Math.max(FEWEST_WAVES, Math.round(lengthM / view.metres(WAVE_MM)));
        double stepM = lengthM / (waves * POINTS_A_WAVE);
        Point[] swung = new Point[waves * POINTS_A_WAVE];
        for (int i = 0; i < swung.length; i++) {
            double alongM = i * stepM;
            double swing = view.metres(WAVE_HEIGHT_MM) * Math.sin(2 * Math.PI * i / POINTS_A_WAVE);
            Point before = line.at((alongM - 3 * stepM + lengthM) % lengthM);
            Point left = Heading.from(before, line.at((alongM + 3 * stepM) % lengthM))
                    .left();
            swung[i] = line.at(alongM).plus(swing * left.x(), swing * left.y());
        }
        return Path.closed(swung);
    }

    private static void word(Sketch sketch, String words, Role role, Region ground) {
        Optional<Box> box = ground.box();
        if (words.isBlank() || box.isEmpty()) {
            return;
        }
        Label.Line line = new Label.Line(words, Type.regular(WORD_PT), sketch.ink(role));
        Label.Line small = new Label.Line(words, Type.regular(6.5), sketch.ink(role));
        View view = sketch.view();
        Point corner = view.onPaper(new Point(box.get().minX(), box.get().maxY()));
        PaperRect round = new PaperRect(
                corner.x(),
                corner.y(),
                box.get().widthM() / view.metresPerMm(),
                box.get().heightM() / view.metresPerMm());
        PaperRect room = Label.room(List.of(line), corner, sketch.options().text());
        List<Label.Form> forms = List.of(new Label.Form(List.of(line), 0), new Label.Form(List.of(small), 0.3));
        List<Label.Place> places = new ArrayList<>(Places.beside(round, room));
        Places.on(ground, view)
                .forEach(place -> places.add(new Label.Place(place.middle(), place.price() + INSIDE_PRICE)));
        sketch.label(new Label(RANK, forms, places, Label.Home.ANYWHERE));
    }
}
