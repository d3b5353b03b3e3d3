package loamline.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.water.cups.Cup;

/**
 * Cup readings from a table: {@code cup, x_m, y_m, ml, throat_cm2, minutes}, or {@code lon, lat} in the place of {@code
 * x_m, y_m}.
 *
 * <p>A row that is no reading is left out and reported with its line, all that is wrong with it at once. A row without a
 * name is named by its number among the rows. Where both places are given the metres count.
 */
public final class ReadingsFile {
    /** Farther off than this a cup stands in no yard, m. */
    private static final double FARTHEST_M = 50_000;

    private static final CsvColumn<String> CUP = CsvColumn.text("cup");
    private static final CsvColumn<Double> X = CsvColumn.number("x_m", -FARTHEST_M, FARTHEST_M);
    private static final CsvColumn<Double> Y = CsvColumn.number("y_m", -FARTHEST_M, FARTHEST_M);
    private static final CsvColumn<Double> LON = CsvColumn.number("lon", -180, 180);
    private static final CsvColumn<Double> LAT = CsvColumn.number("lat", -90, 90);
    private static final CsvColumn<Double> ML = CsvColumn.amount("ml").required();
    private static final CsvColumn<Double> THROAT =
            CsvColumn.amount("throat_cm2").required();
    private static final CsvColumn<Double> MINUTES = CsvColumn.amount("minutes").required();
    private static final List<CsvColumn<?>> COLUMNS = List.of(CUP, X, Y, LON, LAT, ML, THROAT, MINUTES);

    private final Frame frame;
    private final Optional<Projection> earth;
    private final List<Problem> problems;
    private final List<Cup> cups = new ArrayList<>();

    private ReadingsFile(Frame frame, List<Problem> problems) {
        this.frame = frame;
        this.earth = frame.origin().map(Projection::new);
        this.problems = new ArrayList<>(problems);
    }

    /** Reads a file; the value is empty if it holds no reading. */
    public static Read<List<Cup>> read(Path file, Frame frame) {
        return of(CsvTable.read(file, COLUMNS), frame);
    }

    /** Reads text as it was typed or pasted, its first line the names of the columns. */
    public static Read<List<Cup>> parse(String text, Frame frame) {
        return of(CsvTable.parse(text.getBytes(StandardCharsets.UTF_8), COLUMNS), frame);
    }

    private static Read<List<Cup>> of(CsvTable table, Frame frame) {
        ReadingsFile file = new ReadingsFile(frame, table.problems());
        for (int i = 0; i < table.rows().size(); i++) {
            file.add(table.rows().get(i), Integer.toString(i + 1));
        }
        boolean none = file.cups.isEmpty();
        if (none && file.problems.stream().noneMatch(Problem::isError)) {
            file.problems.add(Problem.error("READINGS_NONE", Where.WHOLE, "holds no reading: add a line for each cup"));
        }
        return new Read<>(none ? Optional.empty() : Optional.of(List.copyOf(file.cups)), file.problems);
    }

    private void add(CsvRow row, String number) {
        Optional<Point> at = place(row);
        boolean open = positive(row, THROAT);
        boolean ran = positive(row, MINUTES);
        if (at.isPresent() && open && ran) {
            cups.add(new Cup(
                    row.get(CUP).orElse(number),
                    at.get(),
                    row.need(ML),
                    row.need(THROAT),
                    row.need(MINUTES),
                    OptionalInt.of(row.line())));
        }
    }

    private boolean positive(CsvRow row, CsvColumn<Double> column) {
        if (row.need(column) > 0) {
            return true;
        }
        refuse(
                row,
                "READING_ZERO",
                column.name() + " is 0: a reading needs a cup with an opening and a valve that ran");
        return false;
    }

    private Optional<Point> place(CsvRow row) {
        if (row.get(X).isPresent() && row.get(Y).isPresent()) {
            return Optional.of(new Point(row.need(X), row.need(Y)));
        }
        if (row.get(LON).isEmpty() || row.get(LAT).isEmpty()) {
            refuse(row, "READING_NO_PLACE", "the cup has no place: give x_m and y_m, or lon and lat");
            return Optional.empty();
        }
        if (frame.origin().isEmpty()) {
            refuse(
                    row,
                    "READING_NO_FRAME",
                    "the yard is not tied to the earth: give x_m and y_m instead of lon and lat");
            return Optional.empty();
        }
        LonLat place = new LonLat(row.need(LON), row.need(LAT));
        if (metresOff(place, frame.origin().get()) > FARTHEST_M) {
            refuse(row, "READING_FAR_AWAY", "the cup stands far from the yard: are lon and lat exchanged?");
            return Optional.empty();
        }
        return earth.map(plane -> plane.toYard(place));
    }

    /** Roughly: the plane itself is good near the yard only. */
    private static double metresOff(LonLat place, LonLat origin) {
        double north = place.latDeg() - origin.latDeg();
        double east = LonLat.wrapped(place.lonDeg() - origin.lonDeg()) * Math.cos(Math.toRadians(origin.latDeg()));
        return EarthPlace.M_PER_DEG * Math.hypot(north, east);
    }

    private void refuse(CsvRow row, String code, String message) {
        problems.add(Problem.error(code, row.where(), message));
    }
}
