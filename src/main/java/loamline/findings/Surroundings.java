package loamline.findings;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.Grid;
import loamline.raster.Mask;
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

    /** What is modelled over a spot, as the mean of its cells. */
    Map<Quantity, Double> over(Region spot) {
        Map<Quantity, Double> means = new LinkedHashMap<>();
        Optional<Grid> rate = rate();
        double mean = rate.map(Surroundings::mean).orElse(0.0);
        share(mean(rate, spot), mean).ifPresent(share -> means.put(Quantity.WATER, share));
        mean(sun.map(SunStudy::hours), spot).ifPresent(hours -> means.put(Quantity.SUN, hours));
        return means;
    }

    private static OptionalDouble mean(Optional<Grid> grid, Region spot) {
        return grid.stream()
                .flatMapToDouble(
                        g -> Arrays.stream(Mask.of(g.spec(), spot).indexes()).mapToDouble(g::at))
                .filter(v -> !Double.isNaN(v))
                .average();
    }

    private Optional<Grid> rate() {
        return water.filter(w -> !w.valves().isEmpty()).flatMap(Water::rateMmH);
    }

    /** Cores with what is modelled at their places. */
    List<LoggedCore> beside(List<LoggedCore> cores) {
        Optional<Grid> rate = rate();
        double mean = rate.map(Surroundings::mean).orElse(0.0);
        Optional<Grid> hours = sun.map(SunStudy::hours);
        return cores.stream()
                .map(core -> core.with(
                                Quantity.WATER, share(at(rate, core.core().at()), mean))
                        .with(Quantity.SUN, at(hours, core.core().at())))
                .toList();
    }

    private static OptionalDouble share(OptionalDouble rate, double mean) {
        return rate.isPresent() && mean > 0 ? OptionalDouble.of(rate.getAsDouble() / mean) : OptionalDouble.empty();
    }

    private static double mean(Grid grid) {
        return Arrays.stream(grid.values())
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(0);
    }

    private static OptionalDouble at(Optional<Grid> grid, Point p) {
        return grid.stream()
                .flatMapToDouble(g -> g.spec().indexOf(p).stream().mapToDouble(g::at))
                .filter(v -> !Double.isNaN(v))
                .findFirst();
    }

    /** What a guideline aims at; 1 is below it, 3 above. */
    private static final int AIMED_AT = 2;

    /** By zone: 1 where phosphorus is rated below the guideline's aim, 2 at it, 3 above; empty where it is not rated. */
    Map<String, OptionalDouble> phosphorus() {
        return byZone(sample -> sample.ratings().stream()
                .filter(rating -> rating.value().element() == Element.P)
                .flatMap(rating -> rating.standing().value().stream())
                .mapToDouble((Rating.Standing standing) ->
                        AIMED_AT + Integer.signum(standing.band().level()))
                .findFirst());
    }

    /** By zone: pH in water. */
    Map<String, OptionalDouble> ph() {
        return byZone(sample -> sample.waterPh().stream().mapToDouble(ph -> ph).findFirst());
    }

    private Map<String, OptionalDouble> byZone(Function<SampleResult, OptionalDouble> reading) {
        Map<String, OptionalDouble> zones = new LinkedHashMap<>();
        soil.stream()
                .flatMap(report -> report.samples().stream())
                .forEach(sample -> sample.zones().forEach(zone -> zones.put(zone, reading.apply(sample))));
        return zones;
    }
}
