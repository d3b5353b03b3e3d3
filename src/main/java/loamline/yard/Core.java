package loamline.yard;

import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Shape;

/**
 * A core that is planned or was taken.
 *
 * @param key unique in the yard
 * @param id such as A1; may be empty
 * @param composite its bag; may be empty
 * @param zone may be empty
 * @param at where
 * @param locked whether planning again leaves it where it is
 * @param extras what a file said beyond this
 */
public record Core(String key, String id, String composite, String zone, Point at, boolean locked, Extras extras)
        implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.CORE);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(at);
    }

    @Override
    public Core withShape(Shape shape) {
        return new Core(key, id, composite, zone, Shapes.point(shape), locked, extras);
    }

    @Override
    public Core withKey(String key) {
        return new Core(key, id, composite, zone, at, locked, extras);
    }

    public Core withZone(String zone) {
        return new Core(key, id, composite, zone, at, locked, extras);
    }

    public Core withLocked(boolean locked) {
        return new Core(key, id, composite, zone, at, locked, extras);
    }
}
