package loamline.sheets;

import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.Type;

/** A number at the head of a page, with what it is over it and what it means under it. */
record Tile(Blocks blocks) {
    /** Height of a row of tiles. */
    static final double HEIGHT_MM = 10.6;

    /** Room between two tiles. */
    static final double GAP_MM = 4;

    private static final Type LABEL = Type.regular(6.8);
    private static final Type VALUE = Type.bold(10.5);

    Block of(String label, String value, String under) {
        return blocks.barred(Role.ACCENT, new Blocks.Drawn(widthMm -> HEIGHT_MM, (canvas, room) -> {
            write(canvas, room, 2.2, label, LABEL, Role.SOFT);
            write(canvas, room, 6.6, value, VALUE, Role.INK);
            write(canvas, room, 10.1, under, LABEL, Role.SOFT);
        }));
    }

    private void write(Canvas canvas, PaperRect room, double baseline, String words, Type type, Role role) {
        Typesetter.Fitted fitted =
                Typesetter.onOneLine(words, type, 0.75 * type.sizePt(), room.widthMm(), blocks.text());
        Point at = room.corner().plus(0, baseline);
        canvas.write(Run.plain(at, fitted.words(), fitted.type(), blocks.ink(role)));
    }
}
