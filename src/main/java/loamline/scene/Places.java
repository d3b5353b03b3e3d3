package loamline.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;

/** Where a label may go, the best place first; mm on paper. */
final class Places {
    /** About as many places are tried on a piece of ground. */
    private static final int TRIES = 400;
    /** Places closer than this make no difference to the eye, mm. */
    private static final double FINEST_STEP_MM = 1;

    private Places() {}

    /** On the ground itself, from its middle outwards; none if the view does not show it. */
    static List<Point> on(Region ground, View view) {
        Region shown = ground.intersection(Region.of(view.outline()));
        Optional<Point> middle = middle(shown);
        if (middle.isEmpty()) {
            return List.of();
        }
        Box box = shown.box().orElseThrow();
        double stepM = Math.max(view.metres(FINEST_STEP_MM), Math.sqrt(box.widthM() * box.heightM() / TRIES));
        List<Point> places = new ArrayList<>();
        for (double y = box.minY() + stepM / 2; y < box.maxY(); y += stepM) {
            for (double x = box.minX() + stepM / 2; x < box.maxX(); x += stepM) {
                Point place = new Point(x, y);
                if (shown.covers(place)) {
                    places.add(place);
                }
            }
        }
        places.add(middle.get());
        places.sort(Comparator.comparingDouble(middle.get()::distanceTo));
        return places.stream().map(view::onPaper).toList();
    }

    /** The middle of the largest part: its centre of gravity, or a point well inside where that lies outside. */
    static Optional<Point> middle(Region ground) {
        return ground.parts().stream()
                .findFirst()
                .flatMap(part -> part.centroid().filter(part::holdsInside).or(part::innerPoint));
    }

    /**
     * Round a box: below, above, right, left, then the corners, and the same once more a little farther out.
     *
     * @param label the room that the label takes
     */
    static List<Point> beside(PaperRect box, PaperRect label) {
        List<Point> places = new ArrayList<>();
        int[][] sides = {{0, 1}, {0, -1}, {1, 0}, {-1, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}};
        for (double gapMm : new double[] {0.3, 2.5, 5}) {
            for (int[] side : sides) {
                double dx = box.widthMm() / 2 + gapMm + label.widthMm() / 2;
                double dy = box.heightMm() / 2 + gapMm + label.heightMm() / 2;
                places.add(box.centre().plus(side[0] * dx, side[1] * dy));
            }
        }
        return places;
    }
}
