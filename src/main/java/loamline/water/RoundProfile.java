package loamline.water;

/** Profiles in the square of the distance: the parabola 1 − t² and the ellipse √(1 − t²). */
final class RoundProfile extends RadialProfile {
    static final RadialProfile PARABOLA = new RoundProfile(false);
    static final RadialProfile ELLIPSE = new RoundProfile(true);

    private final boolean root;

    private RoundProfile(boolean root) {
        this.root = root;
    }

    @Override
    double at(double share) {
        double f = Math.max(0, 1 - share * share);
        return root ? Math.sqrt(f) : f;
    }

    @Override
    double within(double share) {
        double t2 = share * share;
        double left = Math.max(0, 1 - t2);
        return root ? (1 - left * Math.sqrt(left)) / 3 : t2 / 2 - t2 * t2 / 4;
    }

    @Override
    void row(double[] f, int first, int last, double[] eastM2, double northM2, double radiusM) {
        double perM2 = 1 / (radiusM * radiusM);
        if (root) {
            for (int i = first; i < last; i++) {
                f[i] = Math.sqrt(Math.max(0, 1 - perM2 * (eastM2[i] + northM2)));
            }
        } else {
            for (int i = first; i < last; i++) {
                f[i] = Math.max(0, 1 - perM2 * (eastM2[i] + northM2));
            }
        }
    }

    @Override
    public String toString() {
        return root ? "ellipse" : "parabola";
    }
}
