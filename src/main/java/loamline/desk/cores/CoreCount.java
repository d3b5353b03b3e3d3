package loamline.desk.cores;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import loamline.account.Source;
import loamline.sampling.ExpectedError;

/**
 * How many cores are enough: what a bag's mean may be off with more and fewer cores.
 *
 * @param elements what is measured, the heads of the columns
 * @param rows by number of cores, the number in force among them
 * @param why the formula and its sources, a line each
 */
record CoreCount(List<String> elements, List<Row> rows, List<String> why) {
    private static final List<Integer> SHOWN = List.of(5, 8, 10, 12, 15, 20, 25, 30);

    /** Said of pH, for which no figure for cores of a lawn is at hand. */
    static final String PH =
            "pH varies least, less than 15 % between cores (from memory of Wilding 1985): cores that are"
                    + " enough for K are enough for pH.";

    /**
     * @param halfWidthsPct by element, per cent of the mean
     * @param current whether this is the number in force
     */
    record Row(int cores, List<Double> halfWidthsPct, boolean current) {
        List<String> words() {
            return halfWidthsPct.stream()
                    .map(e -> String.format(Locale.ROOT, "± %.0f %%", e))
                    .toList();
        }
    }

    /** @param current cores a bag now; fewer than two have no error that could be told and get no row */
    static CoreCount of(int current) {
        List<Row> rows = Stream.concat(SHOWN.stream(), Stream.of(current))
                .filter(n -> n >= 2)
                .distinct()
                .sorted()
                .map(n -> new Row(
                        n,
                        ExpectedError.of(n).stream()
                                .map(ExpectedError::halfWidthPct)
                                .toList(),
                        n == current))
                .toList();
        List<ExpectedError> any = ExpectedError.of(SHOWN.get(0));
        Stream<String> formula = any.stream()
                .limit(1)
                .map(e -> e.account().formula() + ", 90 % sure. " + e.account().note());
        Stream<String> sources = any.stream()
                .flatMap(e -> e.account().sources().stream())
                .map(Source::citation)
                .distinct();
        return new CoreCount(
                any.stream().map(ExpectedError::element).toList(),
                rows,
                Stream.of(formula, Stream.of(PH), sources).flatMap(s -> s).toList());
    }
}
