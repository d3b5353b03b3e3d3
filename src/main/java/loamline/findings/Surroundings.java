package loamline.findings;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loamline.geometry.Point;
import loamline.raster.Grid;
import loamline.soil.Element;
import loamline.soil.Rating;
import loamline.soil.SampleResult;
import loamline.soil.SoilReport;
import loamline.sun.SunStudy;
import loamline.water.Water;

/**
 * What is known of the ground beside the log; each part may be missing.
 *
 * @param water modelled, without wind
 * @param sun modelled, on clear days
 * @param soil the laboratory's report
 */
public record Surroundings(Optional<Water> water, Optional<SunStudy> sun, Optional<SoilReport> soil) {
    /** Nothing but the log. */
    public static final Surroundings NONE = new Surroundings(Optional.empty(), Optional.empty(), Optional.empty());

    /** Cores with what is modelled at their places. */
    List<LoggedCore> beside(List<LoggedCore> cores) {
        Optional<Grid> rate = water.filter(w -> !w.valves().isEmpty()).flatMap(Water::rateMmH);
        double mean = rate.map(Surroundings::mean).orElse(0.0);
        Optional<Grid> hours = sun.map(SunStudy::hours);
        return cores.stream()
                .map(core -> core.with(Quantity.WATER, share(at(rate, core.core().at()), mean))
                        .with(Quantity.SUN, at(hours, core.core().at())))
                .toList();
    }

    private static OptionalDouble share(OptionalDouble rate, double mean) {
        return rate.isPresent() && mean > 0 ? OptionalDouble.of(rate.getAsDouble() / mean) : OptionalDouble.empty();
    }

    private static double mean(Grid grid) {
        return Arrays.stream(grid.values()).filter(v -> !Double.isNaN(v)).average().orElse(0);
    }

    private static OptionalDouble at(Optional<Grid> grid, Point p) {
        return grid.stream()
                .flatMapToDouble(g -> g.spec().indexOf(p).stream().mapToDouble(g::at))
                .filter(v -> !Double.isNaN(v))
                .findFirst();
    }

    /** By zone: −1 where phosphorus is rated below the guideline's aim, 0 at it, 1 above; empty where it is not rated. */
    Map<String, OptionalDouble> phosphorus() {
        return byZone(sample -> sample.ratings().stream()
                .filter(rating -> rating.value().element() == Element.P)
                .flatMap(rating -> rating.standing().value().stream())
                .mapToDouble((Rating.Standing standing) ->
                        Math.signum((double) standing.band().level()))
                .findFirst());
    }

    /** By zone: pH in water. */
    Map<String, OptionalDouble> ph() {
        return byZone(
                sample -> sample.waterPh().stream().mapToDouble(ph -> ph).findFirst());
    }

    private Map<String, OptionalDouble> byZone(Function<SampleResult, OptionalDouble> reading) {
        Map<String, OptionalDouble> zones = new LinkedHashMap<>();
        soil.stream()
                .flatMap(report -> report.samples().stream())
                .forEach(sample -> sample.zones().forEach(zone -> zones.put(zone, reading.apply(sample))));
        return zones;
    }
}
