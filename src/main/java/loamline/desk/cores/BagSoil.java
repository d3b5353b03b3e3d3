package loamline.desk.cores;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.SoilNeed;

/**
 * The soil in bags that have the same, in a line.
 *
 * @param words how much it is and what the lab asks for
 * @param tooLittle whether it falls short
 */
record BagSoil(String words, boolean tooLittle) {
    /** A line for every amount of soil, in order of the bags. */
    static List<BagSoil> of(CorePlan plan) {
        Map<SoilNeed, List<String>> bags = new LinkedHashMap<>();
        for (Composite bag : plan.composites()) {
            bags.computeIfAbsent(SoilNeed.of(bag), need -> new ArrayList<>()).add(bag.name());
        }
        return bags.entrySet().stream()
                .map(entry -> of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static BagSoil of(SoilNeed need, List<String> bags) {
        String which = (bags.size() == 1 ? "Bag " : "Bags ") + String.join(", ", bags) + ": ";
        String amounts = Math.round(need.takenMl()) + " ml of soil" + (bags.size() == 1 ? "" : " each")
                + "; a lab asks for " + Math.round(SoilNeed.LEAST_ML) + " to " + Math.round(SoilNeed.ENOUGH_ML)
                + " ml.";
        String remedy = need.takenMl() < SoilNeed.ENOUGH_ML
                ? " " + need.coresForEnough() + " cores, or a wider probe, give plenty."
                : "";
        return new BagSoil(which + amounts + remedy, need.isTooLittle());
    }
}
