package loamline.yard;

import java.util.Optional;
import loamline.geometry.Shape;

/** One thing in the yard. */
public sealed interface Feature
        permits Boundary, Turf, Cover, Building, Barrier, Tree, Head, Gate, KeepAway, Trouble, Core, Panel, Unknown {
    /** Names the feature for as long as it lives; unique in its yard. */
    String key();

    /** What it is; empty for a kind that this program does not know. */
    Optional<Kind> kind();

    /** Where it is, as drawn; empty for an unknown kind. */
    Optional<Shape> shape();

    /**
     * The same feature elsewhere.
     *
     * @throws IllegalArgumentException if the feature cannot have a shape of that sort
     */
    Feature withShape(Shape shape);

    /** The same feature under another key. */
    Feature withKey(String key);

    /** What a file said of it that this program does not understand. */
    Extras extras();
}
