package loamline.sheets;

import java.util.List;
import java.util.function.Function;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.scene.Role;
import loamline.scene.Type;

/**
 * A column in the making, of parts under headings: tables, lists, doubts, formulas and sources. A part that holds nothing is
 * left out.
 *
 * @param gapMm above each part
 * @param rowMm least height of a table's row
 */
record Sections(Blocks blocks, Column column, double gapMm, double rowMm) {
    /** Size of type where words are many. */
    static final double DENSE_PT = 7.5;

    private static final double UNDER_HEADING_MM = 0.6;
    private static final double BULLET_MM = 3;

    Block heading(String words) {
        return blocks.paragraph(words, Blocks.HEAD, Role.INK);
    }

    /** Anything under a heading. */
    void part(String title, List<Block> things) {
        if (!things.isEmpty()) {
            column.add(gapMm, heading(title), things);
        }
    }

    /** A table, a row a thing. */
    <T> void table(String title, List<Table.Field> fields, List<T> things, Function<T, List<String>> words) {
        if (!things.isEmpty()) {
            Table table = new Table(blocks, fields, rowMm, false);
            column.add(
                    gapMm,
                    Blocks.stack(UNDER_HEADING_MM, List.of(heading(title), table.head())),
                    things.stream().map(words).map(table::row).toList());
        }
    }

    void bullets(String title, List<String> lines) {
        part(
                title,
                lines.stream()
                        .map(line -> blocks.hanging(
                                "·", BULLET_MM, blocks.paragraph(line, Blocks.SECOND, Role.INK), Blocks.SECOND))
                        .toList());
    }

    /** Problems that a reader should know of. */
    void doubts(List<Problem> problems) {
        part(
                "Worth knowing",
                problems.stream()
                        .filter(problem -> problem.severity() != Severity.INFO)
                        .map(problem -> blocks.paragraph(
                                problem.severity().word() + ": " + problem.message(), Blocks.SECOND, Role.WARN))
                        .toList());
    }

    void sources(Citations citations) {
        part("Sources", citations.lines(blocks));
    }

    /** The column of a formula. */
    static Table.Field formula(double widthMm) {
        return new Table.Field("formula", widthMm, Blocks.Side.LEFT, Type.oblique(DENSE_PT), Role.INK);
    }
}
