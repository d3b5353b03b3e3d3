package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.findings.LogRow;
import loamline.findings.Quantity;
import loamline.findings.SoilLayer;
import loamline.geometry.Point;
import org.jspecify.annotations.Nullable;

/**
 * A core log from a table: {@code core, time, depth_cm, refusal, root_cm, thatch_mm, topsoil_cm, moisture, vwc_pct, psi,
 * wdpt_s, colour, quality, layers, note}, lengths in any unit that the header names ({@code depth_in}). {@code x_m, y_m}
 * may say where a core stood, {@code photo} may name pictures of it: files, divided by {@code ;}. Any cell but
 * {@code core} may be blank.
 *
 * <p>A row with a cell that cannot be read is left out and reported with its line; the others are still read.
 */
public final class LogFile {
    private static final double CM_PER_M = 100;
    private static final double MM_PER_M = 1000;
    private static final double CM_PER_INCH = 2.54;

    /** A probe goes no deeper, m: a larger number is a wrong unit. */
    private static final double DEEPEST_M = 2;

    /** Thicker than this is no thatch but a wrong unit, m. */
    private static final double MOST_THATCH_M = 0.3;

    private static final double MOST_PSI = 5000;
    private static final double MOST_SECONDS = 86_400;
    private static final double FARTHEST_M = 50_000;
    private static final Set<String> NOT_REFUSED = Set.of("no", "n", "none", "0", "false", "-");
    private static final Set<String> JUST_REFUSED = Set.of("yes", "y", "1", "true", "x", "refused");

    /** The column of pictures, which is written only if there are any. */
    public static final String PHOTO_NAME = "photo";

    private static final Pattern LAYER =
            Pattern.compile("\\s*(\\d+(?:[.,]\\d+)?)\\s*[-–]\\s*(\\d+(?:[.,]\\d+)?)\\s+(\\S.*?)\\s*");

    /** Rounding of depths, m: a layer may begin so much above the end of the one before. */
    private static final double JOINT_M = 1e-9;

    private static final CsvColumn<String> CORE = CsvColumn.text("core").required();
    private static final CsvColumn<String> TIME = CsvColumn.text("time");
    private static final CsvColumn<String> REFUSAL = CsvColumn.text("refusal");
    private static final CsvColumn<String> COLOUR = CsvColumn.text("colour");
    private static final CsvColumn<String> NOTE = CsvColumn.text("note");
    private static final CsvColumn<List<String>> PHOTO = CsvColumn.of(PHOTO_NAME, "names of files", LogFile::names);
    private static final CsvColumn<List<SoilLayer>> LAYERS = layers("layers", 1);
    private static final CsvColumn<List<SoilLayer>> LAYERS_CM = layers("layers_cm", 1);
    private static final CsvColumn<List<SoilLayer>> LAYERS_IN = layers("layers_in", CM_PER_INCH);
    private static final CsvColumn<Double> X = CsvColumn.number("x_m", -FARTHEST_M, FARTHEST_M);
    private static final CsvColumn<Double> Y = CsvColumn.number("y_m", -FARTHEST_M, FARTHEST_M);

    private static final Map<Quantity, CsvColumn<Double>> READINGS = readings();
    private static final List<CsvColumn<?>> COLUMNS = columns();

    /** The columns as they are always written. */
    public static final List<String> HEADER = List.of(
            "core",
            "time",
            "depth_cm",
            "refusal",
            "root_cm",
            "thatch_mm",
            "topsoil_cm",
            "moisture",
            "vwc_pct",
            "psi",
            "wdpt_s",
            "colour",
            "quality",
            "layers",
            "note");

    private final List<Problem> problems;
    private final List<LogRow> rows = new ArrayList<>();

    private LogFile(List<Problem> problems) {
        this.problems = new ArrayList<>(problems);
    }

    private static Map<Quantity, CsvColumn<Double>> readings() {
        Map<Quantity, CsvColumn<Double>> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.DEPTH, CsvColumn.length("depth"));
        columns.put(Quantity.ROOT, CsvColumn.length("root"));
        columns.put(Quantity.THATCH, CsvColumn.length("thatch"));
        columns.put(Quantity.TOPSOIL, CsvColumn.length("topsoil"));
        columns.put(
                Quantity.MOISTURE,
                CsvColumn.of("moisture", "one of " + String.join(", ", Quantity.FEELS) + ", or 1 to 5", LogFile::feel));
        columns.put(Quantity.VWC, CsvColumn.number("vwc_pct", 0, 100));
        columns.put(Quantity.HARDNESS, CsvColumn.number("psi", 0, MOST_PSI));
        columns.put(Quantity.DROP, CsvColumn.number("wdpt_s", 0, MOST_SECONDS));
        columns.put(Quantity.QUALITY, CsvColumn.number("quality", 1, 9));
        return columns;
    }

    private static List<CsvColumn<?>> columns() {
        List<CsvColumn<?>> columns = new ArrayList<>(List.of(CORE, TIME, REFUSAL, COLOUR, NOTE, PHOTO, X, Y));
        columns.addAll(List.of(LAYERS, LAYERS_CM, LAYERS_IN));
        columns.addAll(READINGS.values());
        return List.copyOf(columns);
    }

    /** Names of files in a cell, divided by {@code ;} or {@code |}. */
    private static Optional<List<String>> names(String text) {
        return Optional.of(Arrays.stream(text.split("[;|]"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList());
    }

    private static Optional<Double> feel(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        int named = Quantity.FEELS.indexOf(word.equals("damp") ? "slightly moist" : word);
        if (named >= 0) {
            return Optional.of(named + 1.0);
        }
        return word.matches("[1-5]") ? Optional.of(Double.valueOf(word)) : Optional.empty();
    }

    /** {@code 0-5 loam;5-9 sand}: depths in a unit of so many centimetres, layers divided by {@code ;} or {@code |}. */
    private static CsvColumn<List<SoilLayer>> layers(String name, double unitCm) {
        return CsvColumn.of(name, "layers such as 0-5 loam;5-9 sand", text -> {
            List<SoilLayer> layers = new ArrayList<>();
            for (String part : text.replaceFirst("[;|]\\s*$", "").split("[;|]", -1)) {
                Matcher match = LAYER.matcher(part);
                if (!match.matches()) {
                    return Optional.empty();
                }
                double from = number(match.group(1)) * unitCm / CM_PER_M;
                double to = number(match.group(2)) * unitCm / CM_PER_M;
                double above =
                        layers.isEmpty() ? 0 : layers.get(layers.size() - 1).toM();
                if (!(from < to && to <= DEEPEST_M && from >= above - JOINT_M)) {
                    return Optional.empty();
                }
                layers.add(new SoilLayer(from, to, match.group(3)));
            }
            return layers.isEmpty() ? Optional.empty() : Optional.of(List.copyOf(layers));
        });
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    /** Reads a file; the value is empty if it holds no row. */
    public static Read<List<LogRow>> read(Path file) {
        return of(CsvTable.read(file, COLUMNS));
    }

    /** Reads text as it was typed or pasted, its first line the names of the columns. */
    public static Read<List<LogRow>> parse(String text) {
        return of(CsvTable.parse(text.getBytes(StandardCharsets.UTF_8), COLUMNS));
    }

    private static Read<List<LogRow>> of(CsvTable table) {
        LogFile file = new LogFile(table.problems());
        table.rows().forEach(file::add);
        boolean none = file.rows.isEmpty();
        if (none && file.problems.stream().noneMatch(Problem::isError)) {
            file.problems.add(Problem.error("LOG_EMPTY", Where.WHOLE, "holds no row: add a line for each core"));
        }
        return new Read<>(none ? Optional.empty() : Optional.of(List.copyOf(file.rows)), file.problems);
    }

    private void add(CsvRow row) {
        Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
        READINGS.forEach((quantity, column) ->
                row.get(column).ifPresent(value -> values.put(quantity, stored(quantity, value))));
        Optional<String> tooMuch = tooMuch(values);
        if (tooMuch.isPresent()) {
            problems.add(Problem.error("LOG_IMPLAUSIBLE", row.where(), tooMuch.get()));
            return;
        }
        String time = row.get(TIME).orElse("");
        Optional<LocalDate> day = day(time);
        if (!time.isEmpty() && day.isEmpty()) {
            problems.add(Problem.warning(
                    "LOG_TIME_NO_DAY",
                    row.where(),
                    "“" + time + "” holds no day such as 2027-05-12: the row is taken to be of the newest visit"));
        }
        Optional<Point> at = row.get(X).flatMap(x -> row.get(Y).map(y -> new Point(x, y)));
        rows.add(new LogRow(
                row.need(CORE),
                time,
                day,
                values,
                row.get(REFUSAL).flatMap(LogFile::refusal),
                row.get(COLOUR).orElse(""),
                row.get(LAYERS)
                        .or(() -> row.get(LAYERS_CM))
                        .or(() -> row.get(LAYERS_IN))
                        .orElse(List.of()),
                row.get(NOTE).orElse(""),
                row.get(PHOTO).orElse(List.of()),
                at,
                OptionalInt.of(row.line()),
                row.others()));
    }

    private static double stored(Quantity quantity, double value) {
        return quantity == Quantity.HARDNESS ? value * Quantity.KPA_PER_PSI : value;
    }

    private static Optional<String> tooMuch(Map<Quantity, Double> values) {
        return values.entrySet().stream()
                .filter(reading -> reading.getKey().measure().isPresent() && reading.getKey() != Quantity.HARDNESS)
                .filter(reading ->
                        reading.getValue() > (reading.getKey() == Quantity.THATCH ? MOST_THATCH_M : DEEPEST_M))
                .map(reading -> String.format(
                        Locale.ROOT,
                        "%s of %.0f cm cannot be: is the unit in the header right?",
                        reading.getKey().title(),
                        reading.getValue() * CM_PER_M))
                .findFirst();
    }

    private static Optional<String> refusal(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        if (NOT_REFUSED.contains(word)) {
            return Optional.empty();
        }
        return Optional.of(JUST_REFUSED.contains(word) ? "refused" : text);
    }

    private static Optional<LocalDate> day(String time) {
        try {
            return time.length() < 10 ? Optional.empty() : Optional.of(LocalDate.parse(time.substring(0, 10)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Rows as {@code LOG.csv}, which {@link #parse} reads back; columns that are not known here stand at the end. */
    public static String text(List<LogRow> rows) {
        boolean placed = rows.stream().anyMatch(row -> row.at().isPresent());
        Collection<String> others = new TreeSet<>();
        rows.forEach(row -> others.addAll(row.others().keySet()));
        List<String> header = new ArrayList<>(HEADER);
        boolean pictured = rows.stream().anyMatch(row -> !row.photos().isEmpty());
        header.addAll(pictured ? List.of(PHOTO_NAME) : List.of());
        header.addAll(placed ? List.of("x_m", "y_m") : List.of());
        header.addAll(others);
        CsvText csv = new CsvText().row(header);
        rows.forEach(row -> csv.row(cells(row, pictured, placed, others)));
        return csv.toString();
    }

    private static List<@Nullable Object> cells(
            LogRow row, boolean pictured, boolean placed, Collection<String> others) {
        List<@Nullable Object> cells = new ArrayList<>();
        cells.add(row.core());
        cells.add(row.time());
        cells.add(scaled(row, Quantity.DEPTH, CM_PER_M));
        cells.add(row.refusal().orElse(null));
        cells.add(scaled(row, Quantity.ROOT, CM_PER_M));
        cells.add(scaled(row, Quantity.THATCH, MM_PER_M));
        cells.add(scaled(row, Quantity.TOPSOIL, CM_PER_M));
        Double feel = row.values().get(Quantity.MOISTURE);
        cells.add(feel == null ? null : Quantity.FEELS.get((int) Math.rint(feel) - 1));
        cells.add(scaled(row, Quantity.VWC, 1));
        cells.add(scaled(row, Quantity.HARDNESS, 1 / Quantity.KPA_PER_PSI));
        cells.add(scaled(row, Quantity.DROP, 1));
        cells.add(row.colour());
        cells.add(scaled(row, Quantity.QUALITY, 1));
        cells.add(layers(row.layers()));
        cells.add(row.note());
        if (pictured) {
            cells.add(String.join(";", row.photos()));
        }
        if (placed) {
            cells.add(row.at().map(Point::x).orElse(null));
            cells.add(row.at().map(Point::y).orElse(null));
        }
        others.forEach(name -> cells.add(row.others().get(name)));
        return cells;
    }

    /** Rounded where a change of unit leaves the ninth digit. */
    private static @Nullable Number scaled(LogRow row, Quantity quantity, double factor) {
        Double value = row.values().get(quantity);
        return value == null ? null : rounded(value * factor);
    }

    private static Number rounded(double value) {
        double digits = Math.rint(value * 1e9) / 1e9;
        if (digits == Math.rint(digits)) {
            return (long) digits;
        }
        return digits;
    }

    private static String layers(List<SoilLayer> layers) {
        return layers.stream()
                .map(layer -> JsonText.number(rounded(layer.fromM() * CM_PER_M)) + "-"
                        + JsonText.number(rounded(layer.toM() * CM_PER_M)) + " " + layer.texture())
                .reduce((a, b) -> a + ";" + b)
                .orElse("");
    }
}
