package loamline.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import loamline.account.Problem;

/**
 * A table as words in cells, whatever they mean: what is typed into before it is understood. Immutable; every change
 * gives another. All rows are as wide as the header; a row of blank cells at the end is dropped.
 *
 * @param header the names of the columns
 * @param rows the cells of each row, none of them null
 */
public record RawTable(List<String> header, List<List<String>> rows) {
    public RawTable {
        header = List.copyOf(header);
        int width = header.size();
        List<List<String>> even = new ArrayList<>();
        for (List<String> row : rows) {
            List<String> cells = new ArrayList<>(row.subList(0, Math.min(width, row.size())));
            cells.addAll(Collections.nCopies(width - cells.size(), ""));
            even.add(List.copyOf(cells));
        }
        while (!even.isEmpty() && even.get(even.size() - 1).stream().allMatch(String::isEmpty)) {
            even.remove(even.size() - 1);
        }
        rows = List.copyOf(even);
    }

    /** A table of no rows. */
    public static RawTable empty(List<String> header) {
        return new RawTable(header, List.of());
    }

    /** Cuts text into cells; the first line that is not blank is the header. Blank lines are passed over. */
    public static RawTable of(String text) {
        List<CsvRecords.Row> records =
                CsvRecords.of(text, CsvParser.separatorOf(text)).rows();
        int width = records.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        if (records.isEmpty()) {
            return empty(List.of());
        }
        List<String> header = new ArrayList<>(records.get(0).cells());
        header.addAll(Collections.nCopies(width - header.size(), ""));
        return new RawTable(
                header,
                records.subList(1, records.size()).stream()
                        .map(CsvRecords.Row::cells)
                        .toList());
    }

    /** The text of a file as it is attached to a yard; why not, if it cannot be. */
    public static Read<String> text(Path file) {
        try {
            Optional<Problem> trouble = FileTrouble.beforeReading(file, CsvTable.MAX_BYTES);
            if (trouble.isPresent()) {
                return new Read<>(Optional.empty(), List.of(trouble.get()));
            }
            DecodedText text = DecodedText.of(Files.readAllBytes(file));
            return new Read<>(Optional.of(text.text()), text.problem().stream().toList());
        } catch (IOException e) {
            return new Read<>(Optional.empty(), List.of(FileTrouble.of(e)));
        }
    }

    /** As comma-separated text (RFC 4180, with line feeds). */
    public String text() {
        CsvText text = new CsvText().row(header);
        rows.forEach(text::row);
        return text.toString();
    }

    /** What stands in a cell; nothing beyond the last row. */
    public String cell(int row, int column) {
        return row < rows.size() ? rows.get(row).get(column) : "";
    }

    /** With another text in a cell, which may lie beyond the last row. */
    public RawTable with(int row, int column, String text) {
        return pasted(row, column, List.of(List.of(text)));
    }

    /** With a block of cells put in from a cell on; what would lie right of the last column is left out. */
    public RawTable pasted(int row, int column, List<List<String>> block) {
        List<List<String>> changed = new ArrayList<>();
        for (int r = 0; r < Math.max(rows.size(), row + block.size()); r++) {
            List<String> cells =
                    new ArrayList<>(r < rows.size() ? rows.get(r) : Collections.nCopies(header.size(), ""));
            List<String> put = r >= row && r < row + block.size() ? block.get(r - row) : List.of();
            for (int i = 0; i < put.size() && column + i < cells.size(); i++) {
                cells.set(column + i, put.get(i).strip());
            }
            changed.add(cells);
        }
        return new RawTable(header, changed);
    }

    /** With a column of blank cells at the end; the same if there is one of that name, in any case. */
    public RawTable withColumn(String name) {
        if (column(name).isPresent()) {
            return this;
        }
        List<String> wider = new ArrayList<>(header);
        wider.add(name);
        return new RawTable(wider, rows);
    }

    /** Where a column stands, by its name in any case. */
    public OptionalInt column(String name) {
        return IntStream.range(0, header.size())
                .filter(i -> header.get(i).strip().equalsIgnoreCase(name))
                .findFirst();
    }

    /** Without a row; the same if there is no such row. */
    public RawTable without(int row) {
        List<List<String>> changed = new ArrayList<>(rows);
        if (row < changed.size()) {
            changed.remove(row);
        }
        return new RawTable(header, changed);
    }

    /** Cells as spreadsheets copy them, between tabs and line ends. */
    public static List<List<String>> block(String pasted) {
        return pasted.lines().map(line -> List.of(line.split("\t", -1))).toList();
    }
}
