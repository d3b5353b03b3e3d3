package loamline.sampling.strata;

import java.util.Arrays;

/** Ground divided into strata that differ by at most one cell, numbered from 0 in no particular order. */
public final class Strata {
    /** Least distance between two cores, and of a spare from every core, as a share of the mean stratum's radius. */
    public static final double CLEARANCE = 0.5;

    private final Ground ground;
    private final int[] owner;
    private final int[][] cells;
    private final double[] centreX;
    private final double[] centreY;
    private final Pieces pieces;

    /** The owner array becomes this object's own. */
    Strata(Ground ground, int k, int[] owner) {
        this.ground = ground;
        this.owner = owner;
        int[] size = new int[k];
        this.centreX = new double[k];
        this.centreY = new double[k];
        for (int i = 0; i < owner.length; i++) {
            int s = owner[i];
            size[s]++;
            centreX[s] += ground.column(i);
            centreY[s] += ground.row(i);
        }
        for (int s = 0; s < k; s++) {
            centreX[s] /= size[s];
            centreY[s] /= size[s];
        }
        this.cells = Arrays.stream(size).mapToObj(int[]::new).toArray(int[][]::new);
        Arrays.fill(size, 0);
        for (int i = 0; i < owner.length; i++) {
            cells[owner[i]][size[owner[i]]++] = i;
        }
        this.pieces = new Pieces(ground, owner, k);
    }

    public Ground ground() {
        return ground;
    }

    /** How many strata. */
    public int count() {
        return cells.length;
    }

    /** The stratum a cell belongs to. */
    public int stratumOf(int cell) {
        return owner[cell];
    }

    /** The cells of a stratum, rising. */
    public int[] cellsOf(int stratum) {
        return cells[stratum].clone();
    }

    /** Area of a stratum, m². */
    public double areaM2(int stratum) {
        return cells[stratum].length * ground.cellM() * ground.cellM();
    }

    /**
     * Standard deviation of the strata's areas over their mean; at most k / 2n for n cells, so fifty cells a stratum
     * keep it within 0.01.
     */
    public double areaCv() {
        double mean = (double) owner.length / cells.length;
        double variance = Arrays.stream(cells)
                .mapToDouble(c -> (c.length - mean) * (c.length - mean))
                .average()
                .orElse(0);
        return Math.sqrt(variance) / mean;
    }

    /** Radius of the disc that has the mean stratum's area, m. */
    public double meanRadiusM() {
        return meanRadius() * ground.cellM();
    }

    /**
     * Strata that are not in one piece (cells that touch by a side), rising. Ground in parts that do not touch may
     * force some; equal area comes first.
     */
    public int[] broken() {
        return pieces.brokenStrata();
    }

    /** The same in cells. */
    double meanRadius() {
        return Math.sqrt(owner.length / (Math.PI * cells.length));
    }

    /** Cells of a stratum without a copy: not to be written to. */
    int[] cellsIn(int stratum) {
        return cells[stratum];
    }

    /** Column of a stratum's centre of gravity. */
    double centreX(int stratum) {
        return centreX[stratum];
    }

    /** Row of a stratum's centre of gravity. */
    double centreY(int stratum) {
        return centreY[stratum];
    }

    int[] owners() {
        return owner.clone();
    }

    Pieces pieces() {
        return pieces;
    }
}
