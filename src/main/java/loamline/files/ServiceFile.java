package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.season.Visit;

/**
 * What another company puts down, a visit a row: {@code
 * date,product,n,p2o5,k2o,slow_n_pct,kg,area_m2,rate_g_m2_n,zones}. Nothing must be there; what cannot be worked out from
 * what is, is asked for and never guessed. Zones are parted by {@code +} or {@code |}; blank means everywhere.
 *
 * @param visits in the order of the rows
 * @param problems of the text, the header and the rows
 */
public record ServiceFile(List<Visit> visits, List<Problem> problems) {
    private static final CsvColumn<LocalDate> DATE = CsvColumn.date("date");
    private static final CsvColumn<String> PRODUCT = CsvColumn.text("product");
    private static final CsvColumn<Double> N = CsvColumn.number("n", 0, 100);
    private static final CsvColumn<Double> P2O5 = CsvColumn.number("p2o5", 0, 100);
    private static final CsvColumn<Double> K2O = CsvColumn.number("k2o", 0, 100);
    private static final CsvColumn<Double> SLOW = CsvColumn.number("slow_n_pct", 0, 100);
    private static final CsvColumn<Double> KG = CsvColumn.amount("kg");
    private static final CsvColumn<Double> AREA = CsvColumn.amount("area_m2");
    private static final CsvColumn<Double> RATE = CsvColumn.amount("rate_g_m2_n");
    private static final CsvColumn<List<String>> ZONES = LabFile.zonesColumn();
    private static final List<CsvColumn<?>> COLUMNS = List.of(DATE, PRODUCT, N, P2O5, K2O, SLOW, KG, AREA, RATE, ZONES);

    public ServiceFile {
        visits = List.copyOf(visits);
        problems = List.copyOf(problems);
    }

    /** Reads a file; every failure is among the problems. */
    public static ServiceFile read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted. */
    public static ServiceFile parse(String text) {
        return parse(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads the content of a file. */
    public static ServiceFile parse(byte[] content) {
        return of(CsvTable.parse(content, COLUMNS));
    }

    private static ServiceFile of(CsvTable table) {
        return new ServiceFile(table.rows().stream().map(ServiceFile::visit).toList(), table.problems());
    }

    private static Visit visit(CsvRow row) {
        return new Visit(
                row.get(DATE),
                row.get(PRODUCT).orElse(""),
                row.get(ZONES).orElse(List.of()),
                new Visit.Percents(number(row, N), number(row, P2O5), number(row, K2O)),
                number(row, SLOW),
                number(row, KG),
                number(row, AREA),
                number(row, RATE),
                row.line());
    }

    private static OptionalDouble number(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
