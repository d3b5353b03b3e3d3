package loamline.season;

import java.util.List;
import loamline.soil.LabValue;

/**
 * Everything that a season is planned from.
 *
 * @param grounds the yard's zones
 * @param lab laboratory values; zones that no sample names get nitrogen only
 * @param products the price list
 * @param visits another company's ledger
 * @param targets by zone; zones without one get the usual for their grass
 */
public record SeasonInputs(
        List<Ground> grounds,
        List<LabValue> lab,
        List<Product> products,
        List<Visit> visits,
        List<Target> targets,
        SeasonOptions options) {
    public SeasonInputs {
        grounds = List.copyOf(grounds);
        lab = List.copyOf(lab);
        products = List.copyOf(products);
        visits = List.copyOf(visits);
        targets = List.copyOf(targets);
    }

    Target target(String zone) {
        return targets.stream()
                .filter(target -> target.zone().equalsIgnoreCase(zone))
                .findFirst()
                .orElseGet(() -> Target.of(zone));
    }
}
