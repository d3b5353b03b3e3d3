package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.soil.Element;
import loamline.soil.LabValue;

/**
 * Laboratory values as a table, a value a row: {@code
 * sample,zones,element,value,unit,extractant,depth_cm,method,lab,date}, and where they are known {@code
 * bulk_density_g_cm3} and {@code scoop_density_g_cm3}. Zones are parted by {@code +} or {@code |}; {@code depth_in} will do
 * for {@code depth_cm}.
 *
 * <p>Whether a value means anything is asked in {@code soil}; here it only has to be a value. A row that is none is left
 * out and reported with its line.
 *
 * @param values in the order of the rows
 * @param problems of the text, the header and the rows
 */
public record LabFile(List<LabValue> values, List<Problem> problems) {
    private static final CsvColumn<String> SAMPLE = CsvColumn.text("sample").required();
    private static final CsvColumn<List<String>> ZONES = zonesColumn();
    private static final CsvColumn<Element> ELEMENT = CsvColumn.of(
                    "element",
                    "one of "
                            + Arrays.stream(Element.values()).map(Element::key).collect(Collectors.joining(" ")),
                    Element::of)
            .required();
    private static final CsvColumn<Double> VALUE = CsvColumn.number("value").required();
    private static final CsvColumn<String> UNIT = CsvColumn.text("unit");
    private static final CsvColumn<String> EXTRACTANT = CsvColumn.text("extractant");
    private static final CsvColumn<Double> DEPTH = CsvColumn.length("depth");
    private static final CsvColumn<String> METHOD = CsvColumn.text("method");
    private static final CsvColumn<String> LAB = CsvColumn.text("lab");
    private static final CsvColumn<LocalDate> DATE = CsvColumn.date("date");
    /** Peat to concrete, g/cm³; common practice, no source. */
    private static final CsvColumn<Double> BULK_DENSITY = CsvColumn.number("bulk_density_g_cm3", 0.05, 2.5);

    private static final CsvColumn<Double> SCOOP_DENSITY = CsvColumn.number("scoop_density_g_cm3", 0.05, 2.5);

    private static final List<CsvColumn<?>> COLUMNS = List.of(
            SAMPLE, ZONES, ELEMENT, VALUE, UNIT, EXTRACTANT, DEPTH, METHOD, LAB, DATE, BULK_DENSITY, SCOOP_DENSITY);

    public LabFile {
        values = List.copyOf(values);
        problems = List.copyOf(problems);
    }

    /** Reads a file; every failure is among the problems. */
    public static LabFile read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted. */
    public static LabFile parse(String text) {
        return parse(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads the content of a file. */
    public static LabFile parse(byte[] content) {
        return of(CsvTable.parse(content, COLUMNS));
    }

    private static LabFile of(CsvTable table) {
        return new LabFile(table.rows().stream().map(LabFile::value).toList(), table.problems());
    }

    /** Names of zones in one cell. */
    static CsvColumn<List<String>> zonesColumn() {
        return CsvColumn.of("zones", "names parted by +", text -> Optional.of(zones(text)));
    }

    private static List<String> zones(String text) {
        return Arrays.stream(text.split("[+|]"))
                .map(String::strip)
                .filter(zone -> !zone.isEmpty())
                .toList();
    }

    private static LabValue value(CsvRow row) {
        Element element = row.need(ELEMENT);
        LabValue.Made made = LabValue.Made.of(
                        element,
                        row.get(UNIT).orElse(""),
                        row.get(EXTRACTANT).orElse(""),
                        row.get(METHOD).orElse(""),
                        number(row, DEPTH))
                .with(number(row, BULK_DENSITY), number(row, SCOOP_DENSITY));
        return new LabValue(
                row.need(SAMPLE),
                row.get(ZONES).orElse(List.of()),
                element,
                row.need(VALUE),
                made,
                row.get(LAB).orElse(""),
                row.get(DATE),
                row.line());
    }

    private static OptionalDouble number(CsvRow row, CsvColumn<Double> column) {
        return row.get(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
