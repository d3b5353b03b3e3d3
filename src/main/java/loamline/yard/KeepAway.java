package loamline.yard;

import java.util.Optional;
import loamline.geometry.Shape;

/**
 * A spot where no core may be taken: a pet spot, a buried line, a wet spot.
 *
 * @param key unique in the yard
 * @param radiusM how far to stay off, m
 * @param reason may be empty
 * @param place point, line or outline
 * @param extras what a file said beyond this
 */
public record KeepAway(String key, double radiusM, String reason, Shape place, Extras extras) implements Feature {
    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.KEEPAWAY);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(place);
    }

    @Override
    public KeepAway withShape(Shape shape) {
        return new KeepAway(key, radiusM, reason, shape, extras);
    }

    /** The same spot with another distance to stay off, m. */
    public KeepAway withRadiusM(double changed) {
        return new KeepAway(key, changed, reason, place, extras);
    }

    /** The same spot for another reason. */
    public KeepAway withReason(String changed) {
        return new KeepAway(key, radiusM, changed, place, extras);
    }

    @Override
    public KeepAway withKey(String key) {
        return new KeepAway(key, radiusM, reason, place, extras);
    }

    /** Distance where nobody gave one, m. */
    public static final double DEFAULT_RADIUS_M = 1.0;
}
