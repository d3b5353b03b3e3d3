package loamline.yard;

import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.geometry.Shape;

/**
 * A sprinkler head.
 *
 * @param key unique in the yard
 * @param id h1, h2 … in file order where nobody named it
 * @param valve the valve that feeds it; may be empty
 * @param headClass how it throws, if known
 * @param radiusM radius of throw, m
 * @param arcStartDeg azimuth of the arc's first edge, clockwise from north
 * @param arcSweepDeg 1 to 360, clockwise from the first edge
 * @param flowLpm litres a minute
 * @param profile how depth falls off from head to rim
 * @param mountM height above the ground, m
 * @param at where it stands
 * @param extras what a file said beyond this
 */
public record Head(
        String key,
        String id,
        String valve,
        Optional<HeadClass> headClass,
        OptionalDouble radiusM,
        double arcStartDeg,
        double arcSweepDeg,
        OptionalDouble flowLpm,
        Profile profile,
        double mountM,
        Point at,
        Extras extras)
        implements Feature {
    /** The arc where nobody gave one, degrees. */
    public static final double FULL_CIRCLE_DEG = 360;

    /** The profile where nobody gave one: common practice, no source. */
    public static final Profile DEFAULT_PROFILE = Profile.Named.CONE;

    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.HEAD);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(at);
    }

    @Override
    public Head withShape(Shape shape) {
        return new Head(
                key,
                id,
                valve,
                headClass,
                radiusM,
                arcStartDeg,
                arcSweepDeg,
                flowLpm,
                profile,
                mountM,
                Shapes.point(shape),
                extras);
    }

    /** The same head under another id. */
    public Head withId(String changed) {
        return new Head(
                key,
                changed,
                valve,
                headClass,
                radiusM,
                arcStartDeg,
                arcSweepDeg,
                flowLpm,
                profile,
                mountM,
                at,
                extras);
    }

    /** The same head with another radius of throw, m. */
    public Head withRadiusM(double changed) {
        return new Head(
                key,
                id,
                valve,
                headClass,
                OptionalDouble.of(changed),
                arcStartDeg,
                arcSweepDeg,
                flowLpm,
                profile,
                mountM,
                at,
                extras);
    }

    /** The same head with another arc: azimuth of its first edge and 1 to 360 degrees clockwise from there. */
    public Head withArc(double startDeg, double sweepDeg) {
        return new Head(key, id, valve, headClass, radiusM, startDeg, sweepDeg, flowLpm, profile, mountM, at, extras);
    }

    @Override
    public Head withKey(String key) {
        return new Head(
                key, id, valve, headClass, radiusM, arcStartDeg, arcSweepDeg, flowLpm, profile, mountM, at, extras);
    }
}
