package loamline.sampling.strata;

import java.util.Arrays;

/** Points that stand for ground; places in cells from the corner of the ground. Arrays for kernels to read only. */
final class WeightedPoints {
    /** Columns. */
    final double[] x;

    /** Rows. */
    final double[] y;

    /** Area each point stands for, in cells. */
    final double[] mass;

    /** Area of all points, in cells. */
    final double totalMass;

    private WeightedPoints(double[] x, double[] y, double[] mass) {
        this.x = x;
        this.y = y;
        this.mass = mass;
        this.totalMass = Arrays.stream(mass).sum();
    }

    /** One point a cell, in the order of the ground. */
    static WeightedPoints cellsOf(Ground ground) {
        double[] x = new double[ground.size()];
        double[] y = new double[ground.size()];
        double[] mass = new double[ground.size()];
        Arrays.setAll(x, ground::column);
        Arrays.setAll(y, ground::row);
        Arrays.fill(mass, 1);
        return new WeightedPoints(x, y, mass);
    }

    /** One point a square block of cells, at the middle of what ground there is in it. */
    static WeightedPoints blocksOf(Ground ground, int side) {
        long[] block = new long[ground.size()];
        Arrays.setAll(block, i -> ((long) (ground.row(i) / side) << Integer.SIZE) + ground.column(i) / side);
        long[] blocks = Arrays.stream(block).sorted().distinct().toArray();
        double[] x = new double[blocks.length];
        double[] y = new double[blocks.length];
        double[] mass = new double[blocks.length];
        for (int i = 0; i < block.length; i++) {
            int b = Arrays.binarySearch(blocks, block[i]);
            mass[b]++;
            x[b] += ground.column(i);
            y[b] += ground.row(i);
        }
        Arrays.setAll(x, b -> x[b] / mass[b]);
        Arrays.setAll(y, b -> y[b] / mass[b]);
        return new WeightedPoints(x, y, mass);
    }

    int size() {
        return x.length;
    }
}
