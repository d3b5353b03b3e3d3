package loamline.demo;

import static loamline.demo.Rings.back;
import static loamline.demo.Rings.bend;
import static loamline.demo.Rings.chain;
import static loamline.demo.Rings.oval;
import static loamline.demo.Rings.points;
import static loamline.demo.Rings.ring;
import static loamline.yard.HeadClass.ROTARY;

import java.util.List;
import java.util.Map;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** A suburban lot: house with garage, street in the south, fenced back yard, one head short in the back lawn. */
final class PloverCourt {
    /** Side of the square whose four corners carry the heads round the hole, m. */
    static final double HOLE_SQUARE_M = 12;

    /** Throw of those four heads, m: more than half a side, less than half a diagonal, so the middle stays dry. */
    static final double HOLE_RADIUS_M = 7;

    private static final Point HOLE_SOUTH_WEST = new Point(16, 30);

    /** The line between shady strip and sunny lawn, from the deck to the back fence. */
    private static final List<Point> SHADE_LINE = points(6, 23, 7, 27.5, 8, 33, 7.4, 42);

    /** The middle of the square. */
    static final Point HOLE_MIDDLE = HOLE_SOUTH_WEST.plus(HOLE_SQUARE_M / 2, HOLE_SQUARE_M / 2);

    /** The patio's round corner. */
    private static final List<Point> PATIO_BEND = bend(new Point(18.2, 21), new Point(18.2, 23), new Point(16.2, 23));

    /** Main house and garage, with the corners of what touches them. */
    private static final List<Point> HOUSE = points(
            4.5, 9, 9.8, 9, 13, 9, 18, 9, 18, 6.8, 24, 6.8, 25, 6.8, 25, 15.2, 22.8, 15.2, 20.5, 15.2, 20.5, 19, 18.2,
            19, 11.5, 19, 6, 19, 4.5, 19, 4.5, 12.4);

    private PloverCourt() {}

    static DemoYard yard() {
        Draft draft = new Draft();
        drawGround(draft);
        drawTurf(draft);
        drawTall(draft);
        drawFrontHeads(draft);
        drawBackHeads(draft);
        drawSpots(draft);
        Frame frame = Frame.at(new LonLat(-89.05, 40.35));
        Yard yard = Yard.empty("Plover Court 7", frame).withFeatures(draft.features());
        return new DemoYard("plover-court", yard, scenery());
    }

    private static void drawGround(Draft draft) {
        draft.boundary("Plover Court 7", Outline.of(0, 0, 28, 0, 28, 42, 0, 42));
        draft.building("House", 3.0, 0.5, Outline.of(HOUSE));
        draft.cover(Kind.PAVING, "Drive", Outline.of(18, 0, 24, 0, 24, 6.8, 18, 6.8));
        List<Point> stoop = points(12, 6.8, 13, 6.8, 13, 9, 9.8, 9, 9.8, 6.8, 10.8, 6.8);
        draft.cover(Kind.PAVING, "Front walk", ring(points(10.8, 0, 12, 0), stoop));
        draft.cover(Kind.PAVING, "Patio", ring(points(11.5, 19, 18.2, 19), PATIO_BEND, points(11.5, 23)));
        draft.cover(Kind.DECK, "Deck", Outline.of(6, 19, 11.5, 19, 11.5, 23, 6, 23));
        draft.cover(Kind.GRAVEL, "Trailer pad", Outline.of(24, 0, 28, 0, 28, 15.2, 25, 15.2, 25, 6.8, 24, 6.8));
        draft.cover(Kind.BED, "Front bed west", Outline.of(4.5, 6.8, 9.8, 6.8, 9.8, 9, 4.5, 9));
        draft.cover(Kind.BED, "Front bed east", Outline.of(13, 6.8, 18, 6.8, 18, 9, 13, 9));
        draft.cover(Kind.BED, "Maple island", oval(new Point(6.6, 3.3), 1.5, 1.1, b -> 0.08 * StrictMath.sin(2 * b)));
        List<Point> outer = bend(new Point(28, 22.4), new Point(26, 22.2), new Point(25.2, 19.4));
        List<Point> inner = bend(new Point(25.2, 19.4), new Point(24.6, 16.9), new Point(22.8, 15.2));
        draft.cover(Kind.BED, "Back corner bed", ring(points(22.8, 15.2, 25, 15.2, 28, 15.2), outer, inner));
    }

    private static void drawTurf(Draft draft) {
        List<Point> front = points(0, 0, 10.8, 0, 10.8, 6.8, 9.8, 6.8, 4.5, 6.8, 4.5, 9, 4.5, 12.4, 0, 12.4);
        List<Point> side = points(0, 12.4, 4.5, 12.4, 4.5, 19, 6, 19);
        List<Point> east = points(18.2, 19, 20.5, 19, 20.5, 15.2, 22.8, 15.2, 25, 15.2, 28, 15.2, 28, 22.4, 28, 42);
        List<Point> south = chain(points(6, 23, 11.5, 23), back(PATIO_BEND), east);
        draft.turf("Front west", "Kentucky bluegrass", 0.1, 3, ring(front));
        draft.turf("Front east", "Kentucky bluegrass", 0.05, 4, Outline.of(12, 0, 18, 0, 18, 6.8, 13, 6.8, 12, 6.8));
        draft.turf("Back shade", "fine fescue", 0.3, 2, ring(side, SHADE_LINE, points(0, 42)));
        draft.turf("Back lawn", "tall fescue", 0.2, 5, ring(south, back(SHADE_LINE)));
    }

    private static void drawTall(Draft draft) {
        draft.barrier(
                Kind.FENCE,
                1.8,
                true,
                List.of(new Barrier.Opening(2.3, 1.2)),
                points(4.5, 12.4, 0, 12.4, 0, 42, 28, 42, 28, 15.2, 25, 15.2));
        draft.deciduous(2.6, 7, 0.15, new Point(6.6, 3.3)); // red maple
        draft.deciduous(4.0, 11, 0.3, new Point(3.4, 34.6)); // oak
        draft.deciduous(2.8, 8, 0.2, new Point(3.0, 24.9)); // maple
        draft.deciduous(1.7, 4.5, 0.1, new Point(11.0, 38.9)); // crab apple
        draft.evergreen(1.9, 9.5, 0.2, new Point(26.2, 18.2)); // spruce
        draft.window(1.6, 0.8, points(17.2, 9, 14.0, 9));
    }

    private static void drawFrontHeads(Draft draft) {
        draft.head("1", ROTARY, 6.7, 0, 90, new Point(0, 0));
        draft.head("1", ROTARY, 8.7, 270, 90, new Point(10.8, 0));
        draft.head("1", ROTARY, 7.3, 0, 180, new Point(0, 6.8));
        draft.head("1", ROTARY, 7.0, 0, 90, new Point(12, 0));
        draft.head("1", ROTARY, 7.0, 155, 115, new Point(18, 6.8)); // set too wide: wets the drive
    }

    private static void drawBackHeads(Draft draft) {
        Point corner = HOLE_SOUTH_WEST;
        draft.head("2", ROTARY, HOLE_RADIUS_M, 0, 360, corner);
        draft.head("2", ROTARY, HOLE_RADIUS_M, 180, 180, corner.plus(HOLE_SQUARE_M, 0));
        draft.head("2", ROTARY, HOLE_RADIUS_M, 180, 90, corner.plus(HOLE_SQUARE_M, HOLE_SQUARE_M));
        draft.head("2", ROTARY, HOLE_RADIUS_M, 90, 180, corner.plus(0, HOLE_SQUARE_M));
        draft.head("2", ROTARY, 8.6, 270, 270, new Point(20.5, 19));
        draft.head("3", ROTARY, 6.0, 270, 180, new Point(11.5, 23));
        draft.head("3", ROTARY, 10.7, 0, 360, new Point(8, 35));
        draft.head("3", ROTARY, 7.4, 0, 180, new Point(0, 28.6));
        draft.head("3", ROTARY, 7.6, 180, 270, new Point(4.5, 19));
    }

    private static void drawSpots(Draft draft) {
        draft.gate(new Point(11.4, 0.8));
        draft.keepAway(1.5, "pet spot", new Point(12.8, 25.6));
        draft.keepAway(0.9, "buried gas line", new Polyline(points(2.4, 0, 2.4, 10.6, 4.5, 10.6)));
        draft.trouble(
                "dry, thin",
                3,
                oval(
                        new Point(22.1, 35.9),
                        2.5,
                        2.1,
                        b -> 0.12 * StrictMath.sin(3 * b + 1) + 0.06 * StrictMath.cos(5 * b)));
        draft.trouble(
                "moss",
                4,
                oval(new Point(3.2, 37.4), 1.9, 1.5, b -> 0.15 * StrictMath.sin(2 * b) + 0.07 * StrictMath.cos(5 * b)));
    }

    /** The neighbours' ground, as far as the picture shows it. */
    private static List<Feature> beyond() {
        Draft beyond = new Draft();
        beyond.turf("west", "", 0.3, 0, Outline.of(-20, 0, 0, 0, 0, 42, -20, 42));
        beyond.turf("east", "", 0.15, 0, Outline.of(28, 0, 50, 0, 50, 42, 28, 42));
        beyond.turf("north", "", 0.4, 0, Outline.of(-20, 42, 50, 42, 50, 70, -20, 70));
        beyond.turf("parkway", "", 0.35, 0, Outline.of(-20, -3.8, 50, -3.8, 50, -1.6, -20, -1.6));
        beyond.cover(Kind.PAVING, "Street", Outline.of(-20, -20, 50, -20, 50, -4, -20, -4));
        beyond.cover(Kind.PAVING, "Curb", Outline.of(-20, -4, 50, -4, 50, -3.8, -20, -3.8));
        beyond.cover(Kind.PAVING, "Sidewalk", Outline.of(-20, -1.6, 50, -1.6, 50, 0, -20, 0));
        beyond.cover(Kind.PAVING, "Apron", Outline.of(18, -1.6, 24, -1.6, 25, -4, 17, -4));
        beyond.cover(Kind.PAVING, "West apron", Outline.of(-8.4, -1.6, -4, -1.6, -3.2, -4, -9.2, -4));
        beyond.cover(Kind.PAVING, "West drive", Outline.of(-8.4, 0, -4, 0, -4, 9, -8.4, 9));
        beyond.cover(Kind.BED, "East bed", Outline.of(31.5, 6.4, 40, 6.4, 40, 8, 31.5, 8));
        beyond.cover(Kind.DECK, "West deck", Outline.of(-9, 20, -4.6, 20, -4.6, 24, -9, 24));
        beyond.deciduous(3.1, 8.5, 0.2, new Point(-5.6, 33));
        beyond.deciduous(2.3, 6, 0.2, new Point(32.6, 28));
        beyond.deciduous(3.4, 9.5, 0.2, new Point(20.5, 48.6));
        beyond.evergreen(1.6, 8, 0.2, new Point(35.4, 38.5));
        beyond.evergreen(1.5, 7, 0.2, new Point(35.6, 41.9));
        beyond.deciduous(1.9, 5, 0.2, new Point(33.2, -2.7));
        beyond.deciduous(1.7, 4.5, 0.2, new Point(-1.8, -2.7));
        return beyond.features();
    }

    private static Scenery scenery() {
        return new Scenery(
                new Box(-9, -9.5, 37, 50.5),
                0.06,
                beyond(),
                roofs(),
                List.of(new Car(new Point(7.5, -5.3), 0, 0x6E7F96)),
                materials(),
                148,
                50,
                20270614);
    }

    private static List<Roof> roofs() {
        return List.of(
                Roof.over(4, 8.5, 21, 19.5, 3.0, 0.45),
                Roof.over(17.5, 6.3, 25.5, 15.7, 3.0, 0.45),
                Roof.over(9.4, 7.9, 13.4, 14, 3.0, 0.45),
                Roof.over(-20, 8.6, -3.4, 20, 3.0, 0.4).withHips().of(Material.SHINGLE, 1.25),
                Roof.over(31, 8, 46, 19, 3.0, 0.5).of(Material.SHINGLE, 0.8),
                Roof.over(2, 48.2, 14, 58, 2.8, 0.4).withHips().of(Material.SHINGLE, 1.1));
    }

    private static Map<String, Material> materials() {
        return Map.of("Street", Material.ASPHALT, "Patio", Material.PAVERS);
    }
}
