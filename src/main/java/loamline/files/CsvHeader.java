package loamline.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.files.CsvRecords.Row;

/** The names over a table's columns, and how its rows are read under them. */
final class CsvHeader {
    /** As much of a cell as a message quotes. */
    private static final int EXCERPT_CHARS = 40;

    private final List<CsvColumn<?>> columns;
    private final Set<String> known;

    /** By position; no name twice. */
    private final List<String> names = new ArrayList<>();

    CsvHeader(List<CsvColumn<?>> columns) {
        this.columns = columns;
        this.known =
                columns.stream().flatMap(column -> column.headers().stream()).collect(Collectors.toSet());
    }

    /** Takes the names from a row; false if no table can be read under them. All that is odd is logged. */
    boolean take(Row row, ProblemLog log) {
        Where where = Where.line(row.line());
        if (row.cells().stream().map(CsvColumn::inHeader).noneMatch(known::contains)) {
            log.add(Problem.error(
                    "CSV_HEADER_MISSING",
                    where,
                    "the first line should name the columns: "
                            + columns.stream().map(CsvColumn::name).collect(Collectors.joining(", "))));
            return false;
        }
        row.cells().forEach(cell -> names.add(nameFor(cell, where, log)));
        List<CsvColumn<?>> missing = columns.stream()
                .filter(column ->
                        column.isRequired() && column.headers().stream().noneMatch(names::contains))
                .toList();
        missing.forEach(column -> log.add(Problem.error(
                "CSV_COLUMN_MISSING", where, "there is no column " + String.join(" or ", column.headers()))));
        return missing.isEmpty();
    }

    private String nameFor(String cell, Where where, ProblemLog log) {
        String wanted = CsvColumn.inHeader(cell);
        String position = "column " + (names.size() + 1);
        if (known.contains(wanted) && !names.contains(wanted)) {
            return wanted;
        }
        if (known.contains(wanted)) {
            log.add(Problem.warning(
                    "CSV_COLUMN_TWICE", where, position + " is named " + wanted + " too: it is kept, not used"));
            return position;
        }
        String name = cell.isEmpty() || names.contains(cell) ? position : cell;
        log.add(Problem.info(
                "CSV_COLUMN_UNKNOWN",
                where,
                "“" + excerpt(name) + "” is no column of this table: it is kept, not used"));
        return name;
    }

    /** A row under these names; empty, with every reason logged, if one of its cells cannot be read. */
    Optional<CsvRow> read(Row row, NumberStyle style, ProblemLog log) {
        Map<String, String> cells = new LinkedHashMap<>();
        Map<String, String> others = new LinkedHashMap<>();
        List<Problem> wrong = new ArrayList<>();
        Where where = Where.line(row.line());
        for (int i = 0; i < row.cells().size(); i++) {
            String text = row.cells().get(i);
            if (!text.isEmpty() && i < names.size()) {
                (known.contains(names.get(i)) ? cells : others).put(names.get(i), text);
            } else if (!text.isEmpty()) {
                wrong.add(Problem.error(
                        "CSV_ROW_TOO_LONG",
                        where,
                        "there are more cells than columns, the first of them “" + excerpt(text)
                                + "”: is a decimal comma or a text with a comma in it not in quotation marks?"));
                break;
            }
        }
        CsvRow read = new CsvRow(row.line(), cells, others, style);
        columns.forEach(column -> check(read, column, style, wrong));
        wrong.forEach(log::add);
        return wrong.isEmpty() ? Optional.of(read) : Optional.empty();
    }

    private static void check(CsvRow row, CsvColumn<?> column, NumberStyle style, List<Problem> wrong) {
        List<String> filled = row.filled(column);
        if (filled.isEmpty() && column.isRequired()) {
            wrong.add(Problem.error("CSV_CELL_EMPTY", row.where(), column.name() + " is empty"));
        }
        if (filled.size() > 1) {
            wrong.add(Problem.error(
                    "CSV_CELL_TWICE",
                    row.where(),
                    column.name() + " is given as " + String.join(" and as ", filled) + ": leave one of them empty"));
        }
        for (String header : filled) {
            if (row.read(column, header).isEmpty()) {
                String text = row.text(header);
                String advice = style.isUnclear(text) ? ": write it without thousands, or with a decimal point" : "";
                wrong.add(Problem.error(
                        "CSV_CELL_BAD",
                        row.where(),
                        header + " should be " + column.expects() + ", not “" + excerpt(text) + "”" + advice));
            }
        }
    }

    private static String excerpt(String text) {
        return text.length() <= EXCERPT_CHARS ? text : text.substring(0, EXCERPT_CHARS) + "…";
    }
}
