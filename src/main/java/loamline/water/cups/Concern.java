package loamline.water.cups;

import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Region;
import loamline.water.Gap;
import loamline.water.Water;
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

    /** All that a yard's map gives: holes, then trouble spots. */
    public static List<Concern> of(Yard yard, Water water) {
        return Stream.concat(holes(water.gaps()).stream(), troubles(yard).stream())
                .toList();
    }

    /** Turf that no head reaches. */
    private static List<Concern> holes(List<Gap> gaps) {
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
