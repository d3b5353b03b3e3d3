package loamline.season;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.season.blend.BagPlan;
import loamline.season.blend.BagSolver;
import loamline.season.blend.Blend;
import loamline.season.blend.BlendCheck;
import loamline.season.blend.Blocking;
import loamline.season.blend.DoseSpreader;
import loamline.season.blend.Plot;

/**
 * A season's plan.
 *
 * @param zones needs, service and what is left, in the yard's order
 * @param purchases what to buy, in the order of the price list, then seed and compost
 * @param tasks by date, zone and action
 * @param cost of the bags
 * @param blocking why there is no plan of products, in sentences; empty if there is one
 * @param second the second-best plan
 * @param cautions that hold for all of it
 * @param problems everything that is open or was assumed
 * @param accounts of compost, bags and cost, by JSON pointer
 */
public record Season(
        SeasonInputs inputs,
        List<ZoneSeason> zones,
        List<Purchase> purchases,
        List<Task> tasks,
        double cost,
        List<String> blocking,
        Optional<SecondBest> second,
        List<String> cautions,
        List<Problem> problems,
        Map<String, Account> accounts) {

    /**
     * The cheapest plan that does without one of the products of the best.
     *
     * @param bags whole bags by product, those of 0 left out
     */
    public record SecondBest(Map<String, Integer> bags, double cost) {
        public SecondBest {
            bags = Collections.unmodifiableMap(new LinkedHashMap<>(bags));
        }
    }

    public Season {
        zones = List.copyOf(zones);
        purchases = List.copyOf(purchases);
        tasks = List.copyOf(tasks);
        blocking = List.copyOf(blocking);
        cautions = List.copyOf(cautions);
        problems = List.copyOf(problems);
        accounts = Collections.unmodifiableMap(new LinkedHashMap<>(accounts));
    }

    public boolean isOptimal() {
        return blocking.isEmpty();
    }

    /**
     * Plans a season. The same inputs give the same plan.
     *
     * @throws java.util.concurrent.CancellationException if the thread is interrupted
     */
    public static Season of(SeasonInputs inputs) {
        List<ZoneSeason> zones = new NeedPlanner(inputs).zones();
        List<Product> products =
                inputs.products().stream().filter(Product::isAmendment).toList();
        PlotPlanner planner = new PlotPlanner(inputs, products);
        List<Plot> plots = zones.stream().flatMap(z -> planner.plot(z).stream()).toList();
        Blend blend = new Blend(products.stream().map(Product::material).toList(), plots);
        List<Task> groundTasks = new GroundTasks(inputs).tasks(zones);
        List<String> blocking = new BlockWords(blend, inputs.options()).words(Blocking.of(blend));
        Season bare = new Season(
                inputs,
                zones,
                Loose.of(groundTasks),
                sorted(groundTasks),
                0,
                blocking,
                Optional.empty(),
                SeasonCautions.of(Law.of(inputs.options())),
                Stream.concat(
                                blocking.stream().map(Season::blocked),
                                new SeasonDoubts(inputs, planner).problems(zones).stream())
                        .toList(),
                CompostCheck.of(inputs).accounts(zones));
        return bare.isOptimal() ? bare.with(blend, products, planner) : bare;
    }

    /** The same with the cheapest bags. */
    private Season with(Blend blend, List<Product> products, PlotPlanner planner) {
        BagSolver solver = new BagSolver(blend);
        BagPlan plan = DoseSpreader.spread(blend, solver.cheapest());
        requireSound(blend, plan);
        List<Task> all = new ArrayList<>(tasks);
        all.addAll(new DoseTasks(blend, products, zones, planner, inputs.options()).tasks(plan));
        List<Purchase> bought = purchases(blend, plan);
        Map<String, Account> explained = new LinkedHashMap<>(accounts);
        explained.putAll(PlanAccounts.of(blend, plan, bought));
        return new Season(
                inputs,
                zones,
                Stream.concat(bought.stream(), purchases.stream()).toList(),
                sorted(all),
                plan.cost(blend),
                blocking,
                solver.secondBest(plan.bags()).map(next -> second(blend, next, solver.cost(next))),
                cautions,
                problems,
                explained);
    }

    private static void requireSound(Blend blend, BagPlan plan) {
        List<String> broken = BlendCheck.broken(blend, plan);
        if (!broken.isEmpty()) {
            throw new IllegalStateException("the plan does not hold: " + String.join("; ", broken));
        }
    }

    private static List<Task> sorted(List<Task> tasks) {
        return tasks.stream()
                .sorted(Comparator.comparing(Task::date).thenComparing(Task::action))
                .toList();
    }

    private static List<Purchase> purchases(Blend blend, BagPlan plan) {
        return IntStream.range(0, blend.materials().size())
                .filter(m -> plan.bags().get(m) > 0)
                .mapToObj(m -> new Purchase(
                        blend.materials().get(m).name(),
                        plan.bags().get(m),
                        plan.bags().get(m) * blend.materials().get(m).bagKg(),
                        plan.usedKg(m),
                        0,
                        plan.bags().get(m) * blend.materials().get(m).bagPrice()))
                .toList();
    }

    private static SecondBest second(Blend blend, List<Integer> bags, double cost) {
        Map<String, Integer> byName = new LinkedHashMap<>();
        IntStream.range(0, bags.size())
                .filter(m -> bags.get(m) > 0)
                .forEach(m -> byName.put(blend.materials().get(m).name(), bags.get(m)));
        return new SecondBest(byName, cost);
    }

    private static Problem blocked(String words) {
        return Problem.warning("SEASON_BLOCKED", Where.WHOLE, "there is no plan of products. " + words);
    }

    /** A question about a zone, as a problem of the whole. */
    static Problem question(String zone, String words) {
        return Problem.warning("SEASON_OPEN", Where.WHOLE, zone + ": " + words);
    }
}
