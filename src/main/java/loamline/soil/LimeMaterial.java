package loamline.soil;

import java.util.Map;
import java.util.TreeMap;
import loamline.account.Account;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;

/**
 * A liming material: how much pure CaCO₃ it stands for.
 *
 * @param ccePct CaCO₃ equivalent of the dry material, per cent, above 0
 * @param finenessPct share that works in time by a fineness scheme, per cent; 100 where none is used
 * @param moisturePct water, per cent of weight
 */
public record LimeMaterial(double ccePct, double finenessPct, double moisturePct) {
    /** Pure, fine and dry. */
    public static final LimeMaterial PURE = new LimeMaterial(100, 100, 0);

    /** @throws IllegalArgumentException if nothing of it would work */
    public LimeMaterial {
        if (!(ccePct > 0 && finenessPct > 0 && finenessPct <= 100 && moisturePct >= 0 && moisturePct < 100)) {
            throw new IllegalArgumentException("no lime of CCE " + ccePct + " %, fineness " + finenessPct
                    + " % and moisture " + moisturePct + " %");
        }
    }

    /**
     * Fineness by a scheme: the sum over its sieves of weight times what passes, per cent.
     *
     * @param passingPct what passes each sieve, per cent, by mesh
     * @throws IllegalArgumentException if there is no such scheme, or a sieve of it is missing
     */
    public static double finenessPct(SoilTables tables, String scheme, Map<Integer, Double> passingPct) {
        double sum = 0;
        boolean known = false;
        for (NamedRow row : tables.rows("lime-fineness.csv")) {
            if (row.text("scheme").equals(scheme)) {
                known = true;
                int mesh = (int) row.number("mesh");
                Double passing = passingPct.get(mesh);
                if (passing == null) {
                    throw new IllegalArgumentException("the scheme “" + scheme + "” needs what passes " + mesh
                            + " mesh; given: " + new TreeMap<>(passingPct));
                }
                sum += row.number("weight") * passing;
            }
        }
        if (!known) {
            throw new IllegalArgumentException("there is no fineness scheme “" + scheme + "”");
        }
        return sum;
    }

    /** Effective CaCO₃ equivalent of the moist material, per cent: CCE · fineness · (1 − moisture). */
    public double effectivePct() {
        return ccePct * finenessPct / 100 * (1 - moisturePct / 100);
    }

    /** Weight of the material in the place of pure CaCO₃. */
    public double inPlaceOf(double cce) {
        return cce * 100 / effectivePct();
    }

    Account account(SoilTables tables, double cceKgM2) {
        return Account.of(
                        "product = lime · 100 / (CCE · fineness · (1 − moisture))",
                        "What to spread of this material; a pure, fine and dry one has 100 %.",
                        tables.source("psu-home-lawn"))
                .with("lime_kg_m2", cceKgM2)
                .with("CCE_pct", ccePct)
                .with("fineness_pct", finenessPct)
                .with("moisture_pct", moisturePct);
    }
}
