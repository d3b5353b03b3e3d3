package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/**
 * A centre and a radius, clicked or dragged.
 *
 * @param radiusNeeded whether it is nothing without a radius
 */
record RoundForm(Making making, boolean radiusNeeded) implements Form {
    /** What a centre and a radius make; without a radius, the kind's own. */
    interface Making {
        Feature made(Point centre, OptionalDouble radiusM, Yard yard);
    }

    @Override
    public int most() {
        return 2;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        return radiusNeeded && places.size() < 2
                ? Optional.of("A circle needs a radius: set it, or type it and press Enter.")
                : Optional.empty();
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        Point centre = places.get(0);
        OptionalDouble radiusM =
                places.stream().skip(1).mapToDouble(centre::distanceTo).findFirst();
        return making.made(centre, radiusM, yard);
    }

    /** A radius has no sides to snap by. */
    @Override
    public List<Point> snappedBy(List<Point> places) {
        return List.of();
    }

    @Override
    public List<Point> dragged(List<Point> places, Point end) {
        return List.of(places.get(0), end);
    }

    @Override
    public String hint(int set) {
        if (set == 0) {
            return "Click the middle, or drag from it to the rim";
        }
        return radiusNeeded
                ? "Click the rim, or type the radius and press Enter"
                : "Click the rim, or type the radius; Enter alone for the usual one";
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        Point centre = shown.get(0);
        return List.of(
                new Guide.Circle(centre, centre.distanceTo(shown.get(1)), Guide.Style.DRAWN),
                new Guide.Line(shown, false, Guide.Style.HELP));
    }
}
