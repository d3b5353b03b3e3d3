package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.Paint;
import loamline.scene.Palette;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Role;
import loamline.scene.Run;
import loamline.scene.TextMeasure;
import loamline.scene.Type;

/** Makes the parts that pages are put together from, in one hand. */
record Blocks(TextMeasure text, Palette palette) {
    static final Type BODY = Type.regular(9);
    static final Type STRONG = Type.bold(9);
    static final Type SECOND = Type.regular(8);
    static final Type HEAD = Type.bold(11);
    static final Type SMALL = Type.regular(7);
    static final Type SMALL_STRONG = Type.bold(7);
    static final double HAIRLINE_MM = 0.2;
    private static final double CORNER_MM = 1.6;
    /** Control points of a quarter circle, as a share of the way to the corner. */
    private static final double ROUND = 4 / 3.0 * (Math.sqrt(2) - 1);
    /** Distance from baseline to baseline, in sizes of the type. */
    private static final double LINE_EMS = 1.36;

    Ink ink(Role role) {
        return palette.of(role);
    }

    Pen hairline() {
        return Pen.solid(ink(Role.LINE), HAIRLINE_MM);
    }

    double lineMm(Type type) {
        return LINE_EMS * type.sizeMm();
    }

    /** Words broken into lines. */
    Block paragraph(String words, Type type, Role role) {
        Lines lines = new Lines(words, type, text);
        return new Drawn(widthMm -> lineMm(type) * lines.at(widthMm).size(), (canvas, room) -> {
            double baseline = room.topMm() + (lineMm(type) + text.capHeightMm(type)) / 2;
            for (String line : lines.at(room.widthMm())) {
                canvas.write(Run.plain(new Point(room.leftMm(), baseline), line, type, ink(role)));
                baseline += lineMm(type);
            }
        });
    }

    /** Words broken for a width, kept for the next who asks: a page asks several times for a height before it draws. */
    private static final class Lines {
        private final String words;
        private final Type type;
        private final TextMeasure text;
        private double keptForMm = Double.NaN;
        private List<String> kept = List.of();

        Lines(String words, Type type, TextMeasure text) {
            this.words = words;
            this.type = type;
            this.text = text;
        }

        List<String> at(double widthMm) {
            if (keptForMm != widthMm) {
                kept = Typesetter.onLines(words, type, widthMm, text);
                keptForMm = widthMm;
            }
            return kept;
        }
    }

    /** Words on one line, made smaller where they must be. */
    Block line(String words, Type type, Role role, Side side) {
        return new Drawn(widthMm -> lineMm(type), (canvas, room) -> {
            Typesetter.Fitted fitted = Typesetter.onOneLine(words, type, 0.7 * type.sizePt(), room.widthMm(), text);
            double slack = room.widthMm() - text.widthMm(fitted.words(), fitted.type());
            double baseline = room.topMm() + (lineMm(type) + text.capHeightMm(type)) / 2;
            Point at = new Point(room.leftMm() + side.share() * slack, baseline);
            canvas.write(Run.plain(at, fitted.words(), fitted.type(), ink(role)));
        });
    }

    /** Where on its line something stands. */
    enum Side {
        LEFT(0),
        MIDDLE(0.5),
        RIGHT(1);

        private final double share;

        Side(double share) {
            this.share = share;
        }

        double share() {
            return share;
        }
    }

    /** Words to be filled in: the words and a line to the end. */
    Block blank(String words, Type type) {
        return new Drawn(widthMm -> 1.5 * lineMm(type), (canvas, room) -> {
            double baseline = room.bottomMm() - 0.3 * lineMm(type);
            canvas.write(Run.plain(new Point(room.leftMm(), baseline), words, type, ink(Role.SOFT)));
            double from = room.leftMm() + text.widthMm(words, type) + 1.5;
            rule(canvas, new Point(from, baseline + 0.6), new Point(room.rightMm(), baseline + 0.6), Role.SOFT);
        });
    }

    void rule(Canvas canvas, Point from, Point to, Role role) {
        canvas.draw(Path.open(from, to), Paint.line(Pen.solid(ink(role), HAIRLINE_MM)));
    }

    /** Blocks one below the other. */
    static Block stack(double gapMm, List<? extends Block> blocks) {
        return new Drawn(
                widthMm -> gapMm * Math.max(0, blocks.size() - 1)
                        + blocks.stream().mapToDouble(b -> b.heightMm(widthMm)).sum(),
                (canvas, room) -> {
                    double top = room.topMm();
                    for (Block block : blocks) {
                        double heightMm = block.heightMm(room.widthMm());
                        block.draw(canvas, new PaperRect(room.leftMm(), top, room.widthMm(), heightMm));
                        top += heightMm + gapMm;
                    }
                });
    }

    /** Blocks side by side, all of one width. */
    static Block row(double gapMm, List<? extends Block> blocks) {
        ToDoubleFunction<Double> each = widthMm -> (widthMm - gapMm * (blocks.size() - 1)) / blocks.size();
        return new Drawn(
                widthMm -> blocks.stream()
                        .mapToDouble(b -> b.heightMm(each.applyAsDouble(widthMm)))
                        .max()
                        .orElse(0),
                (canvas, room) -> {
                    double widthMm = each.applyAsDouble(room.widthMm());
                    for (int i = 0; i < blocks.size(); i++) {
                        double left = room.leftMm() + i * (widthMm + gapMm);
                        blocks.get(i).draw(canvas, new PaperRect(left, room.topMm(), widthMm, room.heightMm()));
                    }
                });
    }

    /** A block with a bar of colour at its left. */
    Block barred(Role role, Block inside) {
        return new Drawn(widthMm -> inside.heightMm(widthMm - 2.6), (canvas, room) -> {
            canvas.draw(new PaperRect(room.leftMm(), room.topMm(), 0.6, room.heightMm()).path(), Paint.fill(ink(role)));
            inside.draw(
                    canvas, new PaperRect(room.leftMm() + 2.6, room.topMm(), room.widthMm() - 2.6, room.heightMm()));
        });
    }

    /** A block in a frame. */
    static Block boxed(Paint frame, double paddingMm, Block inside) {
        return new Drawn(widthMm -> inside.heightMm(widthMm - 2 * paddingMm) + 2 * paddingMm, (canvas, room) -> {
            canvas.draw(rounded(room), frame);
            inside.draw(canvas, room.grown(-paddingMm));
        });
    }

    private static Path rounded(PaperRect room) {
        List<Point> corners = room.corners();
        List<Path.Step> steps = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point corner = corners.get(i);
            Point before = corners.get((i + 3) % 4);
            Point after = corners.get((i + 1) % 4);
            Point from = corner.towards(before, CORNER_MM / corner.distanceTo(before));
            Point to = corner.towards(after, CORNER_MM / corner.distanceTo(after));
            steps.add(i == 0 ? new Path.Move(from) : new Path.Line(from));
            steps.add(new Path.Curve(from.towards(corner, ROUND), to.towards(corner, ROUND), to));
        }
        steps.add(new Path.Close());
        return new Path(steps);
    }

    /** Words behind a mark in the margin, such as a number; later lines hang under the first. */
    Block hanging(String mark, double indentMm, Block words, Type type) {
        return new Drawn(widthMm -> words.heightMm(widthMm - indentMm), (canvas, room) -> {
            line(mark, type, Role.SOFT, Side.LEFT)
                    .draw(canvas, new PaperRect(room.leftMm(), room.topMm(), indentMm, lineMm(type)));
            words.draw(
                    canvas,
                    new PaperRect(room.leftMm() + indentMm, room.topMm(), room.widthMm() - indentMm, room.heightMm()));
        });
    }

    /** Empty lines to write on, as many as fit. */
    Block writingLines() {
        return new Drawn(widthMm -> 0, (canvas, room) -> {
            for (double y = Table.BY_HAND_MM; y <= room.heightMm() - 4; y += Table.BY_HAND_MM) {
                Point from = room.corner().plus(0, y);
                rule(canvas, from, from.plus(room.widthMm(), 0), Role.PAVING_EDGE);
            }
        });
    }

    /** A caution: what to do, in the colour and the frame of a warning. */
    Block caution(String words) {
        Pen frame = Pen.solid(ink(Role.WARN), 0.3);
        return boxed(Paint.both(ink(Role.WARN).at(0.05), frame), 2.6, paragraph(words, SECOND, Role.WARN));
    }

    /** A block of two functions. */
    record Drawn(Height height, Drawing drawing) implements Block {
        interface Height {
            double at(double widthMm);
        }

        interface Drawing {
            void in(Canvas canvas, PaperRect room);
        }

        @Override
        public double heightMm(double widthMm) {
            return height.at(widthMm);
        }

        @Override
        public void draw(Canvas canvas, PaperRect room) {
            drawing.in(canvas, room);
        }
    }
}
