package loamline.soil;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;

/**
 * Salt and sodium in a soil.
 *
 * @param eceDsM conductivity of the extract of a saturated paste; empty if not measured
 * @param sar of the same extract; empty if not measured
 * @param espPct share of the exchange that sodium holds, from the exchange or else from the SAR; empty if not known
 */
public record Sodium(OptionalDouble eceDsM, OptionalDouble sar, OptionalDouble espPct) {
    /** Above this a soil is saline. Montana State University; USDA Handbook 60. */
    public static final double SALINE_DS_M = 4;

    private static final double MG_L_PER_MEQ_NA = 23;
    private static final double MG_L_PER_MEQ_CA = 20;
    private static final double MG_L_PER_MEQ_MG = 12.2;

    static Sodium of(SampleTest test, Advice<Exchange> exchange) {
        OptionalDouble ece = test.one(Element.EC, v -> v.isBy(LabMethod.PASTE)).stream()
                .mapToDouble(LabValue::value)
                .findFirst();
        OptionalDouble sar = sar(test);
        OptionalDouble held = exchange.value().stream()
                .filter(e -> e.cationsMeq().containsKey(Element.NA))
                .mapToDouble(e -> e.saturationPct(Element.NA))
                .findFirst();
        OptionalDouble fromSar = sar.stream().map(Salinity::espPct).findFirst();
        return new Sodium(ece, sar, held.isPresent() ? held : fromSar);
    }

    private static OptionalDouble sar(SampleTest test) {
        Optional<Double> sodium = dissolved(test, Element.NA, MG_L_PER_MEQ_NA);
        Optional<Double> calcium = dissolved(test, Element.CA, MG_L_PER_MEQ_CA);
        Optional<Double> magnesium = dissolved(test, Element.MG, MG_L_PER_MEQ_MG);
        if (sodium.isEmpty() || calcium.isEmpty() || magnesium.isEmpty() || calcium.get() + magnesium.get() <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Salinity.sar(sodium.get(), calcium.get(), magnesium.get()));
    }

    private static Optional<Double> dissolved(SampleTest test, Element element, double mgLPerMeq) {
        return test.one(element, v -> v.isBy(Extractant.PASTE) && (v.isIn(LabUnit.MEQ_L) || v.isIn(LabUnit.MG_DM3)))
                .map(v -> v.isIn(LabUnit.MEQ_L) ? v.value() : v.value() / mgLPerMeq);
    }

    public boolean isSaline() {
        return eceDsM.orElse(0) > SALINE_DS_M;
    }

    /** ESP of 15 and more. */
    public boolean isSodic() {
        return espPct.orElse(0) >= Gypsum.SODIC_ESP_PCT;
    }

    /** The class in words; empty if neither conductivity nor sodium is known. */
    public Optional<String> name() {
        if (eceDsM.isEmpty() && espPct.isEmpty()) {
            return Optional.empty();
        }
        if (isSodic()) {
            return Optional.of(isSaline() ? "saline-sodic" : "sodic");
        }
        return Optional.of(isSaline() ? "saline" : "neither saline nor sodic, as far as measured");
    }

    /** Gypsum that brings ESP to 15, by Oster, Shainberg & Abrol 1999. */
    Advice<Gypsum> gypsum(SampleTest test, Advice<Exchange> exchange) {
        if (!isSodic()) {
            Account account = Account.of(
                    "gypsum = 0",
                    espPct.isPresent() ? "The soil is not sodic." : "Nothing in the test speaks of sodium.");
            return Advice.given(new Gypsum(0, espPct.orElse(0), Gypsum.SODIC_ESP_PCT, List.of()), account);
        }
        Optional<LabValue> sodium = test.one(Element.NA);
        Optional<Double> depthM =
                sodium.flatMap(v -> v.made().depthM().stream().boxed().findFirst());
        Optional<Double> cec = exchange.value()
                .map(Exchange::cecMeq)
                .or(() -> test.lasting(Element.CEC).map(LabValue::value));
        if (cec.isEmpty()) {
            return Advice.refused("the need for gypsum depends on the exchange capacity: fill in CEC");
        }
        if (depthM.filter(d -> d > 0).isEmpty()) {
            return Advice.refused("the depth of the sample is not known: fill in depth_cm of Na");
        }
        return needed(test, sodium.orElseThrow(), cec.get(), depthM.get());
    }

    private Advice<Gypsum> needed(SampleTest test, LabValue sodium, double cec, double depthM) {
        double esp = espPct.orElseThrow();
        double meq = Gypsum.sodiumToReplaceMeq(cec, esp, Gypsum.SODIC_ESP_PCT);
        double density = SoilMass.densityGCm3(sodium);
        double kgM2 = Gypsum.osterTHa(Gypsum.OSTER_FACTOR, depthM, density, meq) / 10;
        Account account = Account.of(
                        "gypsum = 0.86 · F · depth · density · CEC · (ESP − target)/100",
                        "Pure gypsum; divide by its purity.",
                        test.tables().source("oster-1999"),
                        test.tables().source("ali-irrigation"))
                .with("F", Gypsum.OSTER_FACTOR)
                .with("depth_m", depthM)
                .with("density_g_cm3", density)
                .with("CEC_meq", cec)
                .with("ESP_pct", esp)
                .with("target_pct", Gypsum.SODIC_ESP_PCT)
                .with("by_the_rule_of_3.85_t_kg_m2", Gypsum.ruleTHa(meq, depthM) / 10)
                .with("by_stoichiometry_lb_acre_furrow_slice", Gypsum.theoryLbAcre(meq));
        return Advice.given(
                new Gypsum(
                        kgM2,
                        esp,
                        Gypsum.SODIC_ESP_PCT,
                        List.of(
                                "For sodic soil only: gypsum does not loosen ordinary clay.",
                                "No limit for one dressing on turf is published here: spread in several, and ask your"
                                        + " extension office.")),
                account);
    }
}
