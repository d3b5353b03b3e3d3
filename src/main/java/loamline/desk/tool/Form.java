package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/**
 * What a row of places makes. Places are set one after the other, each at least a millimetre from what it is measured
 * from; {@code places} are those set, {@code shown} those and the pending one.
 */
interface Form {
    /** How many places complete it, so that no further sign is needed. */
    int most();

    /** What is missing to make it of these places; empty if nothing is. */
    Optional<String> lacks(List<Point> places);

    /** What it makes, of places that lack nothing. */
    Feature made(List<Point> places, Yard yard);

    /** What to do next when some places are set. */
    String hint(int set);

    /** What it looks like; at least two places. */
    List<Guide> guides(List<Point> shown, UnitSystem units);

    /** Words for the pending side; at least two places. */
    default String words(List<Point> shown, UnitSystem units) {
        return length(shown.get(shown.size() - 2), shown.get(shown.size() - 1), units);
    }

    /** The place from which the next is measured; at least one is set. */
    default Point anchor(List<Point> places) {
        return places.get(places.size() - 1);
    }

    /** Where the next place comes to lie, by the pointer and by what is typed; at least one is set. */
    default Target target(List<Point> places, Point pointer, Typing typing, UnitSystem units) {
        return typing.target(anchor(places), pointer, units);
    }

    /** The places to snap by: sides of them lend their direction to the next. */
    default List<Point> snappedBy(List<Point> places) {
        return places;
    }

    /** All places if the mouse went down at the last and comes up at an end; empty if that means nothing. */
    default List<Point> dragged(List<Point> places, Point end) {
        return List.of();
    }

    /** What should be said of places that do not hinder; empty if nothing. */
    default Optional<String> warning(List<Point> places, boolean isDone) {
        return Optional.empty();
    }

    /** A length as words. */
    static String length(Point from, Point to, UnitSystem units) {
        return Formatting.format(Measure.LENGTH, from.distanceTo(to), units).text();
    }
}
