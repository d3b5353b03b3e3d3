package loamline.sampling.walk;

import java.util.Arrays;
import loamline.cancel.Cancellation;

/** Sectors and the steps between them, which can be taken both ways; finds the shortest ways from one sector on. */
final class Network {
    /** Steps by the sector they leave from, each step once for either way. */
    private final int[] firstStep;

    private final int[] stepTo;
    private final double[] stepM;

    private Network(int[] firstStep, int[] stepTo, double[] stepM) {
        this.firstStep = firstStep;
        this.stepTo = stepTo;
        this.stepM = stepM;
    }

    /** The shortest ways from one sector to all. */
    static final class Reach {
        private final double[] distanceM;
        private final int[] before;

        private Reach(int sectors) {
            distanceM = new double[sectors];
            before = new int[sectors];
            Arrays.fill(distanceM, Double.POSITIVE_INFINITY);
            Arrays.fill(before, -1);
        }

        /** Length of the way to a sector, m; infinite where no way leads. */
        double distanceM(int sector) {
            return distanceM[sector];
        }

        /** The sector passed last on the way to one; -1 at the start and where no way leads. */
        int before(int sector) {
            return before[sector];
        }
    }

    /**
     * The ways from a sector by Dijkstra's algorithm; of two of one length the one found first. O(steps · log sectors).
     *
     * @param start a sector, or a negative number for nowhere, from where no way leads
     */
    Reach from(int start) {
        Cancellation.check();
        Reach reach = new Reach(firstStep.length - 1);
        double[] distanceM = reach.distanceM;
        Frontier frontier = new Frontier(distanceM);
        if (start >= 0) {
            distanceM[start] = 0;
            frontier.raise(start);
        }
        while (!frontier.isEmpty()) {
            int here = frontier.takeNearest();
            for (int s = firstStep[here]; s < firstStep[here + 1]; s++) {
                double throughM = distanceM[here] + stepM[s];
                if (throughM < distanceM[stepTo[s]]) {
                    distanceM[stepTo[s]] = throughM;
                    reach.before[stepTo[s]] = here;
                    frontier.raise(stepTo[s]);
                }
            }
        }
        return reach;
    }

    /** Collects steps. */
    static final class Builder {
        private static final int FIRST_ROOM = 1024;

        private int[] ends = new int[2 * FIRST_ROOM];
        private double[] lengthsM = new double[FIRST_ROOM];
        private int steps;

        void join(int a, int b, double lengthM) {
            if (steps == lengthsM.length) {
                ends = Arrays.copyOf(ends, 4 * steps);
                lengthsM = Arrays.copyOf(lengthsM, 2 * steps);
            }
            ends[2 * steps] = a;
            ends[2 * steps + 1] = b;
            lengthsM[steps++] = lengthM;
        }

        /** The network over sectors 0 to {@code sectors - 1}. */
        Network build(int sectors) {
            int[] first = new int[sectors + 1];
            for (int i = 0; i < 2 * steps; i++) {
                first[ends[i] + 1]++;
            }
            for (int s = 0; s < sectors; s++) {
                first[s + 1] += first[s];
            }
            int[] next = first.clone();
            int[] to = new int[2 * steps];
            double[] lengthM = new double[2 * steps];
            for (int i = 0; i < 2 * steps; i++) {
                int at = next[ends[i]]++;
                to[at] = ends[i ^ 1];
                lengthM[at] = lengthsM[i >> 1];
            }
            return new Network(first, to, lengthM);
        }
    }
}
