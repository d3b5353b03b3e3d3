package loamline.soil;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.account.Account;

/**
 * The cations that a soil holds, and its capacity for them.
 *
 * @param extractant what Ca, Mg, K and Na were taken out with
 * @param cecMeq capacity, meq/100 g: as the laboratory measured it, or by summation
 * @param measured whether the laboratory gave the capacity
 * @param cationsMeq Ca, Mg, K and Na where the test has them, meq/100 g
 * @param acidityMeq H and Al by the buffer, meq/100 g
 */
public record Exchange(
        Extractant extractant, double cecMeq, boolean measured, Map<Element, Double> cationsMeq, double acidityMeq) {
    private static final List<Element> CATIONS = List.of(Element.CA, Element.MG, Element.K, Element.NA);
    private static final List<Element> NEEDED = List.of(Element.CA, Element.MG, Element.K);

    public Exchange {
        cationsMeq = Collections.unmodifiableMap(new EnumMap<>(cationsMeq));
    }

    /** Share of the capacity that a cation takes, per cent. */
    public double saturationPct(Element cation) {
        return 100 * cationsMeq.getOrDefault(cation, 0.0) / cecMeq;
    }

    /** Share that Ca, Mg, K and Na take together, per cent. */
    public double baseSaturationPct() {
        return CATIONS.stream().mapToDouble(this::saturationPct).sum();
    }

    /**
     * The sum Ca/200 + Mg/120 + K/390 + Na/230 + acidity of one extractant's values, or the laboratory's own capacity.
     * Clemson University, CEC calculations.
     */
    static Advice<Exchange> of(SampleTest test) {
        if (test.carbonatePct().filter(pct -> pct > 0).isPresent()) {
            return Advice.refused(
                    "the soil has free carbonate, whose calcium an extractant dissolves too: the sum would be too high");
        }
        Optional<Extractant> extractant = List.of(Extractant.values()).stream()
                .filter(e -> e != Extractant.PASTE)
                .filter(e -> NEEDED.stream()
                        .allMatch(cation -> value(test, cation, e).isPresent()))
                .findFirst();
        if (extractant.isEmpty()) {
            return Advice.refused("Ca, Mg and K by one extractant are needed");
        }
        Map<Element, Double> cations = cations(test, extractant.get());
        if (!cations.keySet().containsAll(NEEDED)) {
            return Advice.refused("Ca, Mg or K cannot be turned into meq/100 g: fill in what its unit lacks");
        }
        return summed(test, extractant.get(), cations);
    }

    private static Advice<Exchange> summed(SampleTest test, Extractant extractant, Map<Element, Double> cations) {
        Optional<Double> measured =
                test.lasting(Element.CEC).map(LabValue::value).filter(cec -> cec > 0);
        Advice<Double> acidity = Acidity.of(test);
        if (measured.isEmpty() && !acidity.isGiven()) {
            return Advice.refused(acidity.reason());
        }
        double acid = acidity.value().orElse(0.0);
        double sum = acid
                + cations.values().stream().mapToDouble(Double::doubleValue).sum();
        double cec = measured.orElse(sum);
        if (!(cec > 0)) {
            return Advice.refused("the test has no cations");
        }
        Account account = measured.isPresent()
                ? Account.of("saturation = 100 · meq / CEC", "The laboratory's own capacity.")
                        .with("CEC_meq", cec)
                : Account.of(
                        "CEC = Ca/200 + Mg/120 + K/390 + Na/230 + acidity",
                        "Capacity by summation, from what the extractant took out and the buffer's acidity.",
                        test.tables().source("clemson-cec"));
        for (Map.Entry<Element, Double> cation : cations.entrySet()) {
            account = account.with(cation.getKey().key() + "_meq", cation.getValue());
        }
        return Advice.given(
                new Exchange(extractant, cec, measured.isPresent(), cations, acid), account.with("acidity_meq", acid));
    }

    private static Map<Element, Double> cations(SampleTest test, Extractant extractant) {
        Concentrations in = new Concentrations(test.tables());
        Equivalents weights = Equivalents.of(test.tables());
        Map<Element, Double> cations = new EnumMap<>(Element.class);
        for (Element cation : CATIONS) {
            value(test, cation, extractant)
                    .flatMap(v -> in.ppm(v).value())
                    .flatMap(ppm -> weights.ppmPerMeq(cation).map(weight -> ppm / weight))
                    .ifPresent(meq -> cations.put(cation, meq));
        }
        return cations;
    }

    private static Optional<LabValue> value(SampleTest test, Element cation, Extractant extractant) {
        return test.one(cation, v -> v.isBy(extractant));
    }
}
