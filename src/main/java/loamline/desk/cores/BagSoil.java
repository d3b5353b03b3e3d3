package loamline.desk.cores;

import java.util.List;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.SoilNeed;

/**
 * The soil in a bag, in a line.
 *
 * @param words how much it is and what the lab asks for
 * @param tooLittle whether it falls short
 */
record BagSoil(String words, boolean tooLittle) {
    static List<BagSoil> of(CorePlan plan) {
        return plan.composites().stream().map(BagSoil::of).toList();
    }

    private static BagSoil of(Composite bag) {
        SoilNeed need = SoilNeed.of(bag);
        String taken = "Bag " + bag.name() + ": " + Math.round(need.takenMl()) + " ml of soil; ";
        String asked =
                "a lab asks for " + Math.round(SoilNeed.LEAST_ML) + " to " + Math.round(SoilNeed.ENOUGH_ML) + " ml.";
        String remedy = need.takenMl() < SoilNeed.ENOUGH_ML
                ? " " + need.coresForEnough() + " cores give the most it asks for; so does a wider probe."
                : "";
        return new BagSoil(taken + asked + remedy, need.isTooLittle());
    }
}
