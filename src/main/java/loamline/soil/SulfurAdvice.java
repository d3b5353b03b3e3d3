package loamline.soil;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.reference.NamedRow;
import loamline.units.Factors;

/** When and how much sulfur. */
record SulfurAdvice(SoilOptions options) {
    /** CaCO₃ that a weight of sulfur neutralises: 100.09 / 32.06. */
    private static final double CACO3_PER_S = 100.09 / 32.06;

    Advice<Sulfur> of(SampleTest test) {
        Advice<Double> ph = test.waterPh();
        if (!ph.isGiven()) {
            return Advice.refused(ph.reason());
        }
        NamedRow cap = options.tables().rows("sulfur-caps.csv").get(0);
        double actAbove = cap.number("act_above_ph");
        if (ph.value().orElseThrow() <= actAbove) {
            Account account = Account.of(
                            "sulfur = 0",
                            "Turf does well up to pH " + actAbove + ".",
                            options.tables().origin(cap).source())
                    .with("pH", ph.value().orElseThrow());
            return Advice.given(new Sulfur(0, List.of(), List.of(), List.of()), account);
        }
        Optional<Double> carbonate = test.carbonatePct().filter(pct -> pct > 0);
        return carbonate.isPresent()
                ? Advice.refused(carbonates(carbonate.get()))
                : needed(test, ph.value().orElseThrow(), cap);
    }

    private static String carbonates(double pct) {
        return String.format(
                Locale.ROOT,
                "free carbonate of %.1f %% would use up %,.0f lb of sulfur on 1,000 ft² of a furrow slice before the pH"
                        + " falls: it is not practical to acidify this soil",
                pct,
                carbonateLbAcre(pct) * SoilMass.KG_M2_PER_LB_ACRE * 1000 / Factors.G_M2_PER_LB_1000FT2);
    }

    /** Sulfur that free carbonate uses up, lb on an acre of 2,000,000 lb. */
    static double carbonateLbAcre(double carbonatePct) {
        return carbonatePct / 100 * SoilMass.FURROW_SLICE_LB_ACRE / CACO3_PER_S;
    }

    private Advice<Sulfur> needed(SampleTest test, double ph, NamedRow cap) {
        Optional<Texture> texture = test.texture();
        if (texture.isEmpty()) {
            return Advice.refused("the need for sulfur depends on texture: fill in sand, silt and clay");
        }
        Optional<Double> depthM = test.one(Element.PH)
                .flatMap(v -> v.made().depthM().stream().boxed().findFirst());
        if (depthM.filter(d -> d > 0).isEmpty()) {
            return Advice.refused("the depth of the sample is not known: fill in depth_cm");
        }
        OptionalDouble lbAcre = SulfurTable.of(options.tables(), SulfurTable.ALKALINE)
                .lbAcre(ph, options.lime().targetPh(), texture.get().group());
        if (lbAcre.isEmpty()) {
            return Advice.refused("the table of sulfur reaches from pH 8.5 down to 6.5, and not from " + ph + " to "
                    + options.lime().targetPh());
        }
        double scale = depthM.get() / SoilMass.FURROW_SLICE_M;
        Account account = Account.of(
                        "sulfur = table(pH, texture) − table(target, texture), to the depth sampled",
                        "Sources disagree by a factor of two or more; the table is copied from memory. Test again each"
                                + " year.",
                        options.tables().source("western-handbook"),
                        options.tables().source("southern-lawns"),
                        options.tables().source("rhs-acidify"),
                        options.tables().origin(cap).source())
                .with("pH", ph)
                .with("target_pH", options.lime().targetPh())
                .with("texture", texture.get().label())
                .with("rate_lb_acre", lbAcre.getAsDouble())
                .with("depth_sampled_over_furrow_slice", scale);
        return Advice.given(planned(lbAcre.getAsDouble() * SoilMass.KG_M2_PER_LB_ACRE * scale, cap), account);
    }

    private static Sulfur planned(double kgM2, NamedRow cap) {
        double kgM2PerLbM = Factors.G_M2_PER_LB_1000FT2 / 1000;
        List<Double> doses = Doses.split(kgM2, cap.number("most_lb_1000ft2") * kgM2PerLbM);
        return new Sulfur(
                kgM2,
                doses,
                Doses.years(doses, cap.number("most_year_lb_1000ft2") * kgM2PerLbM),
                List.of(
                        "Drop vinegar on the soil first: if it fizzes, it holds free lime and sulfur will not help.",
                        "No more than " + Questions.plain(cap.number("most_lb_1000ft2"))
                                + " lb on 1,000 ft² at a time and "
                                + Questions.plain(cap.number("most_year_lb_1000ft2"))
                                + " a year, below 75 °F, watered in at once; much less on turf mown low."));
    }
}
