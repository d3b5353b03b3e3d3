package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** A line, point by point. A last place on the first closes the line to a loop. */
record LineForm(BiFunction<Polyline, Yard, Feature> making) implements Form {
    @Override
    public int most() {
        return Integer.MAX_VALUE;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        return places.size() < 2 ? Optional.of("A line needs two points: set its end.") : Optional.empty();
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        return making.apply(new Polyline(places), yard);
    }

    @Override
    public String hint(int set) {
        return switch (set) {
            case 0 -> "Click where the line starts";
            case 1 -> "Click the next point, or type a length (Tab: an angle) and press Enter";
            default -> "Click the next point; end with Enter or a double click";
        };
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        return List.of(new Guide.Line(shown, false, Guide.Style.DRAWN));
    }
}
