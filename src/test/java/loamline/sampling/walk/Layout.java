package loamline.sampling.walk;

import java.util.Random;

/** Seeded distances to test with: one friendly kind, and others that have tripped up solvers. */
public enum Layout {
    /** Straight lines between scattered stops. */
    SCATTERED {
        @Override
        double leg(double[] a, double[] b, Random random) {
            return Math.hypot(a[0] - b[0], a[1] - b[1]);
        }
    },
    /** Shortest paths where half of the straight lines are barred and cost up to twice as much. */
    DETOURS {
        @Override
        double leg(double[] a, double[] b, Random random) {
            double straight = SCATTERED.leg(a, b, random);
            return straight * (random.nextBoolean() ? 1 + random.nextDouble() : 1);
        }

        @Override
        double[][] finish(double[][] rows) {
            for (int via = 0; via < rows.length; via++) {
                for (double[] row : rows) {
                    for (int j = 0; j < rows.length; j++) {
                        row[j] = Math.min(row[j], row[via] + rows[via][j]);
                    }
                }
            }
            return rows;
        }
    },
    /** Three yards in a row with one gate from each to the next, in whose middle all ways from yard to yard meet. */
    GATES {
        @Override
        double leg(double[] a, double[] b, Random random) {
            double[] left = a[0] < b[0] ? a : b;
            double[] right = a[0] < b[0] ? b : a;
            double lengthM = 0;
            for (double[] gate : new double[][] {{0.3, 0.2}, {0.7, 0.9}}) {
                if (left[0] < gate[0] && right[0] > gate[0]) {
                    lengthM += SCATTERED.leg(left, gate, random);
                    left = gate;
                }
            }
            return lengthM + SCATTERED.leg(left, right, random);
        }
    },
    /** Distances in tenths of the square's side, so that many rounds are equally short. */
    TIED {
        @Override
        double leg(double[] a, double[] b, Random random) {
            return Math.rint(10 * SCATTERED.leg(a, b, random));
        }
    },
    /** Stops on a few crossings of a lattice, so that many share a place. */
    SHARED_PLACES {
        @Override
        double leg(double[] a, double[] b, Random random) {
            return Math.hypot(Math.rint(3 * a[0]) - Math.rint(3 * b[0]), Math.rint(3 * a[1]) - Math.rint(3 * b[1]));
        }
    },
    /** Any numbers: no triangle inequality. */
    ARBITRARY {
        @Override
        double leg(double[] a, double[] b, Random random) {
            return random.nextDouble();
        }
    };

    abstract double leg(double[] a, double[] b, Random random);

    double[][] finish(double[][] rows) {
        return rows;
    }

    /** Places are drawn x, y by turns from {@link Random}, then what the legs need. */
    public DistanceMatrix of(int stops, long seed) {
        Random random = new Random(seed);
        double[][] places = new double[stops][];
        for (int i = 0; i < stops; i++) {
            places[i] = new double[] {random.nextDouble(), random.nextDouble()};
        }
        double[][] rows = new double[stops][stops];
        for (int i = 0; i < stops; i++) {
            for (int j = 0; j < i; j++) {
                rows[i][j] = leg(places[i], places[j], random);
                rows[j][i] = rows[i][j];
            }
        }
        return DistanceMatrix.of(finish(rows));
    }
}
