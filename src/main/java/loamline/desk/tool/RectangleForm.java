package loamline.desk.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Yard;

/** A rectangle: both ends of a side, then the width; or dragged from corner to corner, its sides north and east. */
record RectangleForm(BiFunction<Outline, Yard, Feature> making) implements Form {
    private static final int CORNERS_SET = 3;

    @Override
    public int most() {
        return CORNERS_SET;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        return switch (places.size()) {
            case 1 -> Optional.of("A rectangle needs a side: set its other end.");
            case 2 -> Optional.of("A rectangle needs a width: set it, or type it and press Enter.");
            default -> Rings.lacksGround(corners(places));
        };
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        return making.apply(Outline.of(corners(places)), yard);
    }

    private static List<Point> corners(List<Point> three) {
        Point first = three.get(0);
        Point second = three.get(1);
        Point third = three.get(2);
        return List.of(first, second, third, first.plus(third.x() - second.x(), third.y() - second.y()));
    }

    /** The width is square to the side, whatever the pointer does and whatever angle is typed. */
    @Override
    public Target target(List<Point> places, Point pointer, Typing typing, UnitSystem units) {
        if (places.size() < 2) {
            return Form.super.target(places, pointer, typing, units);
        }
        StraightLine across =
                StraightLine.between(places.get(0), places.get(1)).square().through(places.get(1));
        Typing width = new Typing(typing.size(), "", false);
        Target free = Form.super.target(places, across.nearestTo(pointer), width, units);
        return new Target(across.nearestTo(free.at()), free.refusal());
    }

    @Override
    public List<Point> dragged(List<Point> places, Point end) {
        Point start = places.get(0);
        boolean isFlat = Math.abs(end.x() - start.x()) < Snapping.LEAST_SIDE_M
                || Math.abs(end.y() - start.y()) < Snapping.LEAST_SIDE_M;
        return places.size() > 1 || isFlat ? List.of() : List.of(start, new Point(end.x(), start.y()), end);
    }

    @Override
    public String hint(int set) {
        return switch (set) {
            case 0 -> "Drag from corner to corner, or click one end of a side";
            case 1 -> "Click the other end of the side, or type its length and press Enter";
            default -> "Click the width, or type it and press Enter";
        };
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        return shown.size() < CORNERS_SET
                ? List.of(new Guide.Line(shown, false, Guide.Style.DRAWN))
                : Rings.guides(corners(shown), units);
    }

    @Override
    public String words(List<Point> shown, UnitSystem units) {
        String side = Form.length(shown.get(0), shown.get(1), units);
        return shown.size() < CORNERS_SET ? side : side + " × " + Form.length(shown.get(1), shown.get(2), units);
    }
}
