package loamline.sampling.walk;

/**
 * The rounds that use certain legs and leave out certain others, with a length that none of them undercuts.
 *
 * <p>Part of {@link BranchAndBound}. A stop with two required legs can have no others: they are left out at once.
 */
final class Subproblem {
    private static final byte OPEN = 0;
    private static final byte REQUIRED = 1;
    private static final byte FORBIDDEN = 2;

    private final int n;
    private final byte[] legs;
    private final double[] price;
    private double bound;
    private int required;

    private Subproblem(int n, byte[] legs, double[] price, double bound, int required) {
        this.n = n;
        this.legs = legs;
        this.price = price;
        this.bound = bound;
        this.required = required;
    }

    /** All rounds: without prices, and no bound yet but that lengths are not negative. */
    static Subproblem all(int n) {
        return new Subproblem(n, new byte[n * n], new double[n], 0, 0);
    }

    /** No round in here is shorter. */
    double bound() {
        return bound;
    }

    /** Takes over a better bound and the tree's prices that give it. */
    void raise(double newBound, OneTree tree) {
        bound = Math.max(bound, newBound);
        System.arraycopy(tree.price, 0, price, 0, n);
    }

    /** The rounds of these that leave out an open leg. */
    Subproblem without(int i, int j) {
        Subproblem part = copy();
        part.mark(i, j, FORBIDDEN);
        return part;
    }

    /** The rounds of these that use an open leg. */
    Subproblem with(int i, int j) {
        Subproblem part = copy();
        part.mark(i, j, REQUIRED);
        part.required++;
        part.closeIfFull(i);
        part.closeIfFull(j);
        return part;
    }

    boolean isOpen(int i, int j) {
        return legs[i * n + j] == OPEN;
    }

    /**
     * Writes legs, prices and offset into a tree, whose bound then holds for these rounds. A required leg is given a
     * discount, which all rounds here enjoy alike: the offset takes it back.
     *
     * @param distances n × n, row by row
     * @param discount any size gives a true bound; that of a whole round makes the tree use the leg
     */
    void writeTo(OneTree tree, double[] distances, double discount) {
        tree.clearLegs();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                byte state = legs[i * n + j];
                if (state != FORBIDDEN) {
                    double distance = distances[i * n + j];
                    tree.addLeg(i, j, state == REQUIRED ? distance - discount : distance);
                }
            }
        }
        System.arraycopy(price, 0, tree.price, 0, n);
        tree.offset = discount * required;
    }

    /**
     * Leaves out the open legs that no round can use without being too long.
     *
     * @param tree as grown for these rounds with their own prices
     * @param distances n × n, row by row
     * @param replaced scratch of the same shape
     * @param gap how far the tree's bound is below the length that is too long
     */
    void leaveOutHopeless(OneTree tree, double[] distances, double[] replaced, double gap) {
        tree.replacedLegs(replaced);
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double rise = distances[i * n + j] + price[i] + price[j] - replaced[i * n + j];
                if (rise >= gap && isOpen(i, j) && !tree.joins(i, j)) {
                    mark(i, j, FORBIDDEN);
                }
            }
        }
    }

    private Subproblem copy() {
        return new Subproblem(n, legs.clone(), price.clone(), bound, required);
    }

    private void mark(int i, int j, byte state) {
        legs[i * n + j] = state;
        legs[j * n + i] = state;
    }

    private void closeIfFull(int stop) {
        int used = 0;
        for (int other = 0; other < n; other++) {
            used += legs[stop * n + other] == REQUIRED ? 1 : 0;
        }
        for (int other = 0; used == 2 && other < n; other++) {
            if (isOpen(stop, other)) {
                mark(stop, other, FORBIDDEN);
            }
        }
    }
}
