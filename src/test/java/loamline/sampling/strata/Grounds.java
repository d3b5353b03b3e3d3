package loamline.sampling.strata;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Ground to test on. */
final class Grounds {
    /** Side of the reference cells, m: a hundred to a side of one metre. */
    static final double CELL_M = 0.01;

    private Grounds() {}

    interface Shape {
        boolean has(int column, int row);
    }

    /** The cells of a shape within columns and rows 0 to size - 1, of side {@link #CELL_M}, from the origin. */
    static Ground of(int size, Shape shape) {
        return at(0, 0, size, shape);
    }

    /** The same with the south-west corner elsewhere. */
    static Ground at(double westM, double southM, int size, Shape shape) {
        double[] xM = new double[size * size];
        double[] yM = new double[size * size];
        int n = 0;
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                if (shape.has(column, row)) {
                    xM[n] = westM + (column + 0.5) * CELL_M;
                    yM[n++] = southM + (row + 0.5) * CELL_M;
                }
            }
        }
        return Ground.of(Arrays.copyOf(xM, n), Arrays.copyOf(yM, n), CELL_M);
    }

    static Ground square(int side) {
        return of(side, (column, row) -> true);
    }

    /** An L of 7,500 cells: the unit square less its north-east quarter. */
    static Ground l() {
        return of(100, (column, row) -> column < 50 || row < 50);
    }

    /** A U of 7,600 cells: the unit square less a notch from the north. */
    static Ground u() {
        return of(100, (column, row) -> column < 30 || column >= 70 || row < 40);
    }

    /** Two rectangles of 40 and 50 columns with a gap of 10 between. */
    static Ground twoParts() {
        return of(100, (column, row) -> column < 40 || column >= 50);
    }

    /** A rectangle in columns and rows, all bounds included. */
    record Patch(int west, int south, int east, int north) {
        boolean has(int column, int row) {
            return column >= west && column <= east && row >= south && row <= north;
        }
    }

    /** Ground of 16 to 1,600 cells: four rectangles, overlapping or apart, less a fifth; often notched or in parts. */
    static Arbitrary<Shape> shapes() {
        Arbitrary<Patch> patches = Combinators.combine(
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.integers().between(0, 30),
                        Arbitraries.integers().between(1, 25),
                        Arbitraries.integers().between(1, 25))
                .as((west, south, width, height) -> new Patch(west, south, west + width - 1, south + height - 1));
        return Combinators.combine(patches.list().ofSize(4), patches).as((parts, gap) -> (column, row) -> {
            boolean core = column < 4 && row < 4;
            boolean in = parts.stream().anyMatch(part -> part.has(column, row)) && !gap.has(column, row);
            return core || in;
        });
    }
}
