package loamline.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.place.Frame;

/**
 * Changes to the image under a yard: pure functions. A yard without an image stays as it is.
 *
 * <p>An image that brings its own place is not scaled or turned in a yard tied to the earth; distances then only check
 * it. What is drawn goes along only where the yard is not tied to the earth. What was traced on the image is scaled:
 * places, crowns of trees, gaps in fences; what is known otherwise, as heights and throws of heads, is not.
 */
public final class ImageEdits {
    private ImageEdits() {}

    /** Whether distances set the scale of a yard's image, and not only check it. */
    public static boolean isScaledByHand(Yard yard) {
        return yard.backdrop()
                .filter(image -> isLocal(yard) || image.scaleErrorRel() > 0)
                .isPresent();
    }

    /** Whether what is drawn can go along with the image. */
    public static boolean canTakeDrawnAlong(Yard yard) {
        return isScaledByHand(yard) && isLocal(yard) && !yard.features().isEmpty();
    }

    private static boolean isLocal(Yard yard) {
        return yard.frame().origin().isEmpty();
    }

    /**
     * One more known distance, and the scale that fits all of them best.
     *
     * @param alongDrawn whether what is drawn is scaled with the image
     */
    public static Yard measured(Yard yard, KnownDistance distance, boolean alongDrawn) {
        return yard.backdrop()
                .map(image -> withDistances(
                        yard,
                        Stream.concat(image.knownDistances().stream(), Stream.of(distance))
                                .toList(),
                        alongDrawn))
                .orElse(yard);
    }

    /** A known distance taken out by position; without any left, the scale stays and counts as not set. */
    public static Yard forgotten(Yard yard, int position, boolean alongDrawn) {
        return yard.backdrop()
                .map(image -> {
                    List<KnownDistance> left = new ArrayList<>(image.knownDistances());
                    left.remove(position);
                    return withDistances(yard, left, alongDrawn);
                })
                .orElse(yard);
    }

    private static Yard withDistances(Yard yard, List<KnownDistance> distances, boolean alongDrawn) {
        Backdrop image = yard.backdrop().orElseThrow();
        if (!isScaledByHand(yard)) {
            return yard.withBackdrop(Optional.of(image.withDistances(distances, image.scaleErrorRel())));
        }
        if (distances.isEmpty()) {
            return yard.withBackdrop(Optional.of(image.withDistances(distances, Backdrop.SCALE_NOT_SET)));
        }
        ScaleFit fit = ScaleFit.of(image.withDistances(distances, image.scaleErrorRel()));
        double error = Math.min(fit.errorRel(), Math.nextDown(Backdrop.SCALE_NOT_SET));
        Yard scaled = scaled(yard, fit.factor(), alongDrawn);
        return scaled.withBackdrop(scaled.backdrop().map(b -> b.withDistances(distances, error)));
    }

    private static Yard scaled(Yard yard, double factor, boolean alongDrawn) {
        Backdrop image = yard.backdrop().orElseThrow();
        Point anchor = image.anchor();
        UnaryOperator<Point> larger = p -> anchor.towards(p, factor);
        Yard drawn = alongDrawn && canTakeDrawnAlong(yard)
                ? changed(yard, feature -> sized(moved(feature, larger), factor))
                : yard;
        return drawn.withBackdrop(
                Optional.of(image.withPlacement(image.placement().scaled(factor, anchor))));
    }

    private static Feature sized(Feature feature, double factor) {
        if (feature instanceof Barrier b) {
            List<Barrier.Opening> gates = b.gates().stream()
                    .map(gate -> new Barrier.Opening(factor * gate.atM(), factor * gate.widthM(), gate.extras()))
                    .toList();
            return new Barrier(b.key(), b.barrier(), b.heightM(), gates, b.solid(), b.line(), b.extras());
        } else if (feature instanceof Tree t) {
            OptionalDouble crownM = t.crownRadiusM().isPresent()
                    ? OptionalDouble.of(factor * t.crownRadiusM().getAsDouble())
                    : OptionalDouble.empty();
            return new Tree(
                    t.key(),
                    crownM,
                    t.heightM(),
                    t.trunkRadiusM(),
                    t.evergreen(),
                    t.transmission(),
                    t.baseM(),
                    t.cylinder(),
                    t.at(),
                    t.extras());
        }
        return feature;
    }

    /**
     * The image turned clockwise about its middle, as when a line on it is known to point another way.
     *
     * @param alongDrawn whether what is drawn turns with the image
     */
    public static Yard turned(Yard yard, double clockwiseDeg, boolean alongDrawn) {
        if (!isScaledByHand(yard)) {
            return yard;
        }
        Backdrop image = yard.backdrop().orElseThrow();
        Point anchor = image.anchor();
        Backdrop.Placement turn = new Backdrop.Placement(1, 0, 0, 0, 1, 0).turned(clockwiseDeg, anchor);
        Yard drawn = alongDrawn && canTakeDrawnAlong(yard)
                ? changed(yard, feature -> swung(moved(feature, turn::ground), clockwiseDeg))
                : yard;
        return drawn.withBackdrop(
                Optional.of(image.withPlacement(image.placement().turned(clockwiseDeg, anchor))));
    }

    private static Feature swung(Feature feature, double clockwiseDeg) {
        if (feature instanceof Head h) {
            double startDeg = ((h.arcStartDeg() + clockwiseDeg) % 360 + 360) % 360;
            return new Head(
                    h.key(),
                    h.id(),
                    h.valve(),
                    h.headClass(),
                    h.radiusM(),
                    startDeg,
                    h.arcSweepDeg(),
                    h.flowLpm(),
                    h.profile(),
                    h.mountM(),
                    h.at(),
                    h.extras());
        }
        return feature;
    }

    private static Feature moved(Feature feature, UnaryOperator<Point> change) {
        return feature.shape()
                .map(shape -> feature.withShape(shape.map(p -> Frame.onStep(change.apply(p)))))
                .orElse(feature);
    }

    private static Yard changed(Yard yard, UnaryOperator<Feature> change) {
        return yard.withFeatures(yard.features().stream().map(change).toList());
    }
}
