package loamline.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;

/**
 * Text cut into records of stripped cells; blank records left out.
 *
 * <p>A quotation mark that is never closed would swallow the rest of the file. It costs its own line only: reading
 * goes on at the next.
 */
final class CsvRecords {
    /** A cell that is sure to stand alone on the last line, unless a quotation mark before it is open. */
    private static final String END = "\u0000end of table\u0000";

    /** Open quotation marks after which the text is given up. */
    private static final int MAX_OPEN = 100;

    /**
     * @param line where it starts, counted from 1
     * @param cells at least one of them not empty
     */
    record Row(int line, List<String> cells) {}

    private final char separator;
    private final List<Row> rows = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    private CsvRecords(char separator) {
        this.separator = separator;
    }

    static CsvRecords of(String text, char separator) {
        CsvRecords records = new CsvRecords(separator);
        records.readAll(text);
        return records;
    }

    private void readAll(String text) {
        String rest = text;
        int linesBefore = 0;
        for (int open = 0; open <= MAX_OPEN; open++) {
            OptionalInt openLine = read(rest, linesBefore);
            if (openLine.isEmpty()) {
                return;
            }
            problems.add(Problem.error(
                    "CSV_QUOTE_OPEN",
                    Where.line(openLine.getAsInt()),
                    "a quotation mark is never closed: close it, or take it out"));
            rest = rest.lines().skip(openLine.getAsInt() - linesBefore).collect(Collectors.joining("\n"));
            linesBefore = openLine.getAsInt();
        }
        problems.add(Problem.error(
                "CSV_GIVEN_UP", Where.line(linesBefore + 1), "too many open quotation marks: the rest is not read"));
    }

    /** Reads up to the end, or to a quotation mark that is open there; gives the line on which its record starts. */
    private OptionalInt read(String text, int linesBefore) {
        CsvRecord last = null;
        try {
            for (CsvRecord record : reader().ofCsvRecord(text + "\n" + END)) {
                if (last != null) {
                    add(last, linesBefore);
                }
                last = record;
            }
        } catch (CsvParseException e) {
            int line = linesBefore + (last == null ? 1 : (int) last.getStartingLineNumber() + 1);
            problems.add(
                    Problem.error("CSV_GIVEN_UP", Where.line(line), "too many cells in a row: the rest is not read"));
            return OptionalInt.empty();
        }
        return last == null || last.getFields().equals(List.of(END))
                ? OptionalInt.empty()
                : OptionalInt.of(linesBefore + (int) last.getStartingLineNumber());
    }

    private CsvReader.CsvReaderBuilder reader() {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .allowExtraCharsAfterClosingQuote(true);
    }

    private void add(CsvRecord record, int linesBefore) {
        List<String> cells = record.getFields().stream().map(String::strip).toList();
        if (!cells.stream().allMatch(String::isEmpty)) {
            rows.add(new Row(linesBefore + (int) record.getStartingLineNumber(), cells));
        }
    }

    List<Row> rows() {
        return rows;
    }

    List<Problem> problems() {
        return problems;
    }
}
