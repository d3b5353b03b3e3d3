package loamline.yard;

import java.util.Optional;
import loamline.geometry.Shape;

/**
 * A feature of a kind that this program does not know, or that it could not read: kept as it stood in the
 * file, so that saving loses nothing and the features after it keep their positions.
 *
 * @param key unique in the yard
 * @param extras the whole feature as read, without its key: geometry, properties and all
 */
public record Unknown(String key, Extras extras) implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.empty();
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.empty();
    }

    @Override
    public Unknown withShape(Shape shape) {
        throw new IllegalArgumentException("a feature of an unknown kind stays where it is");
    }

    @Override
    public Unknown withKey(String key) {
        return new Unknown(key, extras);
    }
}
