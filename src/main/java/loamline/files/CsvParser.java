package loamline.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.files.CsvRecords.Row;

/** Makes one {@link CsvTable}. */
final class CsvParser {
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    private final List<CsvColumn<?>> columns;
    private final ProblemLog log = new ProblemLog();

    CsvParser(List<CsvColumn<?>> columns) {
        this.columns = columns;
    }

    CsvTable parse(byte[] content) {
        if (content.length > CsvTable.MAX_BYTES) {
            error(
                    "CSV_TOO_LARGE",
                    Where.WHOLE,
                    "has more than " + (CsvTable.MAX_BYTES >> 20) + " MB: cut it into parts");
            return new CsvTable(List.of(), log.problems());
        }
        DecodedText text = DecodedText.of(content);
        text.problem().ifPresent(log::add);
        char separator = separatorOf(text.text());
        CsvRecords records = CsvRecords.of(text.text(), separator);
        records.problems().forEach(log::add);
        return new CsvTable(rows(records.rows(), separator), log.problems());
    }

    /** Whatever occurs most often in the first line that is not blank; in it, only names and separators stand. */
    static char separatorOf(String text) {
        String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        return SEPARATORS.stream()
                .max(Comparator.comparingLong(
                        separator -> header.chars().filter(c -> c == separator).count()))
                .orElseThrow();
    }

    private List<CsvRow> rows(List<Row> records, char separator) {
        if (records.isEmpty()) {
            error("CSV_EMPTY", Where.WHOLE, "is empty: the first line should name its columns");
            return List.of();
        }
        CsvHeader header = new CsvHeader(columns);
        if (!header.take(records.get(0), log)) {
            return List.of();
        }
        List<Row> body = records.subList(1, Math.min(records.size(), CsvTable.MAX_ROWS + 1));
        NumberStyle style = NumberStyle.of(body.stream().flatMap(row -> row.cells().stream()), separator);
        List<CsvRow> sound = new ArrayList<>();
        body.forEach(row -> header.read(row, style, log).ifPresent(sound::add));
        if (body.size() < records.size() - 1) {
            error(
                    "CSV_TOO_MANY_ROWS",
                    Where.line(records.get(body.size() + 1).line()),
                    "has more than " + CsvTable.MAX_ROWS + " rows, and the rest is not read: cut it into parts");
        }
        return sound;
    }

    private void error(String code, Where where, String message) {
        log.add(Problem.error(code, where, message));
    }
}
