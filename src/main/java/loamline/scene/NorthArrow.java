package loamline.scene;

import java.util.List;
import loamline.geometry.Point;

/** Points up the page: north is always up. */
public final class NorthArrow {
    /** Height of the arrow and its letter, mm. */
    public static final double HEIGHT_MM = 10;

    private static final double LETTER_PT = 8;

    private NorthArrow() {}

    /**
     * The arrow with its letter below.
     *
     * @param at middle of the foot
     */
    public static List<Mark> marks(Point at, SceneOptions options) {
        Ink ink = options.palette().of(Role.INK);
        Type type = Type.bold(LETTER_PT);
        Path west = Path.closed(new Point(0, -HEIGHT_MM), new Point(-1.8, -3.2), new Point(0, -4.2));
        Path east = Path.closed(new Point(0, -HEIGHT_MM), new Point(1.8, -3.2), new Point(0, -4.2));
        Pen line = Pen.solid(ink, 0.2);
        Point letter = new Point(-options.text().widthMm("N", type) / 2, 0);
        return List.of(
                new Mark.Stamp(at, west, Paint.both(ink, line)),
                new Mark.Stamp(at, east, Paint.both(options.palette().of(Role.PANEL), line)),
                new Mark.Words(at, Run.plain(letter, "N", type, ink)));
    }
}
