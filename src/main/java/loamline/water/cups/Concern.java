package loamline.water.cups;

import java.util.List;
import loamline.geometry.Region;
import loamline.water.Gap;
import loamline.yard.Trouble;
import loamline.yard.Yard;

/**
 * A part of the yard that makes somebody doubt the water.
 *
 * @param words what is there, as in "trouble spot “dry”"
 * @param ground where
 */
public record Concern(String words, Region ground) {
    /** A trouble spot of this quality or better needs no test; 9 is the best. Common practice, no source. */
    private static final int SOUND_QUALITY = 7;

    /** Turf that no head reaches. */
    public static List<Concern> holes(List<Gap> gaps) {
        return gaps.stream()
                .map(gap -> new Concern("hole " + gap.id() + " in the coverage", gap.ground()))
                .toList();
    }

    /** The yard's trouble spots that look poor, or whose quality nobody gave. */
    public static List<Concern> troubles(Yard yard) {
        return yard.all(Trouble.class)
                .filter(spot -> spot.quality().orElse(0) < SOUND_QUALITY)
                .map(spot -> new Concern(
                        spot.note().isBlank() ? "a trouble spot" : "trouble spot “" + spot.note() + "”",
                        Region.of(spot.outline())))
                .toList();
    }
}
