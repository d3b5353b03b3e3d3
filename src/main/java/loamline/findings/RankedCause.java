package loamline.findings;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import loamline.reference.Cause;

/**
 * A cause and how it stands in an area.
 *
 * @param points logarithm of odds: its prior and all evidence; only the order and the distance between causes mean
 *     anything
 * @param share of the weight of all causes together, and of “something else”, 0 to 1; weights are judgement, so this is
 *     no probability
 * @param evidence in the order of its signs
 */
public record RankedCause(Cause cause, Standing standing, double points, double share, List<Evidence> evidence) {
    /** How a cause stands. */
    public enum Standing {
        /** Its telling sign is there, and it outweighs all others. */
        LIKELY,
        /** Not ruled out. */
        POSSIBLE,
        /** Nobody looked for its telling sign. */
        UNTESTED,
        /** The evidence is against it. */
        UNLIKELY;

        /** Its name in files and on pages. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public RankedCause {
        evidence = List.copyOf(evidence);
    }

    RankedCause with(Standing changed, double ofAll) {
        return new RankedCause(cause, changed, points, ofAll, evidence);
    }

    /** The evidence that stands so. */
    public List<Evidence> evidence(Evidence.Stand stand) {
        return evidence.stream().filter(e -> e.stand() == stand).toList();
    }

    /** How its telling sign stands. */
    Evidence.Stand telling() {
        Stream<Evidence> telling = evidence.stream().filter(e -> e.sign().telling());
        return telling.map(Evidence::stand).findFirst().orElse(Evidence.Stand.MISSING);
    }
}
