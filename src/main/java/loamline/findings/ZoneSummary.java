package loamline.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A reading over the cores of a zone.
 *
 * @param n cores that have it
 * @param sd standard deviation of the cores, n − 1 below; empty for a single core
 */
public record ZoneSummary(
        String zone,
        Quantity quantity,
        int n,
        double mean,
        OptionalDouble sd,
        double least,
        double median,
        double most) {

    /** Zone by zone in the order of the cores, quantity by quantity; those without a value are left out. */
    static List<ZoneSummary> of(List<LoggedCore> cores) {
        List<ZoneSummary> summaries = new ArrayList<>();
        List<String> zones =
                cores.stream().map(core -> core.core().zone()).distinct().collect(Collectors.toList());
        for (String zone : zones) {
            List<LoggedCore> own = cores.stream()
                    .filter(core -> core.core().zone().equals(zone))
                    .toList();
            for (Quantity quantity : Quantity.values()) {
                double[] values = Comparison.values(own, quantity);
                if (values.length > 0) {
                    summaries.add(of(zone, quantity, values));
                }
            }
        }
        return List.copyOf(summaries);
    }

    private static ZoneSummary of(String zone, Quantity quantity, double[] values) {
        Arrays.sort(values);
        int n = values.length;
        double mean = Arrays.stream(values).average().orElse(Double.NaN);
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        double median = (values[(n - 1) / 2] + values[n / 2]) / 2;
        return new ZoneSummary(
                zone,
                quantity,
                n,
                mean,
                n > 1 ? OptionalDouble.of(Math.sqrt(squares / (n - 1))) : OptionalDouble.empty(),
                values[0],
                median,
                values[n - 1]);
    }
}
