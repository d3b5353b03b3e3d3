package loamline.season.blend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Tests a plan by adding up; knows nothing of how it was found.
 *
 * <p>Every limit of a dose and of a season, the materials allowed at each date, and the weight of each material against its
 * bags. An upper limit is broken by anything above rounding of the sum; a lower one by more than {@link Blend#TOLERANCE} of
 * it.
 */
public final class BlendCheck {
    /** Share by which a sum of a few hundred doubles may come out too high. */
    private static final double ROUNDING = 1e-12;

    private final Blend blend;
    private final BagPlan plan;
    private final List<String> broken = new ArrayList<>();

    private BlendCheck(Blend blend, BagPlan plan) {
        this.blend = blend;
        this.plan = plan;
    }

    /** What a plan breaks, in words; empty if it is sound. */
    public static List<String> broken(Blend blend, BagPlan plan) {
        BlendCheck check = new BlendCheck(blend, plan);
        check.bags();
        for (int p = 0; p < blend.plots().size(); p++) {
            check.plot(p);
        }
        return List.copyOf(check.broken);
    }

    private void bags() {
        for (int m = 0; m < blend.materials().size(); m++) {
            Material material = blend.materials().get(m);
            if (plan.bags().get(m) < 0) {
                broken.add(material.name() + ": " + plan.bags().get(m) + " bags");
            }
            atMost(material.name() + ", kg", plan.usedKg(m), plan.bags().get(m) * material.bagKg());
        }
    }

    private void plot(int p) {
        Plot plot = blend.plots().get(p);
        List<BagPlan.Dose> all =
                plan.doses().stream().filter(dose -> dose.plot() == p).toList();
        plot.season().forEach((quantity, range) -> {
            double kg = sum(all, quantity);
            String what = plot.name() + ", season, " + quantity + ", kg";
            atMost(what, kg, plot.kg(range.most()));
            if (kg < plot.kg(range.least()) * (1 - Blend.TOLERANCE)) {
                broken.add(what + ": " + kg + " below " + plot.kg(range.least()));
            }
        });
        for (int s = 0; s < plot.slots().size(); s++) {
            int at = s;
            dose(
                    plot,
                    plot.slots().get(s),
                    all.stream().filter(dose -> dose.slot() == at).toList());
        }
    }

    private void dose(Plot plot, Slot slot, List<BagPlan.Dose> doses) {
        doses.forEach(dose -> {
            String what = plot.name() + ", " + slot.date() + ", "
                    + blend.materials().get(dose.material()).name();
            if (!slot.materials().contains(dose.material())) {
                broken.add(what + " may not be used");
            }
            if (!(dose.kg() > 0)) {
                broken.add(what + ": " + dose.kg() + " kg");
            }
        });
        slot.mostGM2()
                .forEach((quantity, most) -> atMost(
                        plot.name() + ", " + slot.date() + ", " + quantity + ", kg",
                        sum(doses, quantity),
                        plot.kg(most)));
    }

    private double sum(Collection<BagPlan.Dose> doses, Quantity quantity) {
        return doses.stream()
                .mapToDouble(dose ->
                        dose.kg() * blend.materials().get(dose.material()).of(quantity))
                .sum();
    }

    private void atMost(String what, double kg, double most) {
        if (kg > most * (1 + ROUNDING)) {
            broken.add(what + ": " + kg + " above " + most);
        }
    }
}
