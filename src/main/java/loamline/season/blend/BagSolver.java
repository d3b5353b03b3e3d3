package loamline.season.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loamline.cancel.Cancellation;

/**
 * The cheapest whole bags with which every plot gets what it must, within all limits.
 *
 * <p>Bags are looked for among those that keep the rules found so far, the cheapest first ({@link Covering}); if they are
 * not enough, the rule that they break is added ({@link Shortage}). What comes first and is enough is the cheapest there
 * is. So whole numbers are sought among a number a material, however many plots and dates there are.
 */
public final class BagSolver {
    /** Rules after which the search is given up; real price lists need a few dozen. */
    private static final int MOST_RULES = 2000;

    private final Blend blend;
    private final Shortage shortage;
    private final List<Cover> covers = new ArrayList<>();

    /** @param blend for which {@link Blocking} found nothing in the way */
    public BagSolver(Blend blend) {
        this.blend = blend;
        this.shortage = new Shortage(blend);
        for (Quantity quantity : Quantity.values()) {
            covers.add(carried(quantity));
        }
    }

    /** That bags carry at least what all plots must get. */
    private Cover carried(Quantity quantity) {
        return new Cover(
                blend.materials().stream()
                        .map(material -> material.of(quantity) * material.bagKg())
                        .toList(),
                blend.plots().stream()
                        .filter(plot -> plot.season().containsKey(quantity))
                        .mapToDouble(plot -> plot.kg(plot.season().get(quantity).least()))
                        .sum());
    }

    /** Bags of each material; of several equally cheap answers the same one every time. */
    public List<Integer> cheapest() {
        return search(materials(-1)).orElseThrow(() -> new IllegalStateException("no bags will do"));
    }

    /**
     * The cheapest bags that do without one of the materials of a plan, whichever is cheapest to do without; empty if each
     * of them is needed.
     */
    public Optional<List<Integer>> secondBest(List<Integer> best) {
        return IntStream.range(0, best.size())
                .filter(m -> best.get(m) > 0)
                .filter(m -> Blocking.of(blend.without(m)).isEmpty())
                .mapToObj(m -> search(materials(m)))
                .flatMap(Optional::stream)
                .reduce((a, b) -> cost(b) < cost(a) ? b : a);
    }

    private List<Integer> materials(int without) {
        return IntStream.range(0, blend.materials().size())
                .filter(m -> m != without)
                .boxed()
                .toList();
    }

    private Optional<List<Integer>> search(List<Integer> free) {
        List<Double> prices = blend.materials().stream().map(Material::bagPrice).toList();
        for (int i = 0; i < MOST_RULES; i++) {
            Cancellation.check();
            Optional<List<Integer>> bags = Covering.cheapest(prices, covers, free);
            Optional<Cover> broken = bags.flatMap(shortage::of);
            if (broken.isEmpty()) {
                return bags;
            }
            covers.add(broken.get());
        }
        throw new IllegalStateException("no end after " + MOST_RULES + " rules");
    }

    /** What bags cost. */
    public double cost(List<Integer> bags) {
        return IntStream.range(0, bags.size())
                .mapToDouble(m -> bags.get(m) * blend.materials().get(m).bagPrice())
                .sum();
    }
}
