package loamline.sampling;

import loamline.account.Account;
import loamline.account.Source;
import loamline.sampling.CorePlan.Composite;

/**
 * Whether a bag's cores give the soil that a lab asks for.
 *
 * @param takenMl soil in the bag, plugs as cut, ml
 * @param coresForEnough how many cores of this probe give {@link #ENOUGH_ML}
 * @param account how it came about
 */
public record SoilNeed(double takenMl, int coresForEnough, Account account) {
    private static final double ML_PER_CUP = 236.5882365;

    /** The least that a lab works with: 1.5 cups, ml. */
    public static final double LEAST_ML = 1.5 * ML_PER_CUP;

    /** What a lab is glad of: 2 cups, ml. */
    public static final double ENOUGH_ML = 2 * ML_PER_CUP;

    private static final Source SOURCE = new Source(
            "missouri-g6954", "Nathan & Fresenburg, University of Missouri Extension G6954: 1.5 to 2 cups of soil");

    /** What a bag gives. */
    public static SoilNeed of(Composite bag) {
        double coreMl = bag.probe().coreMl();
        Account account = Account.of(
                        "n = need / (π/4 · d² · depth)", "Roots and thatch, taken off first, leave less.", SOURCE)
                .with("need_ml", ENOUGH_ML)
                .with("d_m", bag.probe().diameterM())
                .with("depth_m", bag.probe().depthM());
        return new SoilNeed(bag.volumeMl(), (int) Math.ceil(ENOUGH_ML / coreMl), account);
    }

    public boolean isTooLittle() {
        return takenMl < LEAST_ML;
    }
}
