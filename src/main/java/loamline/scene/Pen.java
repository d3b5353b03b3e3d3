package loamline.scene;

import java.util.List;

/**
 * How a line is drawn. Joins are round; ends are round on whole lines and square on dashes.
 *
 * @param widthMm on paper, above 0
 * @param dashMm lengths of dash and gap by turns; none for a whole line
 */
public record Pen(Ink ink, double widthMm, List<Double> dashMm) {
    /** @throws IllegalArgumentException if the width or a dash is not above 0 */
    public Pen {
        dashMm = List.copyOf(dashMm);
        if (!(widthMm > 0) || !dashMm.stream().allMatch(dash -> dash > 0)) {
            throw new IllegalArgumentException("no pen of width " + widthMm + " mm and dashes " + dashMm);
        }
    }

    public static Pen solid(Ink ink, double widthMm) {
        return new Pen(ink, widthMm, List.of());
    }

    public static Pen dashed(Ink ink, double widthMm, double dashMm, double gapMm) {
        return new Pen(ink, widthMm, List.of(dashMm, gapMm));
    }
}
