package loamline.yard;

import java.util.Optional;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;

/**
 * A flat thing that throws light back: a window, a glass rail, a metal sheet. It faces the left side of its base line.
 *
 * @param key unique in the yard
 * @param heightM length of the face from its lower to its upper edge, m
 * @param bottomM height of the lower edge above the ground, m
 * @param tiltDeg lean from the vertical, degrees
 * @param base its foot as seen from above
 * @param extras what a file said beyond this
 */
public record Panel(String key, double heightM, double bottomM, double tiltDeg, Polyline base, Extras extras)
        implements Feature {
    /** Height where nobody gave one, m: a window's, common practice, no source. */
    public static final double DEFAULT_HEIGHT_M = 1.2;

    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.PANEL);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(base);
    }

    @Override
    public Panel withShape(Shape shape) {
        return new Panel(key, heightM, bottomM, tiltDeg, Shapes.polyline(shape), extras);
    }

    @Override
    public Panel withKey(String key) {
        return new Panel(key, heightM, bottomM, tiltDeg, base, extras);
    }
}
