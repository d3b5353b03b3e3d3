package loamline.season.blend;

import java.util.List;

/**
 * Whole bags and where they go.
 *
 * @param bags of each material
 * @param doses in the order of plots, slots and materials; each above 0
 */
public record BagPlan(List<Integer> bags, List<Dose> doses) {
    /**
     * What is spread of one material on one plot at one date.
     *
     * @param plot its position
     * @param slot position of the date among the plot's
     * @param material its position
     */
    public record Dose(int plot, int slot, int material, double kg) {}

    public BagPlan {
        bags = List.copyOf(bags);
        doses = List.copyOf(doses);
    }

    /** What the bags cost. */
    public double cost(Blend blend) {
        double cost = 0;
        for (int m = 0; m < bags.size(); m++) {
            cost += bags.get(m) * blend.materials().get(m).bagPrice();
        }
        return cost;
    }

    /** Weight of a material that is spread, kg. */
    public double usedKg(int material) {
        return doses.stream()
                .filter(dose -> dose.material() == material)
                .mapToDouble(Dose::kg)
                .sum();
    }
}
