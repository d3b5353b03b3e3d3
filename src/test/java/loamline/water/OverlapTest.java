package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.raster.GridSpec;
import loamline.yard.Profile;
import loamline.yard.Profile.Measured;
import loamline.yard.Profile.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Layouts that repeat for ever. The table is derived by summing the profiles over lattices with cells of 301 by 301
 * (numpy); points follow by arithmetic; the published example is von Bernuth & Mecham, "Defining the Run Time
 * Multiplier", Irrigation Association conference paper.
 */
class OverlapTest {
    private static final int CELLS = 301;
    private static final double RADIUS_M = 10;
    private static final double ROW = Math.sqrt(3) / 2;

    /** One cell of a repeating layout. */
    private record Lattice(GridSpec grid, List<SprinklerHead> heads, double[] rates) {
        static Lattice square(Profile profile, double spacingM) {
            return of(profile, spacingM, spacingM, 0, CELLS, CELLS);
        }

        /** Two rows of triangles: the second is shifted by half. */
        static Lattice triangle(Profile profile, double spacingM) {
            return of(profile, spacingM, ROW * spacingM, spacingM / 2, CELLS, (int) Math.round(2 * ROW * CELLS));
        }

        static Lattice of(Profile profile, double alongM, double rowsM, double shiftM, int columns, int rows) {
            GridSpec grid = new GridSpec(0, 0, alongM / columns, columns, rows);
            int reach = (int) Math.ceil(RADIUS_M / Math.min(alongM, rowsM)) + 3;
            List<SprinklerHead> heads = new ArrayList<>();
            for (int i = -reach; i <= reach; i++) {
                for (int j = -reach; j <= reach; j++) {
                    Point at = new Point(i * alongM + Math.floorMod(j, 2) * shiftM, j * rowsM);
                    heads.add(Heads.alone(new HeadPattern(
                            at, RADIUS_M, Arc.of(0, 360), RadialProfile.of(profile), Math.PI * 100 / 60)));
                }
            }
            double[] rates = new double[grid.size()];
            RateField.of(grid, heads).addTo(rates);
            return new Lattice(grid, heads, rates);
        }

        Uniformity even() {
            return Uniformity.of(rates).orElseThrow();
        }

        /**
         * The scheduling coefficient with windows that run over into the next cell of the layout. As in the table, 301
         * by 301 places are looked at whatever the cell's shape, so windows have that shape too.
         */
        OptionalDouble coefficient(double share) {
            double[] places = grid.rows() == CELLS ? rates : places();
            int columns = 2 * CELLS;
            double[] again = new double[4 * places.length];
            Arrays.setAll(again, i -> places[i / columns % CELLS * CELLS + i % columns % CELLS]);
            double least = DriestWindow.least(again, columns, columns, DriestWindow.side(places.length, share))
                    .orElseThrow();
            return least < 1e-9 ? OptionalDouble.empty() : OptionalDouble.of(even().mean() / least);
        }

        private double[] places() {
            double heightM = grid.rows() * grid.cellM() / CELLS;
            double[] places = new double[CELLS * CELLS];
            for (SprinklerHead head : heads) {
                if (Window.of(grid, head.pattern()).isEmpty()) {
                    continue;
                }
                for (int i = 0; i < places.length; i++) {
                    places[i] += head.pattern().rateMmH((i % CELLS + 0.5) * grid.cellM(), (i / CELLS + 0.5) * heightM);
                }
            }
            return places;
        }
    }

    private static Profile profile(String name) {
        return switch (name) {
            case "flat" -> new Measured(List.of(1.0, 1.0, 1.0, 2 / 3.0, 1 / 3.0, 0.0));
            case "donut" -> Named.RING;
            default -> Named.valueOf(name.toUpperCase(java.util.Locale.ROOT));
        };
    }

    private static void check(Lattice lattice, double points, double cu, double duLq, double duLh) {
        assertThat(100 * lattice.even().cu()).as("CU").isCloseTo(cu, within(points));
        assertThat(100 * lattice.even().duLq()).as("DU low quarter").isCloseTo(duLq, within(points));
        assertThat(100 * lattice.even().duLh()).as("DU low half").isCloseTo(duLh, within(points));
    }

    private static void checkWindows(Lattice lattice, double sc1, double sc5) {
        assertThat(lattice.coefficient(0.01).orElse(0)).as("SC 1 %").isCloseTo(sc1, within(0.02 * sc1));
        assertThat(lattice.coefficient(0.05).orElse(0)).as("SC 5 %").isCloseTo(sc5, within(0.02 * sc5));
    }

    @ParameterizedTest
    @CsvSource({
        "cone, 40, 97.6, 97.2, 97.7, 1.04, 1.03",
        "cone, 50, 96.4, 95.0, 96.4, 1.07, 1.05",
        "cone, 55, 97.4, 95.6, 97.4, 1.08, 1.05",
        "cone, 65, 83.3, 70.8, 83.6, 1.94, 1.83",
        "cone, 70, 76.0, 58.1, 76.3, 6.23, 3.36",
        "parabola, 50, 90.3, 85.9, 90.5, 1.43, 1.31",
        "ellipse, 50, 85.5, 79.8, 85.7, 1.48, 1.31",
        "flat, 50, 90.8, 83.3, 91.0, 1.51, 1.39",
        "donut, 50, 76.8, 61.9, 76.8, 3.26, 2.43"
    })
    void squareLayoutsOverlapAsDerived(
            String profile, double spacingPct, double cu, double duLq, double duLh, double sc1, double sc5) {
        Lattice lattice = Lattice.square(profile(profile), spacingPct / 50 * RADIUS_M);
        check(lattice, 0.3, cu, duLq, duLh);
        checkWindows(lattice, sc1, sc5);
    }

    @ParameterizedTest
    @CsvSource({
        "cone, 40, 96.5, 96.1, 96.9, 1.04, 1.04",
        "cone, 45, 98.6, 97.9, 98.6, 1.03, 1.02",
        "cone, 50, 96.5, 93.6, 96.8, 1.16, 1.10",
        "cone, 55, 95.3, 92.4, 95.3, 1.11, 1.10",
        "cone, 65, 94.7, 93.9, 95.4, 1.07, 1.05",
        "cone, 80, 70.6, 62.6, 72.1, 2.03, 1.63",
        "parabola, 50, 91.8, 84.5, 92.5, 1.52, 1.30",
        "ellipse, 50, 93.5, 88.4, 93.5, 1.41, 1.20",
        "donut, 50, 79.6, 63.7, 80.3, 3.00, 1.99"
    })
    void equilateralLayoutsOverlapAsDerived(
            String profile, double spacingPct, double cu, double duLq, double duLh, double sc1, double sc5) {
        Lattice lattice = Lattice.triangle(profile(profile), spacingPct / 50 * RADIUS_M);
        check(lattice, 0.3, cu, duLq, duLh);
        checkWindows(lattice, sc1, sc5);
    }

    /** The jump at the rim of the uniform profile makes these depend on the grid: a point either way. */
    @Test
    void uniformProfilesOverlapAsDerived() {
        check(Lattice.square(Named.UNIFORM, RADIUS_M), 1, 82.8, 73.4, 84.4);
        check(Lattice.triangle(Named.UNIFORM, RADIUS_M), 1, 87.1, 82.7, 89.7);
        checkWindows(Lattice.square(Named.UNIFORM, RADIUS_M), 1.57, 1.50);
        checkWindows(Lattice.triangle(Named.UNIFORM, RADIUS_M), 1.21, 1.18);
    }

    @Test
    void conesTooFarApartLeaveADryHoleAtSmallWindows() {
        Lattice lattice = Lattice.square(Named.CONE, 1.6 * RADIUS_M);
        check(lattice, 0.3, 58.7, 34.6, 59.1);
        assertThat(lattice.even().minRatio()).isZero();
        assertThat(lattice.coefficient(0.01)).isEmpty();
        assertThat(lattice.coefficient(0.05).orElseThrow()).isBetween(22.0, 23.0);
    }

    /** Peak 1, so that the scale is 3 / mean; the mean of the lattice is π/3. */
    @Test
    void conesOneRadiusApartGiveTheSumsOfTheirGeometry() {
        double peak = 3;
        List<HeadPattern> corners = Stream.of(new Point(0, 0), new Point(10, 0), new Point(0, 10), new Point(10, 10))
                .map(p ->
                        new HeadPattern(p, RADIUS_M, Arc.of(0, 360), RadialProfile.of(Named.CONE), Math.PI * 100 / 60))
                .toList();
        for (double x = 0; x <= 10; x += 0.37) {
            double on = corners.get(0).rateMmH(x, 0) + corners.get(1).rateMmH(x, 0);
            assertThat(on / peak).isCloseTo(1, within(1e-9));
        }
        double middle = corners.stream().mapToDouble(h -> h.rateMmH(5, 5)).sum();
        assertThat(middle / peak).isCloseTo(1.17157, within(5e-6));
        assertThat(corners.stream().mapToDouble(h -> h.rateMmH(5, 0)).sum() / peak)
                .isCloseTo(1.0, within(1e-9));
        Lattice lattice = Lattice.square(Named.CONE, RADIUS_M);
        assertThat(lattice.even().mean() / peak).isCloseTo(Math.PI / 3, within(1e-4));
        double lowest = corners.stream()
                        .mapToDouble(h -> h.rateMmH(5, 10 - Math.sqrt(75)))
                        .sum()
                / peak;
        assertThat(lowest).as("on the rims of the two across").isCloseTo(0.9648, within(1e-4));
        assertThat(lattice.even().min() / peak).isBetween(lowest, lowest + 1e-3);
    }

    /** Mean times area of a cell is the flow of one head, whatever profile and layout. */
    @Test
    void everyLatticeHoldsOneHeadACell() {
        for (Named profile : Named.values()) {
            for (double spacingM : new double[] {7, 10, 13.3}) {
                double mean = Lattice.square(profile, spacingM).even().mean();
                assertThat(mean * spacingM * spacingM / (Math.PI * 100))
                        .as(profile + " " + spacingM)
                        .isCloseTo(1, within(RateKernel.FLOW_ACCURACY));
            }
        }
    }

    @Test
    void quarterHeadsInTheCornersRainLikeTheEndlessSquare() {
        Lattice lattice = Lattice.square(Named.CONE, RADIUS_M);
        List<SprinklerHead> quarters = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Point corner = new Point(i == 0 || i == 1 ? 0 : 10, i == 0 || i == 3 ? 0 : 10);
            quarters.add(Heads.alone(new HeadPattern(
                    corner, RADIUS_M, Arc.of(90 * i, 90), RadialProfile.of(Named.CONE), Math.PI * 25 / 60)));
        }
        double[] inside = new double[lattice.grid().size()];
        RateField.of(lattice.grid(), quarters).addTo(inside);
        for (int i = 0; i < inside.length; i++) {
            assertThat(inside[i]).isCloseTo(lattice.rates()[i], within(1e-9));
        }
    }

    /** Spaced 50 % by 70 % of the diameter; relative depth 10 at a head. */
    @Test
    void theExampleOfVonBernuthAndMechamComesOutAsPublished() {
        Lattice lattice = Lattice.of(Named.CONE, RADIUS_M, 1.4 * RADIUS_M, 0, 401, 561);
        double[] relative =
                DoubleStream.of(lattice.rates()).map(r -> 10 * r / 3).toArray();
        Uniformity u = Uniformity.of(relative).orElseThrow();
        assertThat(u.cu()).as("published").isCloseTo(0.805, within(0.015));
        assertThat(u.duLh()).as("published").isCloseTo(0.810, within(0.015));
        assertThat(u.duLq()).as("published").isCloseTo(0.772, within(0.03));
        assertThat(u.mean()).as("10 (π/3) / 1.4").isCloseTo(7.480, within(0.003));
        assertThat(u.cu()).as("fine grid").isCloseTo(0.799, within(0.003));
        assertThat(u.duLq()).as("fine grid").isCloseTo(0.747, within(0.003));
        assertThat(u.duLh()).as("fine grid").isCloseTo(0.800, within(0.003));
        assertThat(u.min()).as("fine grid").isCloseTo(4.88, within(0.005));
    }
}
