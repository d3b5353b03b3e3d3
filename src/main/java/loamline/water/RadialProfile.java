package loamline.water;

import loamline.yard.Profile;

/**
 * How the depth of water falls off from a head to the rim of its throw: f(t), t the distance as a share of the radius.
 * Only its shape counts, not its scale. Immutable.
 *
 * <p>Shapes and volume factors: derived from the formulas; the ring is a head under too little pressure (0.4 of its
 * best at the head, best at 0.6 of the radius, nothing at the rim), common practice, no source.
 */
public abstract sealed class RadialProfile permits Leg, RoundProfile {
    /** The profile that a yard's head names or brings along. */
    public static RadialProfile of(Profile profile) {
        if (profile instanceof Profile.Measured leg) {
            return new Leg(leg.depths().stream().mapToDouble(d -> d).toArray());
        }
        return switch ((Profile.Named) profile) {
            case CONE -> Leg.CONE;
            case UNIFORM -> Leg.UNIFORM;
            case PARABOLA -> RoundProfile.PARABOLA;
            case ELLIPSE -> RoundProfile.ELLIPSE;
            case RING -> Leg.RING;
        };
    }

    /**
     * f(t).
     *
     * @param share 0 at the head to 1 at the rim
     */
    abstract double at(double share);

    /**
     * The integral of f(s) · s ds from the head to a share of the radius: the water that falls so near, but for its
     * scale.
     */
    abstract double within(double share);

    /** Mean over a full wetted circle where f is 1: 2 · ∫ f(t) t dt. The cone has 1/3, the parabola 1/2. */
    public double meanOverPeak() {
        return 2 * within(1);
    }

    /**
     * f on cells of a row. Cells and distances have the same index, and nothing is added up here: such a loop the JIT
     * turns into one over vectors, square root and all.
     *
     * @param f by column, written to
     * @param first the first column
     * @param last the column after the last
     * @param eastM2 by column, squared distance east or west of the head, m²
     * @param northM2 squared distance north or south, m²
     * @param radiusM all cells lie within it, but for rounding
     */
    abstract void row(double[] f, int first, int last, double[] eastM2, double northM2, double radiusM);
}
