package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.account.Problem;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {
    private static final CsvColumn<String> CUP = CsvColumn.text("cup").required();
    private static final CsvColumn<Double> X = CsvColumn.number("x_m");
    private static final CsvColumn<Double> ML = CsvColumn.amount("ml").required();
    private static final CsvColumn<Double> PH = CsvColumn.number("pH", 0, 14);
    private static final CsvColumn<Double> DEPTH = CsvColumn.length("depth");
    private static final CsvColumn<LocalDate> DATE = CsvColumn.date("date");
    private static final CsvColumn<List<String>> ZONES =
            CsvColumn.of("zones", "zones parted by +", text -> Optional.of(List.of(text.split("\\+", -1))));
    private static final List<CsvColumn<?>> COLUMNS = List.of(CUP, X, ML, PH, DEPTH, DATE, ZONES);

    private static CsvTable parse(String text) {
        return CsvTable.parse(text.getBytes(StandardCharsets.UTF_8), COLUMNS);
    }

    private static List<String> lines(CsvTable table) {
        return table.problems().stream().map(p -> p.line("cups.csv")).toList();
    }

    private static List<String> codes(CsvTable table) {
        return table.problems().stream().map(Problem::code).toList();
    }

    private static void assertSound(CsvTable table) {
        assertThat(table.problems()).isEmpty();
        assertThat(table.rows()).extracting(row -> row.need(CUP)).containsExactly("c1", "c2");
        assertThat(table.rows()).extracting(row -> row.need(ML)).containsExactly(12.5, 8.0);
    }

    @Test
    void commasPartCells() {
        assertSound(parse("cup,x_m,ml\nc1,1,12.5\nc2,2,8\n"));
    }

    @Test
    void semicolonsPartCellsAndCommasAreDecimal() {
        assertSound(parse("cup;x_m;ml\r\nc1;1,0;12,5\r\nc2;2,0;8,0\r\n"));
    }

    @Test
    void tabsPartCells() {
        assertSound(parse("cup\tx_m\tml\nc1\t1\t12.5\nc2\t2\t8\n"));
    }

    @Test
    void quotedDecimalCommasAreReadBetweenCommas() {
        assertSound(parse("cup,x_m,ml\nc1,\"1,0\",\"12,5\"\nc2,2,8\n"));
    }

    @Test
    void aByteOrderMarkBlankLinesAndBlankRowsArePassedOver() {
        assertSound(parse("\uFEFF\n\ncup,ml\n\nc1,12.5\n,\nc2,8\n,,,\n\n"));
    }

    @Test
    void headersAreReadInAnyCaseOrderAndWithBlanks() {
        assertSound(parse("ML , X M,Cup\n12.5,1,c1\n8,2,c2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
    void utf16IsReadByItsMark(String charset) {
        String mark = charset.equals("UTF-16") ? "" : "\uFEFF";
        assertSound(CsvTable.parse((mark + "cup\tml\nc1\t12.5\nc2\t8\n").getBytes(Charset.forName(charset)), COLUMNS));
    }

    @Test
    void windowsTextIsReadWithAWarning() {
        CsvTable table = CsvTable.parse("cup,ml\nBüro,1\n".getBytes(Charset.forName("windows-1252")), COLUMNS);
        assertThat(table.rows()).extracting(row -> row.need(CUP)).containsExactly("Büro");
        assertThat(codes(table)).containsExactly("TEXT_NOT_UTF8");
    }

    @Test
    void quotedCellsKeepSeparatorsQuotesAndLineFeeds() {
        CsvTable table = parse("cup,ml,date\n\"a, \"\"b\"\"\",1,\n\"two\nlines\",2,\nc3,x,\n");
        assertThat(table.rows()).extracting(row -> row.need(CUP)).containsExactly("a, \"b\"", "two\nlines");
        assertThat(lines(table))
                .containsExactly("error cups.csv:5 CSV_CELL_BAD ml should be a number of 0 or more, not “x”");
    }

    @Test
    void blankCellsAreEmptyAndShortRowsAreBlankToTheirEnd() {
        CsvTable table = parse("cup,ml,x_m,date\nc1,1\nc2,2, ,\n");
        assertThat(table.problems()).isEmpty();
        assertThat(table.rows()).allSatisfy(row -> {
            assertThat(row.get(X)).isEmpty();
            assertThat(row.get(DATE)).isEmpty();
            assertThat(row.get(ZONES)).isEmpty();
        });
    }

    @Test
    void valuesComeInTheirTypes() {
        CsvRow row = parse("cup,ml,x_m,ph,date,zones\nc1,1,-2.5,6.4,2027-06-21,front+back\n")
                .rows()
                .get(0);
        assertThat(row.get(X)).contains(-2.5);
        assertThat(row.get(PH)).contains(6.4);
        assertThat(row.get(DATE)).contains(LocalDate.of(2027, 6, 21));
        assertThat(row.get(ZONES)).contains(List.of("front", "back"));
        assertThat(row.line()).isEqualTo(2);
        assertThat(row.where().line()).isEqualTo(OptionalInt.of(2));
    }

    @Test
    void aLengthIsInMetresWhateverItsHeaderSays() {
        CsvTable table = parse("cup,ml,depth_in,Depth_CM,depth_ft,depth_mm,depth_m\n"
                + "c1,1,4,,,,\nc2,1,,10,,,\nc3,1,,,0.5,,\nc4,1,,,,150,\nc5,1,,,,,0.1\n");
        assertThat(table.problems()).isEmpty();
        assertThat(table.rows())
                .extracting(row -> row.get(DEPTH).orElseThrow())
                .containsExactly(4 * 0.0254, 0.1, 0.5 * 0.3048, 0.15, 0.1);
    }

    @Test
    void aLengthGivenTwiceIsRefused() {
        CsvTable table = parse("cup,ml,depth_in,depth_cm\nc1,1,4,10\n");
        assertThat(table.rows()).isEmpty();
        assertThat(lines(table))
                .containsExactly("error cups.csv:2 CSV_CELL_TWICE depth is given as depth_cm and as depth_in:"
                        + " leave one of them empty");
    }

    @Test
    void everyBadCellOfEveryRowIsListedAndGoodRowsAreRead() {
        CsvTable table = parse("cup,ml,ph,date\nc1,1,7,2027-01-31\n,-1,15,31/1/2027\nc3,2,0,\nc4,abc,,2027-02-30\n");
        assertThat(table.rows()).extracting(row -> row.need(CUP)).containsExactly("c1", "c3");
        assertThat(lines(table))
                .containsExactly(
                        "error cups.csv:3 CSV_CELL_EMPTY cup is empty",
                        "error cups.csv:3 CSV_CELL_BAD ml should be a number of 0 or more, not “-1”",
                        "error cups.csv:3 CSV_CELL_BAD ph should be a number from 0 to 14, not “15”",
                        "error cups.csv:3 CSV_CELL_BAD date should be a date such as 2027-06-21, not “31/1/2027”",
                        "error cups.csv:5 CSV_CELL_BAD ml should be a number of 0 or more, not “abc”",
                        "error cups.csv:5 CSV_CELL_BAD date should be a date such as 2027-06-21, not “2027-02-30”");
    }

    @Test
    void aNumberThatMayMeanTwoIsRefusedWithAdvice() {
        CsvTable table = parse("cup,ml\nc1,\"1,250\"\n");
        assertThat(lines(table))
                .containsExactly("error cups.csv:2 CSV_CELL_BAD ml should be a number of 0 or more, not “1,250”:"
                        + " write it without thousands, or with a decimal point");
    }

    @Test
    void moreCellsThanColumnsAreSuspicious() {
        CsvTable table = parse("cup,ml\nc1,12,5\nc2,8,,\n");
        assertThat(table.rows()).extracting(row -> row.need(CUP)).containsExactly("c2");
        assertThat(lines(table)).singleElement().asString().startsWith("error cups.csv:2 CSV_ROW_TOO_LONG ");
    }

    @Test
    void unknownColumnsAreKeptAndReported() {
        CsvTable table = parse("Wind,cup,ml,,Wind\nW 3,c1,1,seen,again\n,c2,2,,\n");
        assertThat(table.rows().get(0).others())
                .containsExactly(
                        Map.entry("Wind", "W 3"), Map.entry("column 4", "seen"), Map.entry("column 5", "again"));
        assertThat(table.rows().get(1).others()).isEmpty();
        assertThat(codes(table)).containsExactly("CSV_COLUMN_UNKNOWN", "CSV_COLUMN_UNKNOWN", "CSV_COLUMN_UNKNOWN");
        assertThat(table.problems()).noneMatch(Problem::isError);
        assertThat(lines(table).get(0))
                .isEqualTo(
                        "info cups.csv:1 CSV_COLUMN_UNKNOWN “Wind” is no column of this table: it is kept, not used");
    }

    @Test
    void theFirstOfTwoColumnsOfOneNameCounts() {
        CsvTable table = parse("cup,ml,ML\nc1,1,2\n");
        assertThat(table.rows().get(0).need(ML)).isEqualTo(1);
        assertThat(table.rows().get(0).others()).containsExactly(Map.entry("column 3", "2"));
        assertThat(codes(table)).containsExactly("CSV_COLUMN_TWICE");
    }

    @Test
    void aMissingColumnIsSaidOnce() {
        CsvTable table = parse("cup,x_m\nc1,1\nc2,2\n");
        assertThat(table.rows()).isEmpty();
        assertThat(lines(table)).containsExactly("error cups.csv:1 CSV_COLUMN_MISSING there is no column ml");
    }

    @Test
    void aTableWithoutAHeaderIsRefused() {
        CsvTable table = parse("c1,12.5\nc2,8\n");
        assertThat(codes(table)).containsExactly("CSV_HEADER_MISSING");
        assertThat(table.rows()).isEmpty();
        assertThat(codes(parse(""))).containsExactly("CSV_EMPTY");
        assertThat(codes(parse("\uFEFF\n \n,,\n"))).containsExactly("CSV_EMPTY");
    }

    @Test
    void aHeaderAloneIsATableWithoutRows() {
        assertThat(parse("cup,ml\n")).isEqualTo(new CsvTable(List.of(), List.of()));
    }

    @Test
    void anOpenQuotationMarkCostsItsLineOnly() {
        CsvTable table = parse("cup,ml\nc1,1\n\"c2,2\nc3,3\n\nc4,x\n\"c5\",5");
        assertThat(table.rows()).extracting(CsvRow::line).contains(2, 4, 7);
        assertThat(lines(table))
                .contains(
                        "error cups.csv:3 CSV_QUOTE_OPEN a quotation mark is never closed: close it, or take it out",
                        "error cups.csv:6 CSV_CELL_BAD ml should be a number of 0 or more, not “x”");
    }

    @Test
    void columnsThatAreNotRequiredAreNotNeeded() {
        CsvRow row = parse("cup,ml\nc1,1\n").rows().get(0);
        assertThatThrownBy(() -> row.need(X)).hasMessageContaining("x_m is not required");
    }

    @Test
    void hugeAndHostileTextEndsSoonWithProblems() {
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            String manyRows = "cup,ml\n" + "c,1\n".repeat(CsvTable.MAX_ROWS + 5);
            CsvTable table = parse(manyRows);
            assertThat(table.rows()).hasSize(CsvTable.MAX_ROWS);
            assertThat(lines(table)).singleElement().asString().startsWith("error cups.csv:100002 CSV_TOO_MANY_ROWS ");
            assertThat(codes(parse("cup,ml\nc1,1\n" + ",".repeat(20_000) + "\n")))
                    .containsExactly("CSV_GIVEN_UP");
            assertThat(codes(parse("cup,ml\n" + "\"a\n".repeat(50_001)))).contains("CSV_QUOTE_OPEN");
            assertThat(codes(parse("cup,ml\nc1," + "9".repeat(1_000_000) + "\n")))
                    .containsExactly("CSV_CELL_BAD");
            assertThat(CsvTable.parse(new byte[CsvTable.MAX_BYTES + 1], COLUMNS).problems())
                    .extracting(Problem::code)
                    .containsExactly("CSV_TOO_LARGE");
            assertThat(codes(parse("cup,ml\n" + ",x\n".repeat(20_000)))).hasSize(ProblemLog.MAX_LISTED + 1);
        });
    }

    @Test
    void filesAreReadAndTheirTroublesAreProblems(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("cups.csv"), "cup,ml\nc1,12.5\nc2,8\n");
        assertSound(CsvTable.read(file, COLUMNS));
        assertThat(codes(CsvTable.read(folder.resolve("none.csv"), COLUMNS))).containsExactly("FILE_NOT_FOUND");
    }

    @Test
    void whatIsWrittenIsReadBack() {
        CsvText text = new CsvText()
                .row(List.of("cup", "ml", "x_m"))
                .row(List.of("a, \"b\"\nc", 0.1, 1e-7))
                .row(Arrays.asList("plain", 3, null));
        assertThat(text.toString()).isEqualTo("cup,ml,x_m\n\"a, \"\"b\"\"\nc\",0.1,1.0E-7\nplain,3,\n");
        CsvTable table = parse(text.toString());
        assertThat(table.rows().get(0).need(CUP)).isEqualTo("a, \"b\"\nc");
        assertThat(table.rows().get(0).get(X)).contains(1e-7);
        assertThat(table.rows().get(1).get(X)).isEmpty();
    }
}
