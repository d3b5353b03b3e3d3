package loamline.demo;

import static loamline.demo.Rings.back;
import static loamline.demo.Rings.bend;
import static loamline.demo.Rings.chain;
import static loamline.demo.Rings.oval;
import static loamline.demo.Rings.points;
import static loamline.demo.Rings.ring;
import static loamline.yard.HeadClass.ROTOR;
import static loamline.yard.HeadClass.SPRAY;

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

/** An L-shaped country lot on a slope: house, barn and shed, a pond, a gravel lane, two fenced parts. */
final class TansyHill {
    /** The terrace wall, from the west line to the parking court. */
    private static final List<Point> WALL = points(0, 30, 9, 29.2, 20, 29.4, 27, 30.2, 30.5, 32);

    /** The lane's west side, from the parking court down to the straight. */
    private static final List<Point> LANE_WEST = bend(new Point(30.5, 32), new Point(32.5, 26), new Point(39, 17));

    /** The lane's east side, from the road up to the barn. */
    private static final List<Point> LANE_EAST = bend(new Point(43, 0), new Point(43, 11), new Point(46, 16));

    /** The lane's north side, from the barn to the parking court. */
    private static final List<Point> LANE_NORTH = bend(new Point(46, 26), new Point(38, 26), new Point(36.5, 31.5));

    /** Where mowing of the pond bank ends and the lane lawn begins, from the road up to the wall. */
    private static final List<Point> BANK_LINE = points(24, 0, 25, 15, 27, 30.2);

    private static final List<Point> SHORE = oval(new Point(12.5, 12), 7.2, 5.2, TansyHill::pondSwell)
            .parts()
            .get(0)
            .shell();

    private static final double HOUSE_DEG = 6;

    private TansyHill() {}

    private static double pondSwell(double bearing) {
        return 0.1 * StrictMath.sin(2 * bearing + 0.6) + 0.05 * StrictMath.cos(3 * bearing);
    }

    static DemoYard yard() {
        Draft draft = new Draft();
        drawGround(draft);
        drawTurf(draft);
        drawTall(draft);
        drawTrees(draft);
        drawHeads(draft);
        drawSpots(draft);
        Frame frame = Frame.at(new LonLat(-92.35, 43.05));
        Yard yard = Yard.empty("Tansy Hill", frame).withFeatures(draft.features());
        return new DemoYard("tansy-hill", yard, scenery());
    }

    /** Points of the house's own plane: u along its long side, v across, metres from its middle, by turns. */
    private static List<Point> house(double... uv) {
        Axes axes = new Axes(new Point(19, 40), Math.toRadians(HOUSE_DEG));
        return points(uv).stream()
                .map(p -> Rings.onCentimetre(axes.at(p.x(), p.y())))
                .toList();
    }

    private static void drawGround(Draft draft) {
        List<Point> court = points(36.5, 37.5, 30.5, 37.5, 30.5, 36.2, 30.5, 34.8);
        List<Point> hedge = points(46, 26, 46, 30, 38, 30, 38, 37.5, 36.5, 37.5);
        List<Point> herbs = bend(new Point(27, 30.2), new Point(24.2, 31.4), new Point(20, 29.4));
        draft.boundary("Tansy Hill", Outline.of(0, 0, 62, 0, 62, 30, 38, 30, 38, 58, 0, 58));
        draft.cover(Kind.WATER, "Pond", Outline.of(SHORE));
        draft.cover(Kind.GRAVEL, "Lane", ring(points(39, 0), LANE_EAST, LANE_NORTH, court, LANE_WEST));
        draft.cover(Kind.BED, "Hedge bed", ring(hedge, back(LANE_NORTH)));
        draft.cover(Kind.BED, "Kitchen garden", Outline.of(4, 48, 9, 48, 9, 52.4, 4, 52.4));
        draft.cover(Kind.BED, "Herb bed", ring(herbs));
        draft.cover(Kind.BED, "Lilac island", oval(new Point(33, 6), 2.2, 1.5, b -> 0.1 * StrictMath.sin(2 * b)));
        draft.cover(Kind.DECK, "Deck", ring(house(-5.5, -4, -5.5, -7.5, 2, -7.5, 2, -4)));
        draft.cover(Kind.PAVING, "Path", ring(house(7.5, -1.6, 7.5, -3), points(30.5, 34.8, 30.5, 36.2)));
    }

    private static void drawTurf(Draft draft) {
        List<Point> upper = points(30.5, 34.8, 30.5, 36.2, 30.5, 37.5, 36.5, 37.5, 38, 37.5, 38, 47, 10, 47, 0, 47);
        List<Point> bankTop = back(WALL.subList(0, 4));
        Outline.Part bank = new Outline.Part(chain(points(0, 0), BANK_LINE, bankTop), List.of(back(SHORE)));
        List<Point> roundBarn = points(62, 0, 62, 30, 46, 30, 46, 26, 58, 26, 58, 16);
        draft.turf("Terrace", "Kentucky bluegrass", 0.1, 4, ring(WALL, upper));
        draft.turf("Orchard", "orchard grass mix", 0.25, 8, Outline.of(10, 47, 38, 47, 38, 58, 10, 58));
        draft.turf("Shed yard", "tall fescue", 0.35, 6, Outline.of(0, 47, 10, 47, 10, 58, 0, 58));
        draft.turf("Pond bank", "tall fescue", 0.3, 14, new Outline(List.of(bank)));
        draft.turf("Lane lawn", "tall fescue", 0.15, 9, ring(points(24, 0, 39, 0), back(LANE_WEST), back(BANK_LINE)));
        draft.turf("Paddock", "perennial ryegrass", 0.45, 5, ring(roundBarn, back(LANE_EAST)));
    }

    private static void drawTall(Draft draft) {
        List<Point> house =
                house(-7.5, -4, -5.5, -4, 2, -4, 2, -7.5, 2, -8, 7.5, -8, 7.5, -3, 7.5, -1.6, 7.5, 4, -7.5, 4);
        draft.building("House", 3.2, 0.5, ring(house));
        draft.building("Barn", 4.6, 0.4, Outline.of(46, 16, 58, 16, 58, 26, 46, 26));
        draft.building("Shed", 2.3, 0.2, Outline.of(1.4, 53.4, 5.4, 53.4, 5.4, 56.6, 1.4, 56.6));
        List<Point> orchard = points(38, 47, 10, 47, 10, 58, 38, 58, 38, 47);
        List<Point> paddock = chain(points(46, 26, 46, 30, 62, 30, 62, 0), LANE_EAST);
        draft.barrier(Kind.WALL, 0.9, true, List.of(new Barrier.Opening(14.0, 1.6)), WALL);
        draft.barrier(Kind.FENCE, 2.0, false, List.of(new Barrier.Opening(15.0, 1.4)), orchard);
        draft.barrier(Kind.FENCE, 1.3, true, List.of(new Barrier.Opening(77.0, 3.2)), paddock);
    }

    private static void drawTrees(Draft draft) {
        for (double x : new double[] {14.5, 20.5, 26.5, 32.5}) {
            draft.deciduous(2.0, 4.2, 0.1, new Point(x, 50));
            draft.deciduous(1.8, 4.0, 0.1, new Point(x, 55));
        }
        draft.deciduous(4.3, 12, 0.35, new Point(4.6, 40.6)); // oak
        draft.deciduous(3.6, 9, 0.3, new Point(21.4, 5.6)); // willow
        draft.deciduous(2.9, 8, 0.25, new Point(4.2, 21.6)); // willow
        draft.deciduous(3.3, 9.5, 0.25, new Point(30.4, 13.6)); // ash
        draft.evergreen(1.8, 8.5, 0.2, new Point(59.6, 6.4));
        draft.evergreen(1.7, 8.0, 0.2, new Point(59.4, 10.6));
        draft.evergreen(1.6, 7.0, 0.2, new Point(54.0, 28.2));
    }

    private static void drawHeads(Draft draft) {
        draft.head("1", SPRAY, 4.4, 273, 180, new Point(9, 29.2));
        draft.head("1", SPRAY, 4.4, 271, 180, new Point(13.5, 29.28));
        draft.head("1", SPRAY, 3.4, 271, 180, new Point(17.5, 29.35));
        draft.head("1", SPRAY, 4.6, 285, 140, new Point(27, 30.2));
        draft.head("2", ROTOR, 9.0, 0, 360, new Point(31.5, 19.5));
        draft.head("2", ROTOR, 9.0, 180, 180, new Point(39, 9.5));
        draft.head("2", ROTOR, 9.5, 0, 180, new Point(24.6, 9));
        draft.head("2", ROTOR, 9.0, 270, 90, new Point(39, 0));
        draft.head("2", ROTOR, 9.0, 0, 90, new Point(24, 0));
        draft.head("2", ROTOR, 8.5, 63, 125, new Point(27, 30.2));
        draft.head("3", ROTOR, 8.5, 180, 180, new Point(38, 42.5));
        draft.head("3", ROTOR, 7.5, 90, 180, new Point(29, 47));
    }

    private static void drawSpots(Draft draft) {
        draft.gate(new Point(41, 1));
        draft.keepAway(3.0, "beehives", new Point(35.8, 56.2));
        draft.keepAway(0.9, "buried water line", new Polyline(points(36.6, 0, 34.2, 20, 29.4, 31.4, 26.9, 36)));
        draft.keepAway(0.5, "septic field", Outline.of(2.5, 31.5, 8.5, 31.2, 8.7, 35.4, 2.7, 35.7));
        draft.trouble("washed, bare", 2, oval(new Point(21.6, 20.5), 2.2, 3.4, b -> 0.14 * StrictMath.sin(3 * b + 2)));
        draft.trouble(
                "trampled",
                3,
                oval(
                        new Point(48.9, 10.6),
                        2.6,
                        2.2,
                        b -> 0.12 * StrictMath.cos(3 * b) - 0.08 * StrictMath.sin(2 * b)));
        draft.trouble("moss", 4, oval(new Point(17.6, 45.5), 3.6, 0.9, b -> 0.1 * StrictMath.sin(3 * b)));
    }

    /** The neighbours' ground, as far as the picture shows it. */
    private static List<Feature> beyond() {
        Draft beyond = new Draft();
        beyond.turf("east meadow", "", 0.5, 0, Outline.of(38, 30, 90, 30, 90, 90, 38, 90));
        beyond.turf("far east", "", 0.4, 0, Outline.of(62, -3, 90, -3, 90, 30, 62, 30));
        beyond.turf("west meadow", "", 0.55, 0, Outline.of(-30, -3, 0, -3, 0, 90, -30, 90));
        beyond.turf("north", "", 0.5, 0, Outline.of(0, 58, 38, 58, 38, 90, 0, 90));
        beyond.turf("verge", "", 0.45, 0, Outline.of(-30, -3, 90, -3, 90, 0, -30, 0));
        beyond.cover(Kind.GRAVEL, "Shoulder", Outline.of(-30, -4, 90, -4, 90, -3, -30, -3));
        beyond.cover(Kind.PAVING, "Road", Outline.of(-30, -20, 90, -20, 90, -4, -30, -4));
        beyond.cover(Kind.GRAVEL, "Lane mouth", Outline.of(39, 0, 43, 0, 44.4, -3.6, 37.6, -3.6));
        beyond.deciduous(3.8, 11, 0.3, new Point(44.2, 53.5));
        beyond.deciduous(3.2, 9, 0.3, new Point(51, 57.5));
        beyond.deciduous(3.5, 10, 0.3, new Point(47.5, 46.6));
        beyond.deciduous(2.8, 7, 0.3, new Point(55.5, 49.8));
        beyond.deciduous(2.6, 7, 0.3, new Point(-4.8, 12));
        beyond.deciduous(3.4, 9, 0.3, new Point(-5.2, 47));
        beyond.evergreen(1.7, 8, 0.3, new Point(-3.2, 27));
        beyond.evergreen(1.9, 9, 0.3, new Point(-4.6, 31));
        beyond.deciduous(2.4, 6, 0.3, new Point(65.6, 36.2));
        return beyond.features();
    }

    private static Scenery scenery() {
        return new Scenery(
                new Box(-7, -7.5, 69, 65),
                0.08,
                beyond(),
                roofs(),
                List.of(new Car(new Point(43.6, 22.2), 96, 0xB8B4AA)),
                materials(),
                152,
                47,
                20270709);
    }

    private static List<Roof> roofs() {
        List<Point> middles = house(0, 0, 4.75, -4.25);
        return List.of(
                new Roof(middles.get(0), 16, 9, HOUSE_DEG, 3.2, 0.5, false, Material.SHINGLE, 0.85),
                new Roof(middles.get(1), 8.5, 6.5, HOUSE_DEG + 90, 3.2, 0.5, false, Material.SHINGLE, 0.85),
                Roof.over(45.6, 15.6, 58.4, 26.4, 4.6, 0.6).of(Material.METAL, 1),
                Roof.over(1.2, 53.2, 5.6, 56.8, 2.3, 0.4).of(Material.METAL, 0.8));
    }

    private static Map<String, Material> materials() {
        return Map.of("Road", Material.ASPHALT, "Path", Material.PAVERS);
    }
}
