package loamline.desk.foot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Shape;
import loamline.yard.Feature;
import loamline.yard.History;
import loamline.yard.Repairs;
import loamline.yard.Yard;

/**
 * A problem as the foot tells it.
 *
 * @param words what is the matter, a sentence
 * @param feature key of the feature it is about; empty for the yard as a whole
 * @param at where to look
 * @param repair what mends it at one click
 */
record Trouble(
        Severity severity, String words, Optional<String> feature, Optional<Point> at, Optional<History.Step> repair) {
    /** What finds the place in a file; here a click leads there. */
    private static final Pattern COORDINATES = Pattern.compile(" at \\[-?[\\d.]+, -?[\\d.]+]");

    /** All problems of a yard, the gravest first, else in their order. */
    static List<Trouble> of(List<Problem> problems, Yard yard) {
        return problems.stream()
                .sorted(Comparator.comparing(Problem::severity).reversed())
                .map(problem -> of(problem, yard))
                .toList();
    }

    private static Trouble of(Problem problem, Yard yard) {
        int index = problem.where().featureIndex().orElse(-1);
        Optional<Feature> feature = index >= 0 && index < yard.features().size()
                ? Optional.of(yard.features().get(index))
                : Optional.empty();
        return new Trouble(
                problem.severity(),
                sentence(problem.message()),
                feature.map(Feature::key),
                feature.flatMap(Feature::shape).flatMap(Trouble::middle),
                Repairs.of(problem, yard));
    }

    private static Optional<Point> middle(Shape shape) {
        Optional<Point> inside =
                shape instanceof Outline outline ? Region.of(outline).innerPoint() : Optional.empty();
        return inside.or(() -> Box.around(shape.vertices()).map(Box::centre));
    }

    private static String sentence(String message) {
        String plain = COORDINATES.matcher(message).replaceAll("");
        String sentence = plain.isEmpty() ? "" : plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    /** As in "1 error, 2 warnings"; notes are told only where there is nothing worse. */
    static String counted(List<Trouble> troubles) {
        List<String> counts = Stream.of(Severity.ERROR, Severity.WARNING)
                .map(severity -> counted(troubles, severity))
                .filter(count -> !count.isEmpty())
                .collect(Collectors.toCollection(ArrayList::new));
        if (counts.isEmpty()) {
            String notes = counted(troubles, Severity.INFO);
            return notes.isEmpty() ? "No problems found" : notes;
        }
        return String.join(", ", counts);
    }

    private static String counted(List<Trouble> troubles, Severity severity) {
        long n = troubles.stream().filter(t -> t.severity() == severity).count();
        return n == 0 ? "" : n + " " + word(severity) + (n == 1 ? "" : "s");
    }

    /** What a severity is called here. */
    static String word(Severity severity) {
        return severity == Severity.INFO ? "note" : severity.word();
    }

    /** The gravest there is; empty without troubles. */
    static Optional<Severity> worst(List<Trouble> troubles) {
        return troubles.stream().map(Trouble::severity).max(Comparator.naturalOrder());
    }
}
