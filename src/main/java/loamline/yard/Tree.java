package loamline.yard;

import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.geometry.Shape;

/**
 * A tree or a large shrub.
 *
 * @param key unique in the yard
 * @param crownRadiusM m
 * @param heightM m
 * @param trunkRadiusM m
 * @param evergreen whether it keeps its leaves in winter
 * @param transmission share of light that passes the crown in leaf, 0 to 1
 * @param baseM height at which the crown begins, m; a quarter of the height if not given
 * @param cylinder whether the crown is a cylinder rather than an ellipsoid
 * @param at middle of the trunk
 * @param extras what a file said beyond this
 */
public record Tree(
        String key,
        OptionalDouble crownRadiusM,
        OptionalDouble heightM,
        double trunkRadiusM,
        boolean evergreen,
        double transmission,
        OptionalDouble baseM,
        boolean cylinder,
        Point at,
        Extras extras)
        implements Feature {
    /** Trunk radius where nobody gave one, m. */
    public static final double DEFAULT_TRUNK_RADIUS_M = 0.2;

    /** Light through a crown in leaf where nobody gave it. */
    public static final double DEFAULT_TRANSMISSION = 0.1;

    @Override
    public Optional<Kind> kind() {
        return Optional.of(Kind.TREE);
    }

    @Override
    public Optional<Shape> shape() {
        return Optional.of(at);
    }

    @Override
    public Tree withShape(Shape shape) {
        return new Tree(
                key,
                crownRadiusM,
                heightM,
                trunkRadiusM,
                evergreen,
                transmission,
                baseM,
                cylinder,
                Shapes.point(shape),
                extras);
    }

    /** The same tree with another crown, m. */
    public Tree withCrownRadiusM(double changed) {
        return new Tree(
                key,
                OptionalDouble.of(changed),
                heightM,
                trunkRadiusM,
                evergreen,
                transmission,
                baseM,
                cylinder,
                at,
                extras);
    }

    @Override
    public Tree withKey(String key) {
        return new Tree(key, crownRadiusM, heightM, trunkRadiusM, evergreen, transmission, baseM, cylinder, at, extras);
    }
}
