package loamline.soil;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.reference.NamedRow;
import loamline.units.Factors;

/** From a test to phosphorus and potassium to spread. */
record NeedAdvice(SoilOptions options) {
    private static final String CLIPPINGS_REMOVED = "clippings removed";
    private static final String USE = "Use is an upper bound: where clippings stay, the turf needs less.";

    Needs of(SampleTest test, List<Rating> ratings) {
        return new Needs(
                Recommended.elseOf(advice(test, ratings, Element.P, "P2O5", Oxides.P2O5_PER_P), test, Element.REC_P2O5),
                Recommended.elseOf(advice(test, ratings, Element.K, "K2O", Oxides.K2O_PER_K), test, Element.REC_K2O));
    }

    private Advice<Double> advice(
            SampleTest test, List<Rating> ratings, Element element, String oxide, double oxidePerElement) {
        List<LabValue> values = test.all(element);
        if (values.isEmpty()) {
            return Advice.refused("the test has no sound " + element.key()
                    + " with unit, extractant and depth: fill in what is asked for");
        }
        for (LabValue value : values) {
            Optional<NamedRow> rule = rule(value);
            if (rule.isPresent()) {
                return byRule(value, rule.get(), oxide, oxidePerElement);
            }
        }
        return ratings.stream()
                .filter(r -> r.value().element() == element && r.standing().isGiven())
                .flatMap(r -> byClass(r, oxide).stream())
                .findFirst()
                .orElseGet(() -> Advice.refused(noRule(values, element)));
    }

    private String noRule(List<LabValue> values, Element element) {
        String by = values.get(0).extractant().map(Extractant::label).orElse("");
        return "no rule is held that turns " + element.key() + " by " + by + " into an amount"
                + options.guideline().map(g -> " under “" + g + "”").orElse("")
                + ": take the laboratory’s own recommendation";
    }

    private Optional<NamedRow> rule(LabValue value) {
        return guidelines()
                .flatMap(name -> options.tables().rows("soil-needs.csv").stream()
                        .filter(row -> row.text("guideline").equals(name)))
                .filter(row -> row.text("element").equals(value.element().key()))
                .filter(row -> value.extractant()
                        .filter(e -> e.label().equals(row.text("test")))
                        .isPresent())
                .findFirst();
    }

    private Stream<String> guidelines() {
        return options.guideline().isPresent()
                ? options.guideline().flatMap(options.tables()::guideline).stream()
                        .map(g -> g.name())
                : options.tables().guidelines().stream().filter(g -> g.usual()).map(g -> g.name());
    }

    private Advice<Double> byRule(LabValue value, NamedRow row, String oxide, double oxidePerElement) {
        Optional<Double> depthM = Questions.soundDepthM(value);
        if (depthM.isEmpty()) {
            return Advice.refused("the depth of the sample is not known: fill in depth_cm");
        }
        Advice<Double> ppm = new Concentrations(options.tables()).ppm(value);
        if (!ppm.isGiven()) {
            return Advice.refused(ppm.reason());
        }
        NeedRule rule = NeedRule.of(row);
        double perPpm = SoilMass.gM2PerPpm(depthM.get(), SoilMass.densityGCm3(value));
        double found = ppm.value().orElseThrow();
        OptionalDouble element = rule.elementGM2(found, options.nitrogenGM2(), perPpm);
        if (element.isEmpty()) {
            return Advice.refused("“" + row.text("guideline") + "” says that "
                    + value.element().key() + " is needed, not how much: take the laboratory’s own recommendation");
        }
        return Advice.given(
                element.getAsDouble() * oxidePerElement,
                account(rule, row, found, perPpm, oxide).with("depth_m", depthM.get()));
    }

    private Account account(NeedRule rule, NamedRow row, double ppm, double perPpm, String oxide) {
        String element = row.text("element");
        Account account = Account.of(
                oxide + " = max(0, a + (b − c) · m) · " + (element.equals("P") ? "2.2914" : "1.2046"),
                "a use, b to stay in the soil, c found, m grams on a square metre for each ppm. " + USE,
                options.tables().source("woods-2015"),
                options.tables().origin(row).source());
        account = account.with("a_g_m2", rule.useGM2(options.nitrogenGM2()))
                .with("nitrogen_g_m2", options.nitrogenGM2())
                .with("use_per_nitrogen", rule.usePerN());
        if (rule.keepPpm().isPresent()) {
            account = account.with("b_ppm", rule.keepPpm().getAsDouble());
        }
        if (rule.isNone(ppm)) {
            account = account.with("none_from_ppm", rule.noneFromPpm().orElseThrow());
        }
        return account.with("c_ppm", ppm).with("m_g_m2_per_ppm", perPpm);
    }

    /** An amount that a guideline prints for a class. */
    private Optional<Advice<Double>> byClass(Rating rating, String oxide) {
        List<String> uses = options.newLawn() ? List.of("new") : List.of("established", CLIPPINGS_REMOVED);
        return options.tables().rows("soil-rates.csv").stream()
                .filter(row -> row.text("guideline").equals(rating.guideline()))
                .filter(row -> row.text("nutrient").equals(oxide) && uses.contains(row.text("use")))
                .filter(row -> rating.name().filter(row.text("class")::equals).isPresent())
                .findFirst()
                .map(row ->
                        Advice.given(row.number("rate_lb_1000ft2") * Factors.G_M2_PER_LB_1000FT2, account(row, oxide)));
    }

    private Account account(NamedRow row, String oxide) {
        OptionalDouble most = row.numberOrNone("most_lb_1000ft2");
        String note = (row.text("use").equals(CLIPPINGS_REMOVED) ? USE + " " : "")
                + (most.isPresent() ? "The guideline gives a span, and its lower end is taken. " : "")
                + "A rate for the year; " + options.tables().origin(row).status() + ".";
        Account account = Account.of(
                        oxide + " = table(class, use)",
                        note,
                        options.tables().origin(row).source())
                .with("class", row.text("class"))
                .with("use", row.text("use"))
                .with("rate_lb_1000ft2", row.number("rate_lb_1000ft2"));
        return most.isPresent() ? account.with("up_to_lb_1000ft2", most.getAsDouble()) : account;
    }
}
