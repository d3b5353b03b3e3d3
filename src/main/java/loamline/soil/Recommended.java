package loamline.soil;

import java.util.Optional;
import loamline.account.Account;
import loamline.units.Factors;

/**
 * What the laboratory itself recommends in the newest test, g/m²; each empty where its report tells nothing.
 *
 * @param limeGM2 as CaCO₃ equivalent
 */
public record Recommended(Optional<Double> p2o5GM2, Optional<Double> k2oGM2, Optional<Double> limeGM2) {
    static Recommended of(SampleTest test) {
        return new Recommended(gM2(test, Element.REC_P2O5), gM2(test, Element.REC_K2O), gM2(test, Element.REC_LIME));
    }

    private static Optional<Double> gM2(SampleTest test, Element what) {
        return test.one(what).map(Recommended::gM2);
    }

    private static double gM2(LabValue value) {
        return switch (value.unit().orElseThrow()) {
            case LB_1000FT2 -> value.value() * Factors.G_M2_PER_LB_1000FT2;
            case LB_ACRE -> value.value() * SoilMass.KG_M2_PER_LB_ACRE * 1000;
            case KG_HA -> value.value() / 10;
            default -> value.value();
        };
    }

    /**
     * Our advice, or the laboratory's where we have none.
     *
     * @param what what the laboratory recommends
     */
    static Advice<Double> elseOf(Advice<Double> ours, SampleTest test, Element what) {
        return ours.isGiven()
                ? ours
                : test.one(what)
                        .map(value -> Advice.given(gM2(value), account(test, value, ours.reason())))
                        .orElse(ours);
    }

    /** How the laboratory's number came to be used. */
    static Account account(SampleTest test, LabValue value, String whyNotOurs) {
        return Account.of(
                        "need = recommendation of the laboratory",
                        "Taken because " + whyNotOurs + ".",
                        test.tables().source("laboratory"))
                .with("recommended_g_m2", gM2(value))
                .with("laboratory", value.lab().isEmpty() ? "not told" : value.lab());
    }

    static double limeLbM(LabValue value) {
        return gM2(value) / Factors.G_M2_PER_LB_1000FT2;
    }
}
