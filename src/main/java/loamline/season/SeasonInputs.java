package loamline.season;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.soil.LabValue;

/**
 * Everything that a season is planned from.
 *
 * @param grounds the yard's zones
 * @param lab laboratory values; zones that no sample names get nitrogen only
 * @param products the price list
 * @param visits another company's ledger
 * @param targets by zone; zones without one get the usual for their grass
 * @param sunHours direct sun of zones, hours a day in the growing season, where it was looked at
 */
public record SeasonInputs(
        List<Ground> grounds,
        List<LabValue> lab,
        List<Product> products,
        List<Visit> visits,
        List<Target> targets,
        SeasonOptions options,
        Map<String, Double> sunHours) {
    public SeasonInputs {
        grounds = List.copyOf(grounds);
        lab = List.copyOf(lab);
        products = List.copyOf(products);
        visits = List.copyOf(visits);
        targets = List.copyOf(targets);
        sunHours = Map.copyOf(sunHours);
    }

    /** Without a look at the sun. */
    public SeasonInputs(
            List<Ground> grounds,
            List<LabValue> lab,
            List<Product> products,
            List<Visit> visits,
            List<Target> targets,
            SeasonOptions options) {
        this(grounds, lab, products, visits, targets, options, Map.of());
    }

    public SeasonInputs withSun(Map<String, Double> hours) {
        return new SeasonInputs(grounds, lab, products, visits, targets, options, hours);
    }

    /** Whether the sun has a say: some zone's shade is not told. */
    public boolean asksForSun() {
        return grounds.stream()
                .anyMatch(ground -> target(ground.name()).keeping().shaded().isEmpty());
    }

    Shade shade(Target target, String zone) {
        Double hours = sunHours.get(zone);
        return Shade.of(target, hours == null ? OptionalDouble.empty() : OptionalDouble.of(hours));
    }

    Target target(String zone) {
        return targets.stream()
                .filter(target -> target.zone().equalsIgnoreCase(zone))
                .findFirst()
                .orElseGet(() -> Target.of(zone));
    }
}
