package loamline.soil;

/** Oxides in which fertilizer is named, from atomic weights. */
public final class Oxides {
    /** P2O5 in which 1 of P is bound: 141.945 / 61.948. */
    public static final double P2O5_PER_P = 141.945 / 61.948;
    /** K2O in which 1 of K is bound: 94.196 / 78.197. */
    public static final double K2O_PER_K = 94.196 / 78.197;

    private Oxides() {}
}
