package loamline.sampling.strata;

import java.util.Arrays;
import loamline.cancel.Cancellation;

/**
 * Generators of a power diagram that are moved and weighted until their cells are centred and of equal area.
 *
 * <p><b>What.</b> A point belongs to the generator j with the least power |p − c_j|² − w_j. For fixed generators the
 * weights that make all areas equal give the equal-area division with the least mean squared distance to its
 * generators; moving each generator to the centre of its cell lowers it further. A sweep does both at once: every
 * generator moves to its centre, and the weights take one Newton step towards equal areas.
 *
 * <p><b>Units and shape.</b> Places in cells, weights and areas in square cells; k generators, n points, n ≥ 1.
 *
 * <p><b>NaN.</b> Not looked for; the ground has none.
 *
 * <p><b>Ties and borders.</b> A point at equal power belongs to the lower index.
 *
 * <p><b>Accuracy.</b> Areas come near to equal, not equal: {@link ExactBalance} ends the work.
 *
 * <p><b>Cost.</b> n · k + k³ a sweep, nothing allocated in it.
 *
 * <p><b>Reference.</b> Aurenhammer, Hoffmann and Aronov 1998, Minkowski-type theorems and least-squares
 * clustering, Algorithmica 20:61-76 (the division); Kitagawa, Mérigot and Thibert 2019, Convergence of a Newton
 * algorithm for semi-discrete optimal transport, J. Eur. Math. Soc. 21:2603-2651 (the weights); from memory.
 */
final class PowerDiagram {
    /** Settled when no generator moves, and no area is off, by more than this share of a stratum's side or area. */
    private static final double SETTLED = 0.003;

    final double[] x;
    final double[] y;
    private final double[] weight;
    private final double[] mass;
    private final double[] sumX;
    private final double[] sumY;
    private final double[] slopeX;
    private final double[] slopeY;
    private final double[] offset;
    private final Walls walls;
    private final double[] step;

    /** Generators at the given places, all of weight 0; the arrays become the diagram's own. */
    PowerDiagram(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.weight = new double[x.length];
        this.mass = new double[x.length];
        this.sumX = new double[x.length];
        this.sumY = new double[x.length];
        this.slopeX = new double[x.length];
        this.slopeY = new double[x.length];
        this.offset = new double[x.length];
        this.walls = new Walls(x.length);
        this.step = new double[x.length];
    }

    int size() {
        return x.length;
    }

    /** Sweeps until the diagram is settled, at most {@code mostSweeps} times. */
    void settle(WeightedPoints points, int mostSweeps) {
        double target = points.totalMass / size();
        int[] owner = new int[points.size()];
        boolean settled = false;
        for (int sweep = 0; sweep < mostSweeps && !settled; sweep++) {
            Cancellation.check();
            assign(points, owner);
            settled = adjust(target);
        }
    }

    /** Gives each point its owner, and gathers the area and centre of each cell and what its walls let through. */
    void assign(WeightedPoints points, int[] owner) {
        // power less |p|², which is the same for all generators: linear in p
        for (int j = 0; j < x.length; j++) {
            slopeX[j] = -2 * x[j];
            slopeY[j] = -2 * y[j];
            offset[j] = x[j] * x[j] + y[j] * y[j] - weight[j];
        }
        Arrays.fill(mass, 0);
        Arrays.fill(sumX, 0);
        Arrays.fill(sumY, 0);
        walls.clear(points.totalMass / x.length);
        for (int i = 0; i < owner.length; i++) {
            double px = points.x[i];
            double py = points.y[i];
            // the least and the second least power
            int best = 0;
            int second = 0;
            double least = Double.POSITIVE_INFINITY;
            double next = Double.POSITIVE_INFINITY;
            for (int j = 0; j < x.length; j++) {
                double power = offset[j] + slopeX[j] * px + slopeY[j] * py;
                if (power < least) {
                    next = least;
                    second = best;
                    least = power;
                    best = j;
                } else if (power < next) {
                    next = power;
                    second = j;
                }
            }
            owner[i] = best;
            double m = points.mass[i];
            mass[best] += m;
            sumX[best] += m * px;
            sumY[best] += m * py;
            walls.add(best, second, next - least, m);
        }
    }

    /** Moves and weighs the generators after an assignment; whether there was next to nothing to do. */
    private boolean adjust(double target) {
        double farthest = 0;
        double worst = 0;
        for (int j = 0; j < x.length; j++) {
            step[j] = target - mass[j];
            worst = Math.max(worst, Math.abs(step[j]));
        }
        walls.solve(step);
        for (int j = 0; j < x.length; j++) {
            weight[j] += Math.max(-target, Math.min(target, step[j]));
            if (mass[j] > 0) {
                double centreX = sumX[j] / mass[j];
                double centreY = sumY[j] / mass[j];
                farthest = Math.max(farthest, Math.hypot(centreX - x[j], centreY - y[j]));
                x[j] = centreX;
                y[j] = centreY;
            }
        }
        return farthest <= SETTLED * Math.sqrt(target) && worst <= SETTLED * target;
    }
}
