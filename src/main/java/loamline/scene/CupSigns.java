package loamline.scene;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.yard.Head;
import loamline.yard.Yard;

/** Cups: a small ring with the number, the reading under it; heads in doubt in a ring of their own. */
final class CupSigns {
    /** Radius of a cup's ring. */
    static final double CUP_MM = 1.75;

    private static final double LINE_MM = 0.25;
    private static final double TELLING_LINE_MM = 0.6;
    private static final double NUMBER_PT = 5.4;
    private static final double READING_PT = 6;
    private static final double READING_BELOW_MM = 1.5;
    private static final double SUSPECT_MM = 2.9;
    private static final double SUSPECT_LINE_MM = 0.7;
    private static final double SUSPECT_PT = 8;
    private static final double NUMBER_ROOM = 1.7;

    private CupSigns() {}

    static void draw(Sketch sketch, Yard yard, CupMap map) {
        Yard tested = yard.withFeatures(yard.features().stream()
                .filter(feature -> feature instanceof Head head && head.valve().equals(map.valve()))
                .toList());
        HeadSigns.throwsOf(sketch, Layer.CUPS, tested);
        cups(sketch, map.cups());
        suspects(sketch, map.heads());
    }

    static void cups(Sketch sketch, List<CupMap.Cup> cups) {
        cups.forEach(cup -> {
            Pen line = sketch.pen(cup.telling() ? Role.ERROR : Role.INK, cup.telling() ? TELLING_LINE_MM : LINE_MM);
            Path ring = Path.circle(new Point(0, 0), CUP_MM);
            sketch.add(Layer.CUPS, new Mark.Stamp(cup.at(), ring, Paint.both(sketch.ink(Role.PANEL), line)));
            number(sketch, cup);
            reading(sketch, cup);
            sketch.block(cup.at(), PaperRect.centred(new Point(0, 0), 2 * CUP_MM + LINE_MM, 2 * CUP_MM + LINE_MM));
        });
    }

    private static void number(Sketch sketch, CupMap.Cup cup) {
        Type type = Type.regular(NUMBER_PT);
        double widthMm = sketch.options().text().widthMm(cup.name(), type);
        double shrink = widthMm > 0 ? Math.min(1, NUMBER_ROOM * CUP_MM / widthMm) : 1;
        Label.Line line = new Label.Line(cup.name(), type.sized(NUMBER_PT * shrink), sketch.ink(Role.INK));
        sketch.write(Layer.CUPS, cup.at(), new Point(0, 0), line);
    }

    private static void reading(Sketch sketch, CupMap.Cup cup) {
        if (cup.reading().isEmpty()) {
            return;
        }
        Type type = Type.bold(READING_PT);
        TextMeasure text = sketch.options().text();
        double widthMm = text.widthMm(cup.reading(), type);
        Point baseline = new Point(-widthMm / 2, CUP_MM + READING_BELOW_MM + text.capHeightMm(type) / 2);
        Ink ink = sketch.ink(cup.telling() ? Role.ERROR : Role.INK);
        Optional<Ink> halo = Optional.of(sketch.ink(Role.PANEL).at(0.85));
        sketch.add(Layer.CUPS, new Mark.Words(cup.at(), new Run(baseline, cup.reading(), type, ink, halo)));
        sketch.block(
                cup.at(),
                PaperRect.centred(
                        new Point(0, CUP_MM + READING_BELOW_MM), widthMm, text.capHeightMm(type) + 2 * Run.HALO_MM));
    }

    private static void suspects(Sketch sketch, List<CupMap.Suspect> heads) {
        rings(sketch, heads, SUSPECT_MM);
        heads.forEach(head -> {
            PaperRect box = PaperRect.centred(sketch.view().onPaper(head.at()), 2 * SUSPECT_MM, 2 * SUSPECT_MM);
            Label.Line line = new Label.Line(head.words(), Type.bold(SUSPECT_PT), sketch.ink(Role.ERROR));
            PaperRect room =
                    Label.room(List.of(line), box.centre(), sketch.options().text());
            sketch.label(new Label(0, Label.oneLine(line), Places.beside(box, room), Label.Home.ANYWHERE));
        });
    }

    static void rings(Sketch sketch, List<CupMap.Suspect> heads, double radiusMm) {
        Paint line = Paint.line(sketch.pen(Role.ERROR, SUSPECT_LINE_MM));
        Path ring = Path.circle(new Point(0, 0), radiusMm);
        heads.forEach(head -> sketch.add(Layer.CUPS, new Mark.Stamp(head.at(), ring, line)));
    }
}
