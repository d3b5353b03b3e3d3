package loamline.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Region;
import loamline.units.UnitSystem;

/**
 * What was found in a part of the lawn that struggles.
 *
 * @param name its word, or the cores it holds
 * @param spot where it was drawn; empty if only the cores show it
 * @param cores ids of those logged in it; may be empty
 * @param comparisons with the rest of the lawn
 * @param causes all of them, the weightiest first
 */
public record AreaFinding(
        String name,
        Optional<Region> spot,
        List<String> cores,
        List<Comparison> comparisons,
        List<RankedCause> causes) {
    private static final int UNTESTED_TOLD = 3;

    public AreaFinding {
        cores = List.copyOf(cores);
        comparisons = List.copyOf(comparisons);
        causes = List.copyOf(causes);
    }

    /** The likely cause; empty if there is not enough evidence to name one. */
    public Optional<RankedCause> likely() {
        return causes.stream()
                .filter(cause -> cause.standing() == RankedCause.Standing.LIKELY)
                .findFirst();
    }

    /** The title of the likely cause, or that there is not enough evidence. */
    public String title() {
        return likely().map(cause -> cause.cause().title()).orElse("Not enough evidence");
    }

    /** The conclusion for a client, in sentences. */
    public String words(UnitSystem units) {
        return likely().map(cause -> because(cause, units)).orElseGet(this::open);
    }

    private static String because(RankedCause likely, UnitSystem units) {
        String reasons = likely.evidence(Evidence.Stand.FOR).stream()
                .map(evidence -> evidence.words(units))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        return likely.cause().client() + " We found: " + reasons + ".";
    }

    private String open() {
        if (cores.isEmpty()) {
            return "No core was logged here. Take one or two in it, and one beside it, before anything is done.";
        }
        List<RankedCause> possible = standing(RankedCause.Standing.POSSIBLE).toList();
        String may = possible.isEmpty()
                ? "Nothing that was read explains it."
                : "It may be: "
                        + possible.stream()
                                .map(cause -> lower(cause.cause().title()))
                                .collect(Collectors.joining("; "))
                        + ".";
        String next = Stream.concat(possible.stream(), standing(RankedCause.Standing.UNTESTED))
                .limit(UNTESTED_TOLD)
                .map(cause -> cause.cause().confirm())
                .collect(Collectors.joining(" "));
        return may + (next.isEmpty() ? "" : " What would tell: " + next);
    }

    private Stream<RankedCause> standing(RankedCause.Standing standing) {
        return causes.stream().filter(cause -> cause.standing() == standing);
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
