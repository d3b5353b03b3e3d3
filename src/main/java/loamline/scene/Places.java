package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Where a label may go, and at what price. */
final class Places {
    /** About as many places are tried on a piece of ground. */
    private static final int TRIES = 400;
    /** Places closer than this make no difference to the eye, mm. */
    private static final double FINEST_STEP_MM = 1;

    private Places() {}

    /** On the ground itself, from its middle outwards; none if the view does not show it. */
    static List<Label.Place> on(Region ground, View view) {
        Region shown = ground.intersection(Region.of(view.ground().outline()));
        Optional<Point> middle = middle(shown);
        if (middle.isEmpty()) {
            return List.of();
        }
        Box box = shown.box().orElseThrow();
        double stepM = Math.max(view.metres(FINEST_STEP_MM), Math.sqrt(box.widthM() * box.heightM() / TRIES));
        double farM = Math.hypot(box.widthM(), box.heightM());
        List<Point> places = new ArrayList<>(List.of(middle.get()));
        for (double y = box.minY() + stepM / 2; y < box.maxY(); y += stepM) {
            for (double x = box.minX() + stepM / 2; x < box.maxX(); x += stepM) {
                Point place = new Point(x, y);
                if (shown.covers(place)) {
                    places.add(place);
                }
            }
        }
        return places.stream()
                .map(place -> new Label.Place(view.onPaper(place), middle.get().distanceTo(place) / farM))
                .toList();
    }

    /** The middle of the largest part: its centre of gravity, or a point well inside where that lies outside. */
    static Optional<Point> middle(Region ground) {
        return ground.parts().stream()
                .findFirst()
                .flatMap(part -> part.centroid().filter(part::holdsInside).or(part::innerPoint));
    }

    /**
     * Round a box: below, above, right, left, then the corners, and the same a little farther out.
     *
     * @param label the room that the label takes
     */
    static List<Label.Place> beside(PaperRect box, PaperRect label) {
        List<Label.Place> places = new ArrayList<>();
        for (double gapMm : GAPS_MM) {
            for (Side side : Side.values()) {
                double dx = box.widthMm() / 2 + gapMm + label.widthMm() / 2;
                double dy = box.heightMm() / 2 + gapMm + label.heightMm() / 2;
                Point middle = box.centre().plus(side.x * dx, side.y * dy);
                places.add(new Label.Place(middle, side.price + FARTHER * (gapMm - GAPS_MM[0])));
            }
        }
        return places;
    }

    private static final double[] GAPS_MM = {0.3, 2, 4};
    /** Price of a millimetre between a sign and its label. */
    private static final double FARTHER = 0.15;

    /** A side of a box and how much it is liked less than the first. */
    private enum Side {
        BELOW(0, 1, 0),
        ABOVE(0, -1, 0.05),
        RIGHT(1, 0, 0.1),
        LEFT(-1, 0, 0.12),
        BELOW_RIGHT(1, 1, 0.4),
        BELOW_LEFT(-1, 1, 0.42),
        ABOVE_RIGHT(1, -1, 0.44),
        ABOVE_LEFT(-1, -1, 0.46);

        private final int x;
        private final int y;
        private final double price;

        Side(int x, int y, double price) {
            this.x = x;
            this.y = y;
            this.price = price;
        }
    }
}
