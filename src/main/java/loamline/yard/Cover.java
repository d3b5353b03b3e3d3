package loamline.yard;

import java.util.Optional;
import java.util.Set;
import loamline.geometry.Outline;
import loamline.geometry.Shape;

/**
 * Ground that is not grass and has no height: bed, paving, gravel, water or deck.
 *
 * @param key unique in the yard
 * @param cover one of {@link #KINDS}
 * @param name may be empty
 * @param outline as drawn
 * @param extras what a file said beyond this
 */
public record Cover(String key, Kind cover, String name, Outline outline, Extras extras) implements Feature {
    /** The kinds of ground cover. */
    public static final Set<Kind> KINDS = Set.of(Kind.BED, Kind.PAVING, Kind.GRAVEL, Kind.WATER, Kind.DECK);

    /** @throws IllegalArgumentException if the kind is no ground cover */
    public Cover {
        if (!KINDS.contains(cover)) {
            throw new IllegalArgumentException(cover + " is none of " + KINDS);
        }
    }

    @Override
    public Optional<Kind> kind() {
        return Optional.of(cover);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(outline);
    }

    @Override
    public Cover withShape(Shape shape) {
        return new Cover(key, cover, name, Shapes.outline(shape), extras);
    }

    /** The same under another name. */
    public Cover withName(String changed) {
        return new Cover(key, cover, changed, outline, extras);
    }

    @Override
    public Cover withKey(String key) {
        return new Cover(key, cover, name, outline, extras);
    }
}
