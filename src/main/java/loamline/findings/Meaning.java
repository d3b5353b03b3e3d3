package loamline.findings;

import java.util.List;
import java.util.Optional;
import loamline.reference.ReadingClass;

/** What the mean reading of a zone means by published thresholds. */
public final class Meaning {
    /** Feel below this is nearer to dry than to slightly moist. */
    private static final double DRY_FEEL = 1.5;

    private Meaning() {}

    /**
     * The class of a zone's mean; empty if none is held for its reading. A penetrometer pushed into soil that felt dry says
     * nothing, and that is said.
     *
     * @param all of the same walk
     */
    public static Optional<ReadingClass> of(ZoneSummary zone, List<ZoneSummary> all) {
        boolean hard = zone.quantity() == Quantity.HARDNESS;
        return ReadingClass.of(
                zone.quantity().key() + (hard && isDry(zone.zone(), all) ? " of dry soil" : ""), zone.mean());
    }

    private static boolean isDry(String zone, List<ZoneSummary> all) {
        return all.stream()
                .anyMatch(other ->
                        other.zone().equals(zone) && other.quantity() == Quantity.MOISTURE && other.mean() < DRY_FEEL);
    }
}
