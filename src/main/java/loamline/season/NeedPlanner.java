package loamline.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.reference.TurfTables.Grass;
import loamline.soil.Advice;
import loamline.soil.Gypsum;
import loamline.soil.Lime;
import loamline.soil.SampleResult;
import loamline.soil.SoilReport;
import loamline.soil.Sulfur;

/** From targets, tests and ledger to what each zone needs. */
final class NeedPlanner {
    private static final double G_PER_KG = 1000;

    private final SeasonInputs inputs;
    /** What the tests mean, by nitrogen, from which the use of P and K follows. */
    private final Map<Double, SoilReport> reports = new HashMap<>();

    NeedPlanner(SeasonInputs inputs) {
        this.inputs = inputs;
    }

    List<ZoneSeason> zones() {
        return inputs.grounds().stream().map(this::zone).toList();
    }

    private ZoneSeason zone(Ground ground) {
        Target target = inputs.target(ground.name());
        String grassName = target.grass().isEmpty() ? ground.grass() : target.grass();
        Optional<Grass> grass = inputs.options().tables().grass(grassName);
        Found found = new Found(new EnumMap<>(Nutrient.class), new EnumMap<>(Nutrient.class), new ArrayList<>());
        Optional<NitrogenNeed> nitrogen =
                NitrogenNeed.of(target, grass, inputs.shade(target, ground.name()), inputs.options());
        nitrogen.ifPresentOrElse(
                n -> {
                    found.put(Nutrient.N, n.gM2(), n.account());
                    found.questions().addAll(n.assumed());
                },
                () -> found.questions().add(noNitrogen(grassName, target)));
        Optional<SampleResult> sample = sample(ground.name(), nitrogen.map(NitrogenNeed::gM2));
        sample.ifPresentOrElse(
                s -> soil(s, found),
                () -> found.questions()
                        .add(
                                "no soil sample names this zone: phosphate, potash and lime are left open until one does"));
        CompostCheck.question(target).ifPresent(found.questions()::add);
        return new ZoneSeason(
                ground,
                target,
                grass,
                sample,
                found.need(),
                service(ground.name(), found),
                found.questions(),
                found.accounts());
    }

    private String noNitrogen(String grass, Target target) {
        return inputs.options().tables().grass(grass).isEmpty()
                ? "“" + grass + "” is no grass that the tables know: fill in grass, or n_g_m2"
                : "no nitrogen figure is held for " + grass + " in "
                        + NitrogenNeed.region(target, inputs.options()) + ": fill in n_g_m2, or a region out of "
                        + String.join(", ", inputs.options().tables().regions());
    }

    private record Found(Map<Nutrient, Double> need, Map<Nutrient, Account> accounts, List<String> questions) {
        void put(Nutrient nutrient, double gM2, Account account) {
            need.put(nutrient, gM2);
            accounts.put(nutrient, account);
        }

        void put(Nutrient nutrient, Advice<Double> gM2) {
            gM2.value().ifPresent(amount -> need.put(nutrient, amount));
            gM2.account().ifPresent(account -> accounts.put(nutrient, account));
            if (!gM2.isGiven()) {
                questions.add(nutrient.word() + ": " + gM2.reason());
            }
        }

        /** What is only asked for where a test gives it. */
        void putGiven(Nutrient nutrient, Advice<Double> gM2) {
            if (gM2.isGiven()) {
                put(nutrient, gM2);
            }
        }
    }

    private static void soil(SampleResult sample, Found found) {
        found.put(Nutrient.P2O5, sample.needs().p2o5GM2());
        found.put(Nutrient.K2O, sample.needs().k2oGM2());
        found.put(Nutrient.LIME, sample.lime().map(Lime::cceKgM2).map(kg -> G_PER_KG * kg));
        found.putGiven(Nutrient.SULFUR, sample.sulfur().map(NeedPlanner::firstYear));
        found.putGiven(Nutrient.GYPSUM, sample.gypsum().map(Gypsum::kgM2).map(kg -> G_PER_KG * kg));
    }

    private static double firstYear(Sulfur sulfur) {
        double kg = 0;
        for (int i = 0; i < sulfur.dosesKgM2().size(); i++) {
            kg += sulfur.years().get(i) == 1 ? sulfur.dosesKgM2().get(i) : 0;
        }
        return G_PER_KG * kg;
    }

    /** The newest test that names a zone, read with the zone's nitrogen. */
    private Optional<SampleResult> sample(String zone, Optional<Double> nitrogenGM2) {
        double gM2 = nitrogenGM2.orElse(inputs.options().soil().nitrogenGM2());
        return reports
                .computeIfAbsent(
                        gM2,
                        n -> SoilReport.of(inputs.lab(), inputs.options().soil().withNitrogen(n)))
                .samples()
                .stream()
                .filter(s -> s.zones().stream().anyMatch(zone::equalsIgnoreCase))
                .max(Comparator.comparing(
                        s -> s.date().map(java.time.LocalDate::toEpochDay).orElse(Long.MIN_VALUE)));
    }

    private Map<Nutrient, Double> service(String zone, Found found) {
        Map<Nutrient, Double> service = new EnumMap<>(Nutrient.class);
        for (Visit visit : visits(zone).toList()) {
            for (Nutrient nutrient : List.of(Nutrient.N, Nutrient.P2O5, Nutrient.K2O)) {
                OptionalDouble gM2 = visit.gM2(nutrient);
                gM2.ifPresent(amount -> service.merge(nutrient, amount, Double::sum));
                if (gM2.isEmpty()) {
                    found.questions().add(unknown(visit, nutrient));
                }
            }
        }
        return service;
    }

    private Stream<Visit> visits(String zone) {
        return inputs.visits().stream().filter(visit -> visit.isOn(zone));
    }

    static String unknown(Visit visit, Nutrient nutrient) {
        return "the service's visit of " + visit.date().map(Object::toString).orElse("an unknown day")
                + (visit.product().isEmpty() ? "" : " (" + visit.product() + ")") + " brings an amount of "
                + nutrient.word() + " that cannot be worked out, and nothing is taken off for it: ask the company";
    }
}
