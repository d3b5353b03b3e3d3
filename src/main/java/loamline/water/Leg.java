package loamline.water;

import java.util.Arrays;

/** Depths at equal steps from the head to the rim, straight lines between them. */
final class Leg extends RadialProfile {
    static final RadialProfile CONE = new Leg(1, 0);
    static final RadialProfile UNIFORM = new Leg(1, 1);
    static final RadialProfile RING = new Leg(0.4, 0.6, 0.8, 1, 0.5, 0);

    private final double[] depths;

    /** @param depths two or more, none negative, not all 0 */
    Leg(double... depths) {
        this.depths = depths.clone();
    }

    private int pieces() {
        return depths.length - 1;
    }

    @Override
    double at(double share) {
        double along = share * pieces();
        int piece = Math.min((int) along, pieces() - 1);
        return depths[piece] + (along - piece) * (depths[piece + 1] - depths[piece]);
    }

    /** Piece by piece: (t2 − t1)/6 · [f1 (2 t1 + t2) + f2 (t1 + 2 t2)]. */
    @Override
    double within(double share) {
        double sum = 0;
        for (int piece = 0; piece < pieces(); piece++) {
            double from = (double) piece / pieces();
            double to = Math.min(share, (piece + 1.0) / pieces());
            if (to > from) {
                sum += (to - from) / 6 * (depths[piece] * (2 * from + to) + at(to) * (from + 2 * to));
            }
        }
        return sum;
    }

    @Override
    void row(double[] f, int first, int last, double[] eastM2, double northM2, double radiusM) {
        if (pieces() == 1) {
            double head = depths[0];
            double slope = (depths[1] - depths[0]) / radiusM;
            for (int i = first; i < last; i++) {
                f[i] = head + slope * Math.sqrt(eastM2[i] + northM2);
            }
            return;
        }
        double perM = pieces() / radiusM;
        int lastPiece = pieces() - 1;
        for (int i = first; i < last; i++) {
            double along = perM * Math.sqrt(eastM2[i] + northM2);
            int piece = Math.min((int) along, lastPiece);
            f[i] = depths[piece] + (along - piece) * (depths[piece + 1] - depths[piece]);
        }
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Leg other && Arrays.equals(depths, other.depths);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(depths);
    }

    @Override
    public String toString() {
        return "leg " + Arrays.toString(depths);
    }
}
