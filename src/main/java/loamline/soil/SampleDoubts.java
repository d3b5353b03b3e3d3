package loamline.soil;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Problem;

/** Everything that is open or doubtful in a sample's newest test. */
record SampleDoubts(SampleTest test, SampleResult result) {
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        Questions questions = new Questions(test.tables());
        for (LabValue value : test.values()) {
            questions.about(value).forEach(q -> problems.add(q.problem(value)));
            unconverted(value).ifPresent(problems::add);
            undated(value).ifPresent(problems::add);
        }
        test.repeated()
                .forEach(v -> problems.add(Problem.warning(
                        "LAB_VALUE_TWICE",
                        v.where(),
                        v.element().key() + " of sample " + test.id()
                                + " is given twice in one test: the first counts; take one of them out")));
        sum().ifPresent(problems::add);
        capacity(questions).ifPresent(problems::add);
        return problems;
    }

    /** A sound value whose unit asks for something more, such as a density. */
    private Optional<Problem> unconverted(LabValue value) {
        if (!value.element().isNutrient()
                || value.isBy(Extractant.PASTE)
                || !test.all(value.element()).contains(value)) {
            return Optional.empty();
        }
        Advice<Double> ppm = new Concentrations(test.tables()).ppm(value);
        return ppm.isGiven()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "LAB_UNIT_OPEN",
                        value.where(),
                        "unit: " + value.element().key() + " of sample " + test.id() + ": " + ppm.reason()));
    }

    private Optional<Problem> undated(LabValue value) {
        return value.date().isEmpty() && test.date().isPresent()
                ? Optional.of(Problem.warning(
                        "LAB_DATE_MISSING",
                        value.where(),
                        "date: " + value.element().key() + " of sample " + test.id()
                                + " has no date and is taken for one of "
                                + test.date().get() + ": fill it in"))
                : Optional.empty();
    }

    private Optional<Problem> sum() {
        Optional<LabValue> sand = test.one(Element.SAND);
        Optional<LabValue> silt = test.one(Element.SILT);
        Optional<LabValue> clay = test.one(Element.CLAY);
        if (sand.isEmpty()
                || silt.isEmpty()
                || clay.isEmpty()
                || result.texture().isPresent()) {
            return Optional.empty();
        }
        Concentrations in = new Concentrations(test.tables());
        double sum = in.share(sand.get()).value().orElse(0.0)
                + in.share(silt.get()).value().orElse(0.0)
                + in.share(clay.get()).value().orElse(0.0);
        return Optional.of(Problem.error(
                "LAB_TEXTURE_SUM",
                clay.get().where(),
                String.format(
                        Locale.ROOT,
                        "value: sand, silt and clay of sample %s sum to %.1f %%, not to 100 %% within 1: correct them"
                                + " from the laboratory's sheet; the texture is left open",
                        test.id(),
                        sum)));
    }

    private Optional<Problem> capacity(Questions questions) {
        Optional<double[]> span = result.texture().flatMap(questions::cecSpan);
        Optional<Double> cec = test.one(Element.CEC)
                .map(LabValue::value)
                .or(() -> result.exchange().value().map(Exchange::cecMeq));
        if (span.isEmpty() || cec.isEmpty() || (cec.get() >= span.get()[0] && cec.get() <= span.get()[1])) {
            return Optional.empty();
        }
        LabValue at = test.one(Element.CEC)
                .or(() -> test.one(Element.CA))
                .orElse(test.values().get(0));
        return Optional.of(Problem.warning(
                "LAB_CEC_TEXTURE",
                at.where(),
                String.format(
                        Locale.ROOT,
                        "value: an exchange capacity of %.1f meq/100 g is unusual for %s (%.0f to %.0f): check texture,"
                                + " units and buffer pH of sample %s",
                        cec.get(),
                        result.texture().orElseThrow().label(),
                        span.get()[0],
                        span.get()[1],
                        test.id())));
    }
}
