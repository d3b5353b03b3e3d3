package loamline.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loamline.season.blend.BagPlan;
import loamline.season.blend.Blend;
import loamline.season.blend.Plot;
import loamline.units.Factors;

/** From doses to tasks for a person with a spreader. */
record DoseTasks(
        Blend blend, List<Product> products, List<ZoneSeason> zones, PlotPlanner planner, SeasonOptions options) {
    /** Half each way. */
    private static final int PASSES = 2;
    /** From here on potash is watered in: Cornell Cooperative Extension Suffolk County, potassium, lb/1,000 ft². */
    private static final double WATER_IN_K2O_LB = 0.5;

    List<Task> tasks(BagPlan plan) {
        return plan.doses().stream()
                .sorted(Comparator.comparing((BagPlan.Dose d) -> blend.plots()
                                .get(d.plot())
                                .slots()
                                .get(d.slot())
                                .date())
                        .thenComparing(BagPlan.Dose::plot)
                        .thenComparing(BagPlan.Dose::material))
                .map(this::task)
                .toList();
    }

    private Task task(BagPlan.Dose dose) {
        Plot plot = blend.plots().get(dose.plot());
        Product product = products.get(dose.material());
        double kgM2 = dose.kg() / plot.areaM2();
        return new Task(
                plot.slots().get(dose.slot()).date(),
                plot.name(),
                action(product),
                plot.areaM2(),
                product.name(),
                kgM2,
                dose.kg(),
                0,
                PASSES,
                OptionalDouble.of(Quantities.panG(kgM2, Task.PAN_M2)),
                reason(product, kgM2),
                cautions(product, kgM2, plot, dose));
    }

    private static Task.Action action(Product product) {
        if (product.percent().cce() > 0) {
            return Task.Action.LIME;
        }
        boolean feeds = product.percent().n()
                        + product.percent().p2o5()
                        + product.percent().k2o()
                > 0;
        return feeds ? Task.Action.FERTILIZE : Task.Action.AMEND;
    }

    private static String reason(Product product, double kgM2) {
        List<String> parts = new ArrayList<>();
        add(parts, "N", product.percent().n(), kgM2);
        add(parts, "P2O5", product.percent().p2o5(), kgM2);
        add(parts, "K2O", product.percent().k2o(), kgM2);
        add(parts, "lime as CaCO3", product.percent().cce(), kgM2);
        return parts.isEmpty()
                ? "brings what the soil test asks for"
                : "brings " + String.join(", ", parts) + " to a square metre";
    }

    private static void add(List<String> parts, String what, double pct, double kgM2) {
        if (pct > 0) {
            parts.add(String.format(Locale.ROOT, "%.2f g %s", 1000 * kgM2 * pct / 100, what));
        }
    }

    private List<String> cautions(Product product, double kgM2, Plot plot, BagPlan.Dose dose) {
        List<String> cautions = new ArrayList<>();
        double gM2 = 1000 * kgM2;
        if (gM2 * product.percent().k2o() / 100 > WATER_IN_K2O_LB * Factors.G_M2_PER_LB_1000FT2) {
            cautions.add("Water in afterwards: much potash at once.");
        }
        if (product.percent().n() > 0 && !product.isSlow()) {
            cautions.add("Quick-release nitrogen: water in with about 1/4 in, and wait where highs pass 85 °F.");
        }
        if (product.percent().n() > 0 && product.saltIndex().isEmpty()) {
            cautions.add("Its salt index is not told, so the salt of the dose was not checked.");
        }
        zones.stream()
                .filter(zone -> zone.name().equals(plot.name()))
                .flatMap(zone -> planner.days(zone).stream())
                .filter(day -> day.date().equals(plot.slots().get(dose.slot()).date()))
                .filter(day -> product.percent().n() > 0 && day.growth() < GrowthPotential.VERY_LITTLE)
                .findFirst()
                .ifPresent(
                        day -> cautions.add("Grass hardly grows at the usual temperature of this month: uptake is low"
                                + " and leaching likely."));
        return cautions;
    }
}
