package loamline.scene;

import loamline.geometry.Box;
import loamline.geometry.Point;

/**
 * The part of the ground that is shown, and how large.
 *
 * @param ground what is shown; its north-west corner is the upper left corner of the paper
 * @param metresPerMm metres on the ground to a millimetre on paper, above 0; 0.2 is 1:200
 */
public record View(Box ground, double metresPerMm) {
    /** @throws IllegalArgumentException if the scale is not above 0 */
    public View {
        if (!(metresPerMm > 0 && Double.isFinite(metresPerMm))) {
            throw new IllegalArgumentException("metres to a millimetre must be above 0, not " + metresPerMm);
        }
    }

    /** A box on the ground at 1:{@code denominator}. */
    public static View of(Box ground, int denominator) {
        return new View(ground, denominator / 1000.0);
    }

    /** As much ground as paper of a size shows, a point in the middle. */
    public static View round(Point middle, PaperRect paper, int denominator) {
        double halfWidthM = paper.widthMm() * denominator / 2000.0;
        double halfHeightM = paper.heightMm() * denominator / 2000.0;
        Box ground = new Box(
                middle.x() - halfWidthM, middle.y() - halfHeightM, middle.x() + halfWidthM, middle.y() + halfHeightM);
        return of(ground, denominator);
    }

    /** The paper that the view takes, its corner at the origin. */
    public PaperRect paper() {
        return new PaperRect(0, 0, ground.widthM() / metresPerMm, ground.heightM() / metresPerMm);
    }

    /** Where a place on the ground lies on paper, mm. */
    public Point onPaper(Point place) {
        return new Point((place.x() - ground.minX()) / metresPerMm, (ground.maxY() - place.y()) / metresPerMm);
    }

    /** Where a point on paper lies on the ground, m. */
    public Point onGround(Point mm) {
        return new Point(ground.minX() + mm.x() * metresPerMm, ground.maxY() - mm.y() * metresPerMm);
    }

    /** Ground under a length on paper, m. */
    public double metres(double mm) {
        return mm * metresPerMm;
    }
}
