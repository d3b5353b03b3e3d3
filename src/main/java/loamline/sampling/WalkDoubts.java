package loamline.sampling;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;

/** Where a walk is not quite the walk that was asked for. */
final class WalkDoubts {
    private WalkDoubts() {}

    /** @param coarsenedM how far walls were moved, as {@link loamline.sampling.walk.FreeSpace#coarsenedM} has it */
    static List<Problem> of(String walk, double coarsenedM) {
        if (coarsenedM == 0) {
            return List.of();
        }
        String moved = Double.isFinite(coarsenedM)
                ? String.format(
                        Locale.ROOT,
                        "were moved by up to %.2f m: walk %s is free but perhaps not the shortest, and passages narrower"
                                + " than %.2f m may be missing from it.",
                        coarsenedM,
                        walk,
                        2 * coarsenedM)
                : "left no ground that is known to be free for walk " + walk + ".";
        return List.of(Problem.warning(
                "WALK_COARSE",
                Where.WHOLE,
                "The yard has more walls and edges than can be looked at one by one. To make do with fewer, they "
                        + moved + " Draw outlines with fewer corners."));
    }

    /** @param strayM how far a stop is from open ground, m */
    static Optional<Problem> astray(String stop, double strayM) {
        return strayM > 0
                ? Optional.of(Problem.info(
                        "STOP_ASTRAY",
                        Where.WHOLE,
                        String.format(
                                Locale.ROOT,
                                "%s lies %.0f mm inside an obstacle or off the yard; the walk goes to the nearest open"
                                        + " place.",
                                stop,
                                strayM * 1000)))
                : Optional.empty();
    }
}
