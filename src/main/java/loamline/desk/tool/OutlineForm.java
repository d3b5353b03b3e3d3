package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** An outline, corner by corner. A last place on the first closes it and is no corner more. */
record OutlineForm(BiFunction<Outline, Yard, Feature> making) implements Form {
    private static final int LEAST = 3;

    @Override
    public int most() {
        return Integer.MAX_VALUE;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        int missing = LEAST - places.size();
        if (missing > 0) {
            return Optional.of("An outline needs three corners: set " + (missing == 1 ? "one" : "two") + " more.");
        }
        return Rings.lacksGround(places);
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        return making.apply(Outline.of(ring(places)), yard);
    }

    private static List<Point> ring(List<Point> places) {
        int last = places.size() - 1;
        return last > 0 && places.get(last).equals(places.get(0)) ? places.subList(0, last) : places;
    }

    @Override
    public String hint(int set) {
        return switch (set) {
            case 0 -> "Click the corners one by one";
            case 1, 2 -> "Click the next corner, or type a length (Tab: an angle) and press Enter";
            default -> "Click the next corner; end with Enter, a double click or a click on the first corner";
        };
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        return shown.size() < LEAST
                ? List.of(new Guide.Line(shown, false, Guide.Style.DRAWN))
                : Rings.guides(ring(shown), units);
    }

    @Override
    public Optional<String> warning(List<Point> places, boolean isDone) {
        if (isDone) {
            return Rings.crosses(ring(places))
                    ? Optional.of("The outline crosses itself; the ground in all its loops counts.")
                    : Optional.empty();
        }
        return Rings.lastSideCrosses(places)
                ? Optional.of("This side crosses another. Backspace takes it back.")
                : Optional.empty();
    }
}
