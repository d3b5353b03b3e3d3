package loamline.season;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.reference.TurfTables.Grass;
import loamline.soil.SampleResult;

/**
 * What a zone needs, what a service brings of it, and what is left.
 *
 * <p>Amounts are g/m², lime as pure CaCO₃. A need that is missing is not known: {@link #questions} say what to fill in.
 * Service amounts are the sum of what is known; nothing stands in for visits that are not.
 *
 * @param sample the newest test that names the zone
 */
public record ZoneSeason(
        Ground ground,
        Target target,
        Optional<Grass> grass,
        Optional<SampleResult> sample,
        Map<Nutrient, Double> need,
        Map<Nutrient, Double> service,
        List<String> questions,
        Map<Nutrient, Account> accounts) {
    public ZoneSeason {
        need = copy(need);
        service = copy(service);
        questions = List.copyOf(questions);
        accounts = copy(accounts);
    }

    private static <T> Map<Nutrient, T> copy(Map<Nutrient, T> map) {
        Map<Nutrient, T> copy = new EnumMap<>(Nutrient.class);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    public String name() {
        return ground.name();
    }

    /** What the zone's compost brings, g/m²; 0 where that is not known. */
    public double compostGM2(Nutrient nutrient) {
        return nutrient == Nutrient.P2O5 ? CompostCheck.brought(target).orElse(0) : 0;
    }

    /** What is still to be spread, 0 or more, with service and compost taken off; empty if the need is not known. */
    public OptionalDouble remaining(Nutrient nutrient) {
        Double needed = need.get(nutrient);
        return needed == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, needed - service.getOrDefault(nutrient, 0.0) - compostGM2(nutrient)));
    }

    /** What the service brings beyond the need, 0 or more; empty if the need is not known. */
    public OptionalDouble surplus(Nutrient nutrient) {
        Double needed = need.get(nutrient);
        return needed == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, service.getOrDefault(nutrient, 0.0) - needed));
    }
}
