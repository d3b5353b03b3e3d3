package loamline.yard;

import java.util.Optional;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Shape;

/**
 * A part of the turf that looks poor, drawn by eye.
 *
 * @param key unique in the yard
 * @param note in a word; may be empty
 * @param quality turf quality, 1 (dead) to 9 (best)
 * @param outline as drawn
 * @param extras what a file said beyond this
 */
public record Trouble(String key, String note, OptionalInt quality, Outline outline, Extras extras) implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.TROUBLE);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(outline);
    }

    @Override
    public Trouble withShape(Shape shape) {
        return new Trouble(key, note, quality, Shapes.outline(shape), extras);
    }

    /** The same with another note. */
    public Trouble withNote(String changed) {
        return new Trouble(key, changed, quality, outline, extras);
    }

    @Override
    public Trouble withKey(String key) {
        return new Trouble(key, note, quality, outline, extras);
    }
}
