package loamline.season;

/**
 * Something to buy.
 *
 * @param bags whole bags; 0 for what is sold loose
 * @param kg weight bought
 * @param usedKg weight spread; the rest is left over
 * @param volumeM3 for what is sold by volume; 0 else
 * @param cost 0 where no price is known
 */
public record Purchase(String name, int bags, double kg, double usedKg, double volumeM3, double cost) {
    /** 0 or more: a sum of doses may pass the weight of its bags by rounding. */
    public double leftoverKg() {
        return Math.max(0, kg - usedKg);
    }
}
