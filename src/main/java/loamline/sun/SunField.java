package loamline.sun;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.place.LonLat;
import loamline.raster.GridSpec;
import loamline.yard.Yard;

/** Direct sun of every cell of a grid, as means over some dates; cells are numbered as the grid has them. */
final class SunField {
    /** Of {@link #sums}. */
    private static final int MORNING = 0;

    private static final int AFTERNOON = 1;

    private static final int BEAM_MOL = 2;

    private final GridSpec grid;
    private final int days;

    /** Over all days, a number a cell: steps of sun in the morning, in the afternoon, and mol/m² of direct light. */
    private final float[][] sums;

    private double diffuseMol;
    private final double hoursPerStep;
    private final List<SunPosition> positions = new ArrayList<>();
    private final Set<Problem> problems = new LinkedHashSet<>();

    private SunField(GridSpec grid, Yard yard, LonLat place, SunRequest request) {
        this.grid = grid;
        days = request.dates().size();
        sums = new float[3][grid.size()];
        hoursPerStep = request.step().toSeconds() / 3600.0 / days;
        for (LocalDate date : request.dates()) {
            add(date, yard, place, request.step());
        }
    }

    static SunField of(GridSpec grid, Yard yard, LonLat place, SunRequest request) {
        return new SunField(grid, yard, place, request);
    }

    private void add(LocalDate date, Yard yard, LonLat place, Duration step) {
        List<SunPosition> day = SunPath.day(place, date, step);
        Casters casters = Casters.of(yard, date, place.latDeg());
        problems.addAll(casters.problems());
        if (day.isEmpty()) {
            problems.add(Problem.warning(
                    "SUN_NOT_UP", Where.WHOLE, "the sun does not rise on " + date + ": it counts with 0 hours"));
        }
        int n = day.size();
        double[] east = new double[n];
        double[] north = new double[n];
        float[][] weights = new float[3][n];
        for (int i = 0; i < n; i++) {
            SunPosition sun = day.get(i);
            east[i] = sun.shadowEastM();
            north[i] = sun.shadowNorthM();
            weights[sun.isMorning() ? MORNING : AFTERNOON][i] = 1;
            weights[BEAM_MOL][i] = (float) ClearSky.beamMol(sun.elevationDeg(), step);
            diffuseMol += ClearSky.diffuseMol(sun.elevationDeg(), step);
        }
        LightKernel.add(grid, new CasterTable(casters.casters()), east, north, weights, sums);
        positions.addAll(day);
    }

    GridSpec grid() {
        return grid;
    }

    double morningH(int cell) {
        return sums[MORNING][cell] * hoursPerStep;
    }

    double afternoonH(int cell) {
        return sums[AFTERNOON][cell] * hoursPerStep;
    }

    double hours(int cell) {
        return morningH(cell) + afternoonH(cell);
    }

    /** Light of a clear day, mol/m², the sky's in full. */
    double lightMol(int cell) {
        return (sums[BEAM_MOL][cell] + diffuseMol) / days;
    }

    /** Of all dates, in order. */
    List<SunPosition> positions() {
        return List.copyOf(positions);
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }
}
