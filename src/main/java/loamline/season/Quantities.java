package loamline.season;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loamline.units.Factors;

/**
 * Arithmetic of fertilizer, seed, cores and compost, as functions of numbers. SI throughout; any consistent unit where only
 * ratios count.
 */
public final class Quantities {
    /** Oxide bound to 1 of P as turf bulletins round it: 2.29. */
    public static final double P2O5_PER_P = 2.29;

    private static final double SPLIT_ROUNDING = 1e-9;

    private Quantities() {}

    /** What is caught on a pan at a rate, g. Texas A&M, rotary spreader calibration. */
    public static double panG(double kgM2, double panM2) {
        return 1000 * kgM2 * panM2;
    }

    /** Pure live seed, share: purity · germination. Cornell University, Seeding Rates. */
    public static double pureLive(double purityPct, double germinationPct) {
        return purityPct * germinationPct / 1e4;
    }

    /** Seeding rate where a share of the ground is bare and the rest is thickened at half rate; own weighting. */
    public static double overseedRate(double newRate, double bareShare) {
        return newRate * (bareShare + (1 - bareShare) / 2);
    }

    /** Shares by count of a mix by weight. */
    public static List<Double> byCount(List<Double> weights, List<Double> seedsPerWeight) {
        List<Double> seeds = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            seeds.add(weights.get(i) * seedsPerWeight.get(i));
        }
        double all = seeds.stream().mapToDouble(Double::doubleValue).sum();
        return seeds.stream().map(count -> count / all).toList();
    }

    /** Holes on a square metre of a pattern with two spacings, m. */
    public static double holesM2(double alongM, double acrossM) {
        return 1 / (alongM * acrossM);
    }

    /** Share of the surface that holes open. */
    public static double openedShare(double holesM2, double diameterM) {
        return holesM2 * Math.PI * diameterM * diameterM / 4;
    }

    /** Passes of a machine for a density of holes. */
    public static int passes(double wantedM2, double onePassM2) {
        return (int) Math.ceil(wantedM2 / onePassM2 - SPLIT_ROUNDING);
    }

    /** Topdressing, m³. */
    public static double volumeM3(double areaM2, double depthM) {
        return areaM2 * depthM;
    }

    /** Phosphate that compost brings, g/m²; empty if its analysis is not known. */
    public static OptionalDouble compostP2o5GM2(double depthM, Target.Compost compost) {
        if (compost.pPct().isEmpty()
                || compost.dryPct().isEmpty()
                || compost.kgM3().isEmpty()) {
            return OptionalDouble.empty();
        }
        double dryKgM2 =
                depthM * compost.kgM3().getAsDouble() * compost.dryPct().getAsDouble() / 100;
        return OptionalDouble.of(1000 * dryKgM2 * compost.pPct().getAsDouble() / 100 * P2O5_PER_P);
    }

    /** Pounds on 1,000 ft² as g/m². */
    public static double gM2(double lb1000ft2) {
        return lb1000ft2 * Factors.G_M2_PER_LB_1000FT2;
    }
}
