package loamline.yard;

import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.geometry.Shape;

/**
 * Grass, or a part of it that is treated alike.
 *
 * @param key unique in the yard
 * @param zone name of the zone; several outlines may share it
 * @param grass what grows there; may be empty
 * @param trouble how poor it looks, 0 (sound) to 1
 * @param slopePct rise over run, per cent
 * @param bag the composite it is bound to, if its owner said so
 * @param outline as drawn
 * @param extras what a file said beyond this
 */
public record Turf(
        String key,
        String zone,
        String grass,
        OptionalDouble trouble,
        OptionalDouble slopePct,
        Optional<String> bag,
        Outline outline,
        Extras extras)
        implements Feature {
    /** The zone where nobody named one. */
    public static final String DEFAULT_ZONE = "turf";

    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.TURF);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(outline);
    }

    @Override
    public Turf withShape(Shape shape) {
        return new Turf(key, zone, grass, trouble, slopePct, bag, Shapes.outline(shape), extras);
    }

    /** The same under the name of another zone. */
    public Turf withZone(String changed) {
        return new Turf(key, changed, grass, trouble, slopePct, bag, outline, extras);
    }

    @Override
    public Turf withKey(String key) {
        return new Turf(key, zone, grass, trouble, slopePct, bag, outline, extras);
    }
}
