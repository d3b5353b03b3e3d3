package loamline.sampling.strata;

/** One core a stratum, each on a cell of its stratum. */
public final class Cores {
    private final Strata strata;
    private final double[] x;
    private final double[] y;

    /** Places in cells; the arrays become this object's own. */
    Cores(Strata strata, double[] x, double[] y) {
        this.strata = strata;
        this.x = x;
        this.y = y;
    }

    public Strata strata() {
        return strata;
    }

    /** Easting of a stratum's core, m. */
    public double xM(int stratum) {
        return strata.ground().xM(x[stratum]);
    }

    /** Northing of a stratum's core, m. */
    public double yM(int stratum) {
        return strata.ground().yM(y[stratum]);
    }

    /** Mean over the ground's cells of the squared distance to the nearest core, m²: see {@link CoreDistance}. */
    public double nearestMssdM2() {
        return squareMetres(nearestMssd());
    }

    /** Mean over the ground's cells of the squared distance to the core of the own stratum, m². */
    public double ownMssdM2() {
        Ground ground = strata.ground();
        double sum = 0;
        for (int i = 0; i < ground.size(); i++) {
            double dx = ground.column(i) - x[strata.stratumOf(i)];
            double dy = ground.row(i) - y[strata.stratumOf(i)];
            sum += dx * dx + dy * dy;
        }
        return squareMetres(sum / ground.size());
    }

    private double squareMetres(double squareCells) {
        return squareCells * strata.ground().cellM() * strata.ground().cellM();
    }

    /** Mean squared distance to the nearest core, square cells. */
    double nearestMssd() {
        return CoreDistance.nearest(WeightedPoints.cellsOf(strata.ground()), x, y);
    }

    /** The cores as places taken, with room for more. */
    Spots spots(int more) {
        Spots spots = new Spots(x.length + more);
        for (int j = 0; j < x.length; j++) {
            spots.add(x[j], y[j]);
        }
        return spots;
    }
}
