package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** A single place. */
record PointForm(BiFunction<Point, Yard, Feature> making) implements Form {
    @Override
    public int most() {
        return 1;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        return Optional.empty();
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        return making.apply(places.get(0), yard);
    }

    @Override
    public String hint(int set) {
        return "Click the place";
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        return List.of();
    }
}
