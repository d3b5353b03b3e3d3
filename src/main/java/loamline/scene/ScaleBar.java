package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/**
 * A bar of a round length: 1, 2 or 5 times a power of ten feet or metres.
 *
 * @param lengthM on the ground
 * @param lengthMm on paper
 */
public record ScaleBar(double lengthM, double lengthMm) {
    private static final double[] ROUND = {5, 2, 1};
    private static final double TICK_MM = 1.6;
    private static final double LINE_MM = 0.3;
    private static final double TEXT_GAP_MM = 0.8;

    /** The longest round bar that fits; it takes at least two fifths of the room. */
    public static ScaleBar of(View view, UnitSystem units, double longestMm) {
        double room = Measure.LENGTH.toShown(view.metres(longestMm), units);
        double power = Math.pow(10, Math.floor(Math.log10(room)));
        double length = power;
        for (double round : ROUND) {
            if (round * power <= room) {
                length = round * power;
                break;
            }
        }
        double lengthM = Measure.LENGTH.toStored(length, units);
        return new ScaleBar(lengthM, lengthM / view.metresPerMm());
    }

    /**
     * The bar with ticks at its ends and its middle, and lengths over them; a screen or a page puts it in a corner.
     *
     * @param at left end of the bar
     */
    public List<Mark> marks(Point at, SceneOptions options) {
        Ink ink = options.palette().of(Role.INK);
        double half = lengthMm / 2;
        Path bar = Path.joined(List.of(
                Path.open(
                        new Point(0, -TICK_MM), new Point(0, 0), new Point(lengthMm, 0), new Point(lengthMm, -TICK_MM)),
                Path.open(new Point(half, -TICK_MM / 2), new Point(half, 0))));
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Stamp(at, bar, Paint.line(Pen.solid(ink, LINE_MM))));
        Type type = Type.regular(7);
        for (int i = 0; i <= 2; i++) {
            String number = Formatting.editable(Measure.LENGTH, i * lengthM / 2, options.units())
                    .number();
            double left = i * half - options.text().widthMm(number, type) / 2;
            String words = i == 2 ? number + " " + Measure.LENGTH.symbol(options.units()) : number;
            Point baseline = new Point(left, -TICK_MM - TEXT_GAP_MM);
            marks.add(new Mark.Words(at, Run.plain(baseline, words, type, ink)));
        }
        return List.copyOf(marks);
    }
}
