package loamline.yard;

import java.util.Optional;
import loamline.geometry.Point;
import loamline.geometry.Shape;

/**
 * Where the walk starts and ends.
 *
 * @param key unique in the yard
 * @param at where
 * @param extras what a file said beyond this
 */
public record Gate(String key, Point at, Extras extras) implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.GATE);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(at);
    }

    @Override
    public Gate withShape(Shape shape) {
        return new Gate(key, Shapes.point(shape), extras);
    }

    @Override
    public Gate withKey(String key) {
        return new Gate(key, at, extras);
    }
}
