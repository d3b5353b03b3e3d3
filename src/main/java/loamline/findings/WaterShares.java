package loamline.findings;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.raster.Mask;
import loamline.water.Water;
import loamline.water.cups.CupTest;
import loamline.water.cups.MeasuredRates;

/**
 * The water that a place gets, as a share of the turf's mean, if every valve runs for the same time. Measured beats
 * modelled: where the cups of a valve carry, what they caught stands in the place of what its heads throw as mapped. Of
 * two tests of one valve the later in the list counts.
 */
final class WaterShares {
    private final Optional<Grid> share;
    private final BitSet measured;

    private WaterShares(Optional<Grid> share, BitSet measured) {
        this.share = share;
        this.measured = measured;
    }

    /** From heads as mapped and cups; there is no share without a rate as mapped, nor where its mean is 0. */
    static WaterShares of(Optional<Water> mapped, List<CupTest> tests) {
        BitSet measured = new BitSet();
        Optional<Grid> rate = mapped.filter(w -> !w.valves().isEmpty())
                .flatMap(water -> water.rateMmH().map(all -> corrected(water, all, tests, measured)));
        double mean = rate.stream()
                .flatMapToDouble(grid -> Arrays.stream(grid.values()))
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(0);
        return new WaterShares(rate.filter(r -> mean > 0).map(r -> r.map(v -> v / mean)), measured);
    }

    private static Grid corrected(Water water, Grid all, List<CupTest> tests, BitSet measured) {
        return Grid.of(all.spec(), rates -> {
            for (int cell = 0; cell < rates.length; cell++) {
                rates[cell] = all.at(cell);
            }
            for (int i = 0; i < tests.size(); i++) {
                String valve = tests.get(i).valve();
                boolean isLatest = tests.subList(i + 1, tests.size()).stream()
                        .noneMatch(later -> later.valve().equals(valve));
                Optional<Grid> modelled = water.rateMmH(valve);
                Optional<MeasuredRates> caught = tests.get(i).measured();
                if (isLatest && modelled.isPresent() && caught.isPresent()) {
                    correct(rates, modelled.get(), caught.get(), measured);
                }
            }
        });
    }

    private static void correct(double[] rates, Grid modelled, MeasuredRates caught, BitSet measured) {
        GridSpec spec = modelled.spec();
        for (int cell = 0; cell < rates.length; cell++) {
            OptionalDouble rate = at(caught.mmH(), spec.centre(cell));
            if (rate.isPresent() && !Double.isNaN(rates[cell])) {
                rates[cell] = Math.max(0, rates[cell] - modelled.at(cell)) + rate.getAsDouble();
                measured.set(cell);
            }
        }
    }

    static OptionalDouble at(Grid grid, Point p) {
        return grid.spec().indexOf(p).stream()
                .mapToDouble(grid::at)
                .filter(v -> !Double.isNaN(v))
                .findFirst();
    }

    /** At a place; empty where nothing is known. */
    OptionalDouble at(Point p) {
        return share.stream().flatMapToDouble(grid -> at(grid, p).stream()).findFirst();
    }

    /** Whether cups speak for a place. */
    boolean isMeasuredAt(Point p) {
        return share.stream()
                .flatMapToInt(grid -> grid.spec().indexOf(p).stream())
                .anyMatch(measured::get);
    }

    /** The mean over a spot; empty where nothing is known of it. */
    OptionalDouble over(Region spot) {
        return share.map(grid -> Arrays.stream(Mask.of(grid.spec(), spot).indexes())
                        .mapToDouble(grid::at)
                        .filter(v -> !Double.isNaN(v))
                        .average())
                .orElse(OptionalDouble.empty());
    }

    /** Whether cups speak for half of a spot's turf or more. */
    boolean isMeasuredOver(Region spot) {
        return share.filter(grid -> {
                    int[] known = Arrays.stream(Mask.of(grid.spec(), spot).indexes())
                            .filter(cell -> !Double.isNaN(grid.at(cell)))
                            .toArray();
                    return known.length > 0
                            && 2 * Arrays.stream(known).filter(measured::get).count() >= known.length;
                })
                .isPresent();
    }
}
