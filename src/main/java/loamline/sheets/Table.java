package loamline.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import loamline.scene.Role;
import loamline.scene.Type;

/**
 * Rows under column heads, ruled with hairlines.
 *
 * @param fields the columns
 * @param rowMm least height of a row
 * @param ruledUpright whether columns are divided by lines, as they should be where they are filled in by hand
 */
record Table(Blocks blocks, List<Field> fields, double rowMm, boolean ruledUpright) {
    /** Least height of a row that is filled in by hand. */
    static final double BY_HAND_MM = 9.2;

    private static final double PADDING_MM = 1.6;
    /** Room over and under the words of a row together. */
    private static final double LEAD_MM = 0.8;

    Table {
        fields = List.copyOf(fields);
    }

    /**
     * A column.
     *
     * @param share of the table's width; shares are taken relative to their sum
     * @param side where its words stand
     * @param type how its words are set
     * @param role and in what ink
     */
    record Field(String head, double share, Blocks.Side side, Type type, Role role) {
        static Field words(String head, double share) {
            return new Field(head, share, Blocks.Side.LEFT, Blocks.SECOND, Role.INK);
        }

        static Field number(String head, double share) {
            return new Field(head, share, Blocks.Side.RIGHT, Blocks.SECOND, Role.INK);
        }

        Field strong() {
            return new Field(head, share, side, Type.bold(type.sizePt()), role);
        }

        Field sized(double sizePt) {
            return new Field(head, share, side, type.sized(sizePt), role);
        }

        Field soft() {
            return new Field(head, share, side, Blocks.SMALL, Role.SOFT);
        }
    }

    /** The heads of the columns over a line. */
    Block head() {
        double heightMm = blocks.lineMm(Blocks.SMALL_STRONG) + 1.6;
        return new Blocks.Drawn(widthMm -> heightMm, (canvas, room) -> {
            List<PaperRect> cells = cells(room);
            for (int i = 0; i < fields.size(); i++) {
                Field field = fields.get(i);
                Block words = blocks.line(field.head(), Blocks.SMALL_STRONG, Role.SOFT, field.side());
                words.draw(canvas, middle(cells.get(i), words));
            }
            blocks.rule(
                    canvas,
                    new Point(room.leftMm(), room.bottomMm()),
                    new Point(room.rightMm(), room.bottomMm()),
                    Role.INK);
        });
    }

    /** A row of words, one for each column; words that are missing leave the cell blank. */
    Block row(List<String> words) {
        return rowOf(IntStream.range(0, Math.min(words.size(), fields.size()))
                .mapToObj(i -> cell(fields.get(i), words.get(i)))
                .toList());
    }

    /** A row of blocks, one for each column. */
    Block rowOf(List<Block> cells) {
        return new Blocks.Drawn(
                widthMm -> heightMm(cells, new PaperRect(0, 0, widthMm, 0)),
                (canvas, room) -> draw(canvas, room, cells));
    }

    /** Words as they stand in a column. */
    Block cell(Field field, String words) {
        return field.side() == Blocks.Side.LEFT
                ? blocks.paragraph(words, field.type(), field.role())
                : blocks.line(words, field.type(), field.role(), field.side());
    }

    private double heightMm(List<Block> cells, PaperRect room) {
        List<PaperRect> columns = cells(room);
        return IntStream.range(0, cells.size())
                .mapToDouble(i -> cells.get(i).heightMm(columns.get(i).widthMm()) + LEAD_MM)
                .reduce(rowMm, Math::max);
    }

    private void draw(Canvas canvas, PaperRect room, List<Block> cells) {
        List<PaperRect> columns = cells(room);
        for (int i = 0; i < cells.size(); i++) {
            cells.get(i).draw(canvas, middle(columns.get(i), cells.get(i)));
        }
        for (int i = 1; i < columns.size() && ruledUpright; i++) {
            double x = columns.get(i).leftMm() - PADDING_MM;
            blocks.rule(canvas, new Point(x, room.topMm()), new Point(x, room.bottomMm()), Role.LINE);
        }
        Point from = new Point(room.leftMm(), room.bottomMm());
        Role line = ruledUpright ? Role.PAVING_EDGE : Role.LINE;
        blocks.rule(canvas, from, new Point(room.rightMm(), room.bottomMm()), line);
    }

    /** The room of a block in the middle of a cell's height. */
    private static PaperRect middle(PaperRect cell, Block block) {
        double heightMm = block.heightMm(cell.widthMm());
        return new PaperRect(cell.leftMm(), cell.topMm() + (cell.heightMm() - heightMm) / 2, cell.widthMm(), heightMm);
    }

    /** The columns without their padding, the outer ones flush with the table. */
    private List<PaperRect> cells(PaperRect room) {
        double sum = fields.stream().mapToDouble(Field::share).sum();
        List<PaperRect> cells = new ArrayList<>();
        double left = room.leftMm();
        for (int i = 0; i < fields.size(); i++) {
            double right = left + room.widthMm() * fields.get(i).share() / sum;
            double from = i == 0 ? left : left + PADDING_MM;
            double to = i == fields.size() - 1 ? right : right - PADDING_MM;
            cells.add(new PaperRect(from, room.topMm(), to - from, room.heightMm()));
            left = right;
        }
        return cells;
    }
}
