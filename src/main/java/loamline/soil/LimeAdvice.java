package loamline.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.units.Factors;

/** From a lime rate to dressings of a material. */
record LimeAdvice(SoilOptions options) {
    /** Above this the turf is better aerated first. Penn State AASL, Home Lawn - Maintain. */
    private static final double AERATE_ABOVE_LB_M = 50;
    /** The Adams-Evans buffer is made for soils of less capacity than this, and for less lime. */
    private static final double ADAMS_EVANS_MOST_CEC = 13;

    private static final double ADAMS_EVANS_MOST_LB_ACRE = 10_000;

    /** By the method that the buffer allows; where none does, as the laboratory recommends. */
    Advice<Lime> of(SampleTest test, Advice<Exchange> exchange) {
        Advice<Lime> ours = ours(test, exchange);
        return ours.isGiven()
                ? ours
                : test.one(Element.REC_LIME)
                        .map(value -> planned(
                                new LimeReading(test, options.lime().targetPh()).laboratory(value, ours.reason()),
                                exchange))
                        .orElse(ours);
    }

    private Advice<Lime> ours(SampleTest test, Advice<Exchange> exchange) {
        Advice<Double> ph = test.waterPh();
        if (!ph.isGiven()) {
            return Advice.refused(ph.reason());
        }
        double target = options.lime().targetPh();
        if (ph.value().orElseThrow() >= target) {
            Account account = Account.of("lime = 0", "The pH has reached its target.")
                    .with("pH", ph.value().orElseThrow())
                    .with("target_pH", target);
            return Advice.given(none(account), account);
        }
        Advice<LimeRate> rate = new LimeReading(test, target).rate(ph.value().orElseThrow());
        return rate.isGiven() ? planned(rate.value().orElseThrow(), exchange) : Advice.refused(rate.reason());
    }

    private static Lime none(Account account) {
        return new Lime("none needed", 0, 0, List.of(), 0, OptionalDouble.empty(), account, List.of());
    }

    private Advice<Lime> planned(LimeRate rate, Advice<Exchange> exchange) {
        OptionalDouble basisM = basisM(rate.method());
        double scale = basisM.isPresent() && options.lime().toSampledDepth() ? rate.depthM() / basisM.getAsDouble() : 1;
        double share = rate.method().number("material_cce") / 100;
        double cceKgM2 = rate.rate() * kgM2Per(rate.method().text("rate_unit")) * share * scale;
        double productKgM2 = options.lime().material().inPlaceOf(cceKgM2);
        if (productKgM2 > mostKgM2(cap()) * Doses.MOST) {
            return Advice.refused(
                    "the need of " + rate.rate() + " " + rate.method().text("rate_unit")
                            + " is beyond any plan: check the report, and take the laboratory’s own recommendation");
        }
        Account account = rate.account()
                .with("rate_" + rate.method().text("rate_unit"), rate.rate())
                .with("CCE_of_the_rate_pct", share * 100)
                .with("depth_sampled_over_depth_of_method", scale);
        Lime lime = new Lime(
                rate.method().text("title"),
                cceKgM2,
                productKgM2,
                doses(productKgM2),
                doses(productKgM2).size() > 1 || isHalved(productKgM2) ? (int) cap().number("months_between") : 0,
                basisM,
                options.lime().material().account(tables(), cceKgM2),
                cautions(rate, productKgM2, exchange));
        return Advice.given(lime, account);
    }

    private SoilTables tables() {
        return options.tables();
    }

    private static OptionalDouble basisM(NamedRow method) {
        OptionalDouble inches = method.numberOrNone("basis_depth_in");
        return inches.isPresent() ? OptionalDouble.of(inches.getAsDouble() * Factors.M_PER_IN) : inches;
    }

    private static double kgM2Per(String unit) {
        return switch (unit) {
            case "lb/1000ft2" -> Factors.G_M2_PER_LB_1000FT2 / 1000;
            case "lb/acre" -> SoilMass.KG_M2_PER_LB_ACRE;
            case "ton/acre" -> 2000 * SoilMass.KG_M2_PER_LB_ACRE;
            default -> throw new IllegalArgumentException("lime-methods.csv: no rate unit “" + unit + "”");
        };
    }

    private NamedRow cap() {
        return tables().rows("lime-caps.csv").stream()
                .filter(row -> row.text("cap").equalsIgnoreCase(options.lime().cap()))
                .findFirst()
                .orElseThrow();
    }

    private static double mostKgM2(NamedRow cap) {
        return cap.number("most_lb_1000ft2") * Factors.G_M2_PER_LB_1000FT2 / 1000;
    }

    /** The cap holds for the weight that is spread; worked in before seeding there is none. */
    private List<Double> doses(double productKgM2) {
        if (options.newLawn()) {
            return Doses.split(productKgM2, Math.max(productKgM2, Double.MIN_NORMAL));
        }
        return isHalved(productKgM2) ? List.of(productKgM2 / 2) : Doses.split(productKgM2, mostKgM2(cap()));
    }

    private boolean isHalved(double productKgM2) {
        return !options.newLawn() && cap().text("beyond").equals("half") && productKgM2 > mostKgM2(cap());
    }

    private List<String> cautions(LimeRate rate, double productKgM2, Advice<Exchange> exchange) {
        List<String> cautions = new ArrayList<>();
        if (options.newLawn()) {
            cautions.add("Before seeding: work all of it 4 to 6 in deep.");
        } else if (productKgM2 > 0) {
            cautions.add("No dressing above " + Questions.plain(cap().number("most_lb_1000ft2"))
                    + " lb of the material on 1,000 ft² (" + cap().text("title") + "), "
                    + Questions.plain(cap().number("months_between")) + " months or more apart.");
        }
        if (isHalved(productKgM2)) {
            cautions.add("This is half of the need: test again before the rest.");
        }
        if (!options.newLawn() && productKgM2 > AERATE_ABOVE_LB_M * Factors.G_M2_PER_LB_1000FT2 / 1000) {
            cautions.add("Core aeration first brings it into the soil.");
        }
        boolean adamsEvans = rate.method().text("method").equals("adams-evans");
        boolean strong =
                exchange.value().filter(e -> e.cecMeq() > ADAMS_EVANS_MOST_CEC).isPresent();
        if (adamsEvans && (strong || rate.rate() > ADAMS_EVANS_MOST_LB_ACRE)) {
            cautions.add("The Adams-Evans buffer is made for soils of CEC under 13 that need less than 5 ton/acre:"
                    + " this one is beyond it.");
        }
        if (tables().origin(rate.method()).isFromMemory()) {
            cautions.add("This method’s figures were copied from memory: hold them against the publication.");
        }
        return cautions;
    }
}
