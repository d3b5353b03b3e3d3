package loamline.sampling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Zones as points whose distances say how unlike they are.
 *
 * <p>Every trait that differs between zones has an area-weighted variance of 1: a number is divided by its
 * standard deviation, a word becomes one column a word, scaled together. A zone that lacks a trait takes the
 * weighted mean of those that have it, and so counts as unremarkable.
 *
 * @param traits the traits that differ, in order
 * @param columns by trait, then by column, one value a zone
 * @param words by trait, what a person would call each zone's value; empty if not known
 */
record TraitTable(List<String> traits, List<double[][]> columns, List<String[]> words) {
    /** Variance below this is rounding: no difference between zones. */
    private static final double NO_VARIANCE = 1e-12;

    private static final MathContext THREE_DIGITS = new MathContext(3);

    static TraitTable of(List<ZoneTraits> zones) {
        Builder table = new Builder(zones);
        table.number("trouble", ZoneTraits::trouble);
        table.number("slope", ZoneTraits::slopePct);
        table.word("valve", ZoneTraits::valve);
        table.word("grass", ZoneTraits::grass);
        return new TraitTable(List.copyOf(table.names), List.copyOf(table.columns), List.copyOf(table.words));
    }

    private static final class Builder {
        final List<String> names = new ArrayList<>();
        final List<double[][]> columns = new ArrayList<>();
        final List<String[]> words = new ArrayList<>();
        private final List<ZoneTraits> zones;

        Builder(List<ZoneTraits> zones) {
            this.zones = zones;
        }

        void number(String name, Function<ZoneTraits, OptionalDouble> trait) {
            double[] values = zones.stream()
                    .map(trait)
                    .mapToDouble(v -> v.orElse(Double.NaN))
                    .toArray();
            add(
                    name,
                    new double[][] {values},
                    Arrays.stream(values).mapToObj(TraitTable::shown).toArray(String[]::new));
        }

        void word(String name, Function<ZoneTraits, Optional<String>> trait) {
            String[] said = zones.stream().map(z -> trait.apply(z).orElse("")).toArray(String[]::new);
            double[][] indicators = Arrays.stream(said)
                    .filter(word -> !word.isEmpty())
                    .distinct()
                    .sorted()
                    .map(word -> Arrays.stream(said)
                            .mapToDouble(s -> s.isEmpty() ? Double.NaN : s.equals(word) ? 1 : 0)
                            .toArray())
                    .toArray(double[][]::new);
            add(name, indicators, said);
        }

        private void add(String name, double[][] raw, String[] said) {
            double variance = 0;
            for (double[] column : raw) {
                variance += centre(column);
            }
            if (variance > NO_VARIANCE) {
                double scale = 1 / Math.sqrt(variance);
                for (double[] column : raw) {
                    Arrays.setAll(column, i -> column[i] * scale);
                }
                names.add(name);
                columns.add(raw);
                words.add(said);
            }
        }

        /** Moves the weighted mean to 0, fills gaps with it, and gives the weighted variance. */
        private double centre(double[] column) {
            double weight = 0;
            double sum = 0;
            double total = 0;
            for (int i = 0; i < column.length; i++) {
                total += zones.get(i).areaM2();
                if (!Double.isNaN(column[i])) {
                    weight += zones.get(i).areaM2();
                    sum += zones.get(i).areaM2() * column[i];
                }
            }
            double mean = weight == 0 ? 0 : sum / weight;
            double squares = 0;
            for (int i = 0; i < column.length; i++) {
                column[i] = Double.isNaN(column[i]) ? 0 : column[i] - mean;
                squares += zones.get(i).areaM2() * column[i] * column[i];
            }
            return squares / total;
        }
    }

    private static String shown(double value) {
        return Double.isNaN(value)
                ? ""
                : new BigDecimal(value).round(THREE_DIGITS).stripTrailingZeros().toPlainString();
    }

    /** Squared distance between two weighted groups of zones along one trait. */
    double squaredDistance(int trait, double[] shareA, double[] shareB) {
        double sum = 0;
        for (double[] column : columns.get(trait)) {
            double difference = 0;
            for (int i = 0; i < column.length; i++) {
                difference += (shareA[i] - shareB[i]) * column[i];
            }
            sum += difference * difference;
        }
        return sum;
    }
}
