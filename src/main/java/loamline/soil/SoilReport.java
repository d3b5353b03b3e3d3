package loamline.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.reference.SoilTables.Guideline;

/**
 * What a file of laboratory values means.
 *
 * @param samples in the order of their first lines; empty for an empty file
 * @param problems everything that is open or wrong in the values, in the order of samples and lines
 */
public record SoilReport(List<SampleResult> samples, List<Problem> problems) {
    public SoilReport {
        samples = List.copyOf(samples);
        problems = List.copyOf(problems);
    }

    /** Interprets values. The same values and options give the same report. */
    public static SoilReport of(List<LabValue> values, SoilOptions options) {
        List<SampleResult> samples = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (SampleTest test : SampleTest.of(values, options.tables())) {
            SampleResult result = result(test, options);
            samples.add(result);
            problems.addAll(new SampleDoubts(test, result).problems());
        }
        if (samples.isEmpty()) {
            problems.add(Problem.error("LAB_EMPTY", Where.WHOLE, "holds no value that can be read: fill in its rows"));
        }
        return new SoilReport(samples, problems);
    }

    private static SampleResult result(SampleTest test, SoilOptions options) {
        Optional<Guideline> named = options.guideline().flatMap(options.tables()::guideline);
        List<Rating> ratings = new Rater(options.tables(), named).ratings(test);
        Advice<Exchange> exchange = Exchange.of(test);
        Sodium sodium = Sodium.of(test, exchange);
        Advice<Lime> lime = new LimeAdvice(options).of(test, exchange);
        Advice<Sulfur> sulfur = new SulfurAdvice(options).of(test);
        Advice<Gypsum> gypsum = sodium.gypsum(test, exchange);
        Needs needs = new NeedAdvice(options).of(test, ratings);
        return new SampleResult(
                test.id(),
                test.zones(),
                test.values().stream()
                        .map(LabValue::lab)
                        .filter(lab -> !lab.isEmpty())
                        .distinct()
                        .toList(),
                test.date(),
                ratings,
                test.texture(),
                exchange,
                exchange.value().map(e -> Saturation.of(e, options.tables())).orElse(List.of()),
                sodium,
                lime,
                sulfur,
                gypsum,
                needs,
                Recommended.of(test),
                new Cautions(options).of(test, sodium, needs));
    }
}
