package loamline.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What another company put down, as far as it is told.
 *
 * @param zones where; empty for everywhere
 * @param percents analysis of the product, per cent
 * @param slowNPct slow share of the nitrogen, per cent
 * @param kg weight of product
 * @param areaM2 ground that it was spread on
 * @param nGM2 rate of nitrogen, g/m²
 * @param line of the ledger
 */
public record Visit(
        Optional<LocalDate> date,
        String product,
        List<String> zones,
        Percents percents,
        OptionalDouble slowNPct,
        OptionalDouble kg,
        OptionalDouble areaM2,
        OptionalDouble nGM2,
        int line) {
    /** Label figures that are told. */
    public record Percents(OptionalDouble n, OptionalDouble p2o5, OptionalDouble k2o) {}

    public Visit {
        zones = List.copyOf(zones);
    }

    boolean isOn(String zone) {
        return zones.isEmpty() || zones.stream().anyMatch(zone::equalsIgnoreCase);
    }

    /** What it brought of a nutrient, g/m²; empty if that cannot be worked out from what is told. */
    public OptionalDouble gM2(Nutrient nutrient) {
        OptionalDouble pct = switch (nutrient) {
            case N -> percents.n();
            case P2O5 -> percents.p2o5();
            case K2O -> percents.k2o();
            default -> OptionalDouble.of(0);
        };
        if (nutrient == Nutrient.N && nGM2.isPresent()) {
            return nGM2;
        }
        if (pct.isPresent() && pct.getAsDouble() == 0) {
            return OptionalDouble.of(0);
        }
        OptionalDouble rate = productGM2();
        return pct.isPresent() && rate.isPresent()
                ? OptionalDouble.of(rate.getAsDouble() * pct.getAsDouble() / 100)
                : OptionalDouble.empty();
    }

    /** Product, g/m²: from weight and area, else from the rate of nitrogen and its share. */
    public OptionalDouble productGM2() {
        if (kg.isPresent() && areaM2.isPresent() && areaM2.getAsDouble() > 0) {
            return OptionalDouble.of(1000 * kg.getAsDouble() / areaM2.getAsDouble());
        }
        return nGM2.isPresent() && percents.n().orElse(0) > 0
                ? OptionalDouble.of(100 * nGM2.getAsDouble() / percents.n().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Nitrogen that is not slow, g/m²; all of it where no slow share is told. */
    OptionalDouble quickNGM2() {
        OptionalDouble n = gM2(Nutrient.N);
        return n.isPresent() ? OptionalDouble.of(n.getAsDouble() * (1 - slowNPct.orElse(0) / 100)) : n;
    }
}
