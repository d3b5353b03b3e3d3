package loamline.yard;

import java.util.Optional;
import loamline.geometry.Outline;
import loamline.geometry.Shape;

/**
 * A house, a garage, a shed.
 *
 * @param key unique in the yard
 * @param name may be empty
 * @param heightM wall height above the ground, m
 * @param eaveM how far the eaves reach beyond the walls, m; 0 if not known
 * @param outline as drawn
 * @param extras what a file said beyond this
 */
public record Building(String key, String name, double heightM, double eaveM, Outline outline, Extras extras)
        implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.BUILDING);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(outline);
    }

    @Override
    public Building withShape(Shape shape) {
        return new Building(key, name, heightM, eaveM, Shapes.outline(shape), extras);
    }

    /** The same under another name. */
    public Building withName(String changed) {
        return new Building(key, changed, heightM, eaveM, outline, extras);
    }

    @Override
    public Building withKey(String key) {
        return new Building(key, name, heightM, eaveM, outline, extras);
    }

    /** Height where nobody gave one, m. */
    public static final double DEFAULT_HEIGHT_M = 3.0;
}
