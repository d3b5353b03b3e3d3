package loamline.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.CellMosaic;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import loamline.scene.CupLegend;
import loamline.scene.CupMap;
import loamline.scene.Ink;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.water.cups.MeasuredRates;

/**
 * Measured rates in a few classes of round width, each with its colour.
 *
 * @param firstMmH lower end of the first class
 * @param stepMmH width of a class
 * @param count how many, 1 to {@link #MOST}
 */
record RateClasses(double firstMmH, double stepMmH, int count, UnitSystem units) {
    static final int MOST = 6;

    /** Cividis at equal steps: Nuñez, Anderton and Renslow 2018, PLoS ONE 13(7):e0199239. */
    private static final List<Integer> CIVIDIS = List.of(0x00204D, 0x31446B, 0x666970, 0x958F78, 0xCBBA69, 0xFFEA46);

    private static final double OPACITY = 0.5;
    /** Digits of a border: steps are round, and no more than {@link #MOST} of them reach it. */
    private static final int EDGE_DIGITS = 4;

    private static final double[] ROUND = {1, 2, 2.5, 5, 10};

    /** Rates closer together than this share of their mean are one class, and so are rates of 0. */
    private static final double ALIKE = 1e-3;

    /** The classes that hold all rates, their borders round in the units shown. */
    static RateClasses of(MeasuredRates rates, UnitSystem units) {
        double[] known = Arrays.stream(rates.ratesMmH())
                .filter(rate -> !Double.isNaN(rate))
                .map(rate -> Measure.DEPTH_RATE.toShown(rate, units))
                .toArray();
        double least = Arrays.stream(known).min().orElse(0);
        double most = Arrays.stream(known).max().orElse(0);
        double span = Math.max(most - least, ALIKE * most);
        double power = span > 0 ? Math.pow(10, Math.floor(Math.log10(span / MOST))) : 1;
        for (double round : ROUND) {
            double step = round * power;
            double first = Math.floor(least / step) * step;
            int count = Math.max(1, (int) Math.ceil((most - first) / step));
            if (count <= MOST) {
                return new RateClasses(
                        Measure.DEPTH_RATE.toStored(first, units),
                        Measure.DEPTH_RATE.toStored(step, units),
                        count,
                        units);
            }
        }
        throw new IllegalStateException("ten times a tenth of the span holds the span");
    }

    private Ink ink(int index) {
        int colour = count == 1 ? MOST / 2 : Math.round(index * (MOST - 1) / (float) (count - 1));
        return Ink.of(CIVIDIS.get(colour)).at(OPACITY);
    }

    private int classOf(double rate) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor((rate - firstMmH) / stepMmH)));
    }

    List<CupLegend.Range> legend() {
        return IntStream.range(0, count)
                .mapToObj(i -> new CupLegend.Range(
                        edge(i) + "–" + edge(i + 1) + (i == count - 1 ? " " + Measure.DEPTH_RATE.symbol(units) : ""),
                        ink(i)))
                .toList();
    }

    private String edge(int index) {
        double shown = Measure.DEPTH_RATE.toShown(firstMmH + index * stepMmH, units);
        return new BigDecimal(shown, new MathContext(EDGE_DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The ground of each class. */
    List<CupMap.Wash> washes(MeasuredRates rates) {
        double[] values = rates.ratesMmH();
        int[] cells = IntStream.range(0, values.length)
                .filter(i -> !Double.isNaN(values[i]))
                .toArray();
        int[] labels = Arrays.stream(cells).map(i -> classOf(values[i])).toArray();
        GridSpec grid = rates.grid();
        List<Region> grounds = new CellMosaic(grid.originX(), grid.originY(), grid.cellM(), grid.columns())
                .regions(cells, labels, count);
        List<CupMap.Wash> washes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            washes.add(new CupMap.Wash(grounds.get(i), ink(i)));
        }
        return washes;
    }
}
