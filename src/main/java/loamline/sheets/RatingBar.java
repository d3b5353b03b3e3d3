package loamline.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import loamline.geometry.Point;
import loamline.reference.SoilRange.Band;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.Type;
import loamline.soil.Rating.Standing;

/**
 * A value among the classes of its guideline: a field a class, all of one width, and a pointer at the value.
 *
 * <p>The class that the guideline aims at is framed, so that it is told without colour too.
 */
record RatingBar(Blocks blocks, Standing standing) implements Block {
    private static final double BAR_MM = 3.2;
    private static final double POINTER_MM = 1.7;
    private static final double HEIGHT_MM = 8.4;
    private static final Type LIMITS = Type.regular(6);
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    @Override
    public double heightMm(double widthMm) {
        return HEIGHT_MM;
    }

    @Override
    public void draw(Canvas canvas, PaperRect room) {
        List<Band> bands = standing.range().bands();
        double each = room.widthMm() / bands.size();
        double top = room.topMm() + POINTER_MM + 0.3;
        for (int i = 0; i < bands.size(); i++) {
            PaperRect field = new PaperRect(room.leftMm() + i * each, top, each, BAR_MM);
            canvas.draw(field.path(), Paint.both(fill(bands.get(i)), Pen.solid(blocks.ink(Role.PAPER), 0.3)));
            if (i > 0) {
                write(canvas, field, limit(bands.get(i - 1), bands.get(i)));
            }
        }
        for (int i = 0; i < bands.size(); i++) {
            if (bands.get(i).level() == 0) {
                PaperRect field = new PaperRect(room.leftMm() + i * each, top, each, BAR_MM);
                canvas.draw(field.path(), Paint.line(Pen.solid(blocks.ink(Role.ACCENT), 0.5)));
            }
        }
        pointer(canvas, new Point(room.leftMm() + position() * each, top + BAR_MM));
    }

    private Ink fill(Band band) {
        if (band.level() == 0) {
            return blocks.ink(Role.TURF);
        }
        Role role = band.level() < 0 ? Role.SELECT : Role.INFO;
        return blocks.ink(role).at(Math.min(0.6, 0.16 + 0.14 * Math.abs(band.level())));
    }

    /** The limit as guidelines print it: the rounder of the two numbers, else where their aim begins or ends. */
    private static String limit(Band below, Band above) {
        String end = text(below.high().orElse(above.low()));
        String begin = text(above.low());
        boolean aimEnds = end.length() == begin.length() && above.level() > 0;
        return aimEnds || end.length() < begin.length() ? end : begin;
    }

    private static String text(double limit) {
        return new BigDecimal(limit, FOUR_DIGITS).stripTrailingZeros().toPlainString();
    }

    private void write(Canvas canvas, PaperRect field, String words) {
        double half = blocks.text().widthMm(words, LIMITS) / 2;
        Point at = new Point(field.leftMm() - half, field.bottomMm() + 2.5);
        canvas.write(Run.plain(at, words, LIMITS, blocks.ink(Role.SOFT)));
    }

    /** Where the value stands, in fields from the left. */
    private double position() {
        List<Band> bands = standing.range().bands();
        int at = bands.indexOf(standing.band());
        double low = standing.band().low();
        double high = standing.band().high().orElse(Math.max(2 * low, 1.15 * standing.value()));
        double share = high > low ? (standing.value() - low) / (high - low) : 0.5;
        return at + Math.max(0.04, Math.min(0.96, share));
    }

    private void pointer(Canvas canvas, Point foot) {
        Point tip = foot.plus(0, -BAR_MM + 0.2);
        Path triangle = Path.closed(tip, tip.plus(-1.25, -POINTER_MM), tip.plus(1.25, -POINTER_MM));
        canvas.draw(triangle, Paint.fill(blocks.ink(Role.INK)));
        canvas.draw(Path.open(tip, foot), Paint.line(Pen.solid(blocks.ink(Role.INK), 0.45)));
    }
}
