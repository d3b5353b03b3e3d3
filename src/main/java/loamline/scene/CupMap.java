package loamline.scene;

import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * What a cup test adds to the map of a yard.
 *
 * @param valve whose throws are shown
 * @param washes ground by class of what was measured there
 * @param cups where cups stand
 * @param heads heads that somebody should look at
 */
public record CupMap(String valve, List<Wash> washes, List<Cup> cups, List<Suspect> heads) {
    public CupMap {
        washes = List.copyOf(washes);
        cups = List.copyOf(cups);
        heads = List.copyOf(heads);
    }

    /** Ground in one colour. */
    public record Wash(Region ground, Ink ink) {}

    /**
     * A cup.
     *
     * @param name stands in its sign
     * @param reading stands under it; may be empty
     * @param telling whether it speaks against a head
     */
    public record Cup(String name, String reading, Point at, boolean telling) {}

    /** A head and what is wrong with it, in a word or two. */
    public record Suspect(Point at, String words) {}
}
