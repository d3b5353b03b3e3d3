package loamline.yard;

import java.util.Optional;
import loamline.geometry.Outline;
import loamline.geometry.Shape;

/**
 * The property line.
 *
 * @param key unique in the yard
 * @param name name of the lot; may be empty
 * @param outline as drawn
 * @param extras what a file said beyond this
 */
public record Boundary(String key, String name, Outline outline, Extras extras) implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.BOUNDARY);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(outline);
    }

    @Override
    public Boundary withShape(Shape shape) {
        return new Boundary(key, name, Shapes.outline(shape), extras);
    }

    /** The same under another name. */
    public Boundary withName(String changed) {
        return new Boundary(key, changed, outline, extras);
    }

    @Override
    public Boundary withKey(String key) {
        return new Boundary(key, name, outline, extras);
    }
}
