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
import loamline.water.cups.CupTest;

/**
 * What is known of the ground beside the log; each part may be missing.
 *
 * @param water modelled, without wind
 * @param cups tests of valves, the older first; where their cups carry they beat what is modelled
 * @param sun modelled, on clear days
 * @param soil the laboratory's report
 */
public record Surroundings(
        Optional<Water> water, List<CupTest> cups, Optional<SunStudy> sun, Optional<SoilReport> soil) {
    /** Nothing but the log. */
    public static final Surroundings NONE =
            new Surroundings(Optional.empty(), List.of(), Optional.empty(), Optional.empty());

    public Surroundings {
        cups = List.copyOf(cups);
    }

    /** The water at any place, cups before what is mapped. */
    WaterShares waterShares() {
        return WaterShares.of(water, cups);
    }

    /** The valves whose cups say something of the ground between them. */
    public List<String> tested() {
        return cups.stream()
                .filter(test -> test.measured().isPresent())
                .map(CupTest::valve)
                .distinct()
                .toList();
    }

    /** What is known over a spot besides the cores, as the mean of its cells. */
    Over over(Region spot, WaterShares shares) {
        Map<Quantity, Double> means = new LinkedHashMap<>();
        shares.over(spot).ifPresent(share -> means.put(Quantity.WATER, share));
        mean(sun.map(SunStudy::hours), spot).ifPresent(hours -> means.put(Quantity.SUN, hours));
        return new Over(means, shares.isMeasuredOver(spot));
    }

    /**
     * What is known over a spot.
     *
     * @param means water and sun
     * @param waterMeasured whether cups speak for most of it
     */
    record Over(Map<Quantity, Double> means, boolean waterMeasured) {
        static final Over NOTHING = new Over(Map.of(), false);
    }

    private static OptionalDouble mean(Optional<Grid> grid, Region spot) {
        return grid.stream()
                .flatMapToDouble(
                        g -> Arrays.stream(Mask.of(g.spec(), spot).indexes()).mapToDouble(g::at))
                .filter(v -> !Double.isNaN(v))
                .average();
    }

    /** Cores with what is known at their places besides. */
    List<LoggedCore> beside(List<LoggedCore> cores) {
        WaterShares shares = waterShares();
        Optional<Grid> hours = sun.map(SunStudy::hours);
        return cores.stream()
                .map(core -> {
                    Point at = core.core().at();
                    return core.withWater(shares.at(at), shares.isMeasuredAt(at))
                            .with(
                                    Quantity.SUN,
                                    hours.map(grid -> WaterShares.at(grid, at)).orElse(OptionalDouble.empty()));
                })
                .toList();
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
