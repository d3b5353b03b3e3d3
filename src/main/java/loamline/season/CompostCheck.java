package loamline.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.units.Factors;

/** The phosphate that a zone's compost brings, beside what it needs and what the law allows. */
record CompostCheck(SeasonInputs inputs, Law law) {
    /** Less is nothing, g/m². */
    private static final double NOTHING_GM2 = 1e-6;

    static CompostCheck of(SeasonInputs inputs) {
        return new CompostCheck(inputs, Law.of(inputs.options()));
    }

    /** What is to be asked; empty if there is no compost or its analysis is told. */
    static Optional<String> question(Target target) {
        return target.topdressMm() > 0 && brought(target).isEmpty()
                ? Optional.of(
                        "the compost's phosphate is not known, and nothing is taken off for it: ask for its analysis"
                                + " and fill in compost_p_pct, compost_dry_pct and compost_kg_m3")
                : Optional.empty();
    }

    /** Phosphate, g/m²; 0 without compost, empty if its analysis is not told. */
    static OptionalDouble brought(Target target) {
        return target.topdressMm() == 0
                ? OptionalDouble.of(0)
                : Quantities.compostP2o5GM2(target.topdressMm() / 1000, target.compost());
    }

    /** How it came about, by JSON pointer. */
    Map<String, Account> accounts(List<ZoneSeason> zones) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            if (zones.get(i).compostGM2(Nutrient.P2O5) > 0) {
                accounts.put(
                        "/zones/" + i + "/compost/P2O5", account(zones.get(i).target()));
            }
        }
        return accounts;
    }

    private Account account(Target target) {
        return Account.of(
                        "P2O5 = depth · weight · dry · P · 2.29",
                        "All phosphorus of the compost: taken off the need and counted by the law, though the grass gets a"
                                + " part of it only in later years.",
                        inputs.options().tables().source("psu-compost"))
                .with("depth_mm", target.topdressMm())
                .with("weight_kg_m3", target.compost().kgM3().orElse(0))
                .with("dry_pct", target.compost().dryPct().orElse(0))
                .with("P_pct", target.compost().pPct().orElse(0));
    }

    List<Problem> problems(ZoneSeason zone) {
        double brought = zone.compostGM2(Nutrient.P2O5);
        List<Problem> problems = new ArrayList<>();
        if (brought > NOTHING_GM2) {
            beyondNeed(zone, brought).ifPresent(problems::add);
            unlawful(zone, brought).ifPresent(problems::add);
        }
        return problems;
    }

    private static Optional<Problem> beyondNeed(ZoneSeason zone, double brought) {
        Double need = zone.need().get(Nutrient.P2O5);
        if (need == null) {
            return Optional.empty();
        }
        double over = brought - Math.max(0, need - zone.service().getOrDefault(Nutrient.P2O5, 0.0));
        return over > NOTHING_GM2
                ? Optional.of(warning(
                        "COMPOST_BEYOND_NEED",
                        zone,
                        String.format(
                                Locale.ROOT,
                                "the compost brings %.1f g P2O5 to a square metre, %.1f more than is needed: lay less, or"
                                        + " one with less phosphorus",
                                brought,
                                over)))
                : Optional.empty();
    }

    private Optional<Problem> unlawful(ZoneSeason zone, double brought) {
        double year = brought + zone.service().getOrDefault(Nutrient.P2O5, 0.0);
        if (brought > law.capGM2("p2o5_dose_lb").orElse(Double.POSITIVE_INFINITY)
                || year > law.capGM2("p2o5_year_lb").orElse(Double.POSITIVE_INFINITY)) {
            return Optional.of(warning(
                    "COMPOST_ABOVE_CAP",
                    zone,
                    String.format(
                            Locale.ROOT,
                            "the compost brings %.1f g P2O5 to a square metre (%.2f lb on 1,000 ft²), more than the state's"
                                    + " cap: lay less, or one with less phosphorus",
                            brought,
                            brought / Factors.G_M2_PER_LB_1000FT2)));
        }
        return isAllowed(zone, brought)
                ? Optional.empty()
                : Optional.of(warning(
                        "COMPOST_BARRED",
                        zone,
                        "the compost brings phosphorus, which the state's law allows on a lawn only with a dated test that"
                                + " shows a need: test again, or leave the compost out"));
    }

    private boolean isAllowed(ZoneSeason zone, double brought) {
        OptionalDouble organic = law.capGM2("organic_p_lb");
        if (organic.isPresent() && brought / Quantities.P2O5_PER_P <= organic.getAsDouble()) {
            return true;
        }
        boolean needed =
                zone.need().getOrDefault(Nutrient.P2O5, 0.0) - zone.service().getOrDefault(Nutrient.P2O5, 0.0)
                        > NOTHING_GM2;
        return law.allowsPhosphorus(
                new GroundTasks(inputs).day(zone),
                zone.sample().flatMap(s -> s.date()).filter(date -> needed),
                zone.target().seed().bareShare().isPresent());
    }

    private static Problem warning(String code, ZoneSeason zone, String words) {
        return Problem.warning(code, Where.WHOLE, zone.name() + ": " + words);
    }
}
