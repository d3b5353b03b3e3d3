package loamline.yard;

import loamline.account.Account;
import loamline.account.Source;
import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * How sure an area is that was traced from an image.
 *
 * @param pointM standard error of one vertex in x and in y, m
 * @param scaleRel standard error of the scale as a share of it
 */
public record Digitizing(double pointM, double scaleRel) {
    /** How well a vertex is placed on an image, in pixels: common practice, no source. */
    public static final double POINTING_PX = 1.0;

    /** Standard error of a vertex where the image is not known, m: one pixel of common aerial images. */
    public static final double USUAL_POINT_M = 0.15;

    private static final Source PROPAGATION = new Source(
            "shoelace-propagation",
            "Propagation of variance through the shoelace formula, derived: vertices err independently");

    /** What a yard's image allows; a usual value without an image. */
    static Digitizing of(Yard yard) {
        return yard.backdrop()
                .map(image -> new Digitizing(POINTING_PX * image.placement().pixelM(), image.scaleErrorRel()))
                .orElse(new Digitizing(USUAL_POINT_M, 0));
    }

    /**
     * Standard error of a region's area, m².
     *
     * <p>A = ½ Σ (x<sub>i</sub> y<sub>i+1</sub> − x<sub>i+1</sub> y<sub>i</sub>), so a vertex moves the area by
     * half the chord between its neighbours: var = ¼ pointM² Σ |p<sub>i+1</sub> − p<sub>i−1</sub>|². A scale
     * error e moves it by 2 e A. Both are independent.
     */
    double areaSeM2(Region region) {
        return Math.hypot(pointM / 2 * Math.sqrt(chordsSquaredM2(region)), 2 * scaleRel * region.areaM2());
    }

    Account account(Region region) {
        return Account.of(
                        "se = sqrt(pointM²/4 · Σ|p(i+1) − p(i−1)|² + (2 · scaleRel · A)²)",
                        "A sharper image or a better known scale makes it smaller.",
                        PROPAGATION)
                .with("pointM", pointM)
                .with("scaleRel", scaleRel)
                .with("A_m2", region.areaM2())
                .with("sumChord2_m2", chordsSquaredM2(region))
                .with("vertices", region.outline().vertices().count());
    }

    private static double chordsSquaredM2(Region region) {
        return region.outline()
                .rings()
                .mapToDouble(ring -> {
                    double sum = 0;
                    for (int i = 0; i < ring.size(); i++) {
                        Point before = ring.get((i + ring.size() - 1) % ring.size());
                        double chord = before.distanceTo(ring.get((i + 1) % ring.size()));
                        sum += chord * chord;
                    }
                    return sum;
                })
                .sum();
    }
}
