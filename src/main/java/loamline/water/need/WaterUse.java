package loamline.water.need;

import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import loamline.account.Account;
import loamline.account.Source;

/**
 * What a valve draws in a month, and what it costs.
 *
 * @param litres through the meter, what misses the turf among them
 * @param cost in the currency of the price; empty without a price
 * @param account how it came about
 */
public record WaterUse(Month month, double litres, OptionalDouble cost, Account account) {
    private static final Source ARITHMETIC = new Source("flow-times-time", "Flow times time is volume");

    /**
     * By month, in the order of the run times.
     *
     * @param flowLpm flow of the whole valve, L/min, 0 or more
     * @param pricePerM3 price of a cubic metre of water, with sewer charges if they follow the meter; 0 or more
     */
    public static List<WaterUse> of(RunTimes runTimes, double flowLpm, OptionalDouble pricePerM3) {
        DoubleStream.concat(DoubleStream.of(flowLpm), pricePerM3.stream()).forEach(WaterUse::requireNotNegative);
        return runTimes.months().stream()
                .map(month -> month(month, flowLpm, pricePerM3))
                .toList();
    }

    private static WaterUse month(MonthRunTime month, double flowLpm, OptionalDouble pricePerM3) {
        double litres = flowLpm * month.monthMinutes();
        Account account = Account.of("V = q · minutes · waterings", "At the usual weather of the month.", ARITHMETIC)
                .with("q_lpm", flowLpm)
                .with("minutes", month.minutes())
                .with("waterings", month.waterings());
        return pricePerM3.isEmpty()
                ? new WaterUse(month.month(), litres, OptionalDouble.empty(), account)
                : new WaterUse(
                        month.month(),
                        litres,
                        OptionalDouble.of(litres / 1000 * pricePerM3.getAsDouble()),
                        account.with("price_per_m3", pricePerM3.getAsDouble()));
    }

    private static void requireNotNegative(double value) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException("flow and price must be 0 or more, not " + value);
        }
    }
}
