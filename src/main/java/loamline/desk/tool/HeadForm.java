package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Yard;

/**
 * A head: where it stands, where its arc begins and how far it throws, and clockwise from there where the arc ends.
 * Without the third place, or with one on the second, it throws all round; without the second its radius is open.
 */
record HeadForm() implements Form {
    /** Arcs below the least that a head may have are taken for the whole circle. */
    private static final double LEAST_SWEEP_DEG = 1;

    /** Step at which an arc is shown, degrees. */
    private static final double SHOWN_STEP_DEG = 5;

    private static final int ARC_BEGUN = 2;

    @Override
    public int most() {
        return ARC_BEGUN + 1;
    }

    @Override
    public Optional<String> lacks(List<Point> places) {
        return Optional.empty();
    }

    @Override
    public Feature made(List<Point> places, Yard yard) {
        Point at = places.get(0);
        OptionalDouble radiusM =
                places.stream().skip(1).mapToDouble(at::distanceTo).findFirst();
        double startDeg = places.size() < ARC_BEGUN ? 0 : Azimuth.deg(at, places.get(1));
        return NewFeatures.head(at, radiusM, startDeg, sweepDeg(places), yard);
    }

    private static double sweepDeg(List<Point> places) {
        if (places.size() <= ARC_BEGUN) {
            return Head.FULL_CIRCLE_DEG;
        }
        Point at = places.get(0);
        double turnDeg = Azimuth.turned(Azimuth.deg(at, places.get(2)) - Azimuth.deg(at, places.get(1)));
        return turnDeg < LEAST_SWEEP_DEG ? Head.FULL_CIRCLE_DEG : turnDeg;
    }

    /** Both edges of the arc start at the head. */
    @Override
    public Point anchor(List<Point> places) {
        return places.get(0);
    }

    /** Towards the arc's second edge the place stays on the rim, and what is typed is the arc in degrees. */
    @Override
    public Target target(List<Point> places, Point pointer, Typing typing, UnitSystem units) {
        if (places.size() < ARC_BEGUN) {
            return Form.super.target(places, pointer, typing, units);
        }
        Point onRim = onRim(places, Azimuth.deg(places.get(0), pointer));
        if (typing.isEmpty()) {
            return Target.at(onRim);
        }
        ParseResult typed = Parsing.parse(Measure.ANGLE, typing.size(), units);
        if (typed.refusal().isPresent()) {
            return Target.refused(onRim, typed.refusal().get().message());
        }
        double sweepDeg = typed.value().orElse(0);
        return sweepDeg < LEAST_SWEEP_DEG || sweepDeg > Head.FULL_CIRCLE_DEG
                ? Target.refused(onRim, "An arc is 1° to 360°.")
                : Target.at(onRim(places, Azimuth.deg(places.get(0), places.get(1)) + sweepDeg));
    }

    private static Point onRim(List<Point> places, double azimuthDeg) {
        Point at = places.get(0);
        return StraightLine.at(at, azimuthDeg).at(at.distanceTo(places.get(1)));
    }

    /** The second edge goes by the first: straight on, or at a right angle. */
    @Override
    public List<Point> snappedBy(List<Point> places) {
        return places.size() < ARC_BEGUN ? places : List.of(places.get(1), places.get(0));
    }

    @Override
    public List<Point> dragged(List<Point> places, Point end) {
        List<Point> all = new ArrayList<>(places);
        all.add(end);
        return all;
    }

    @Override
    public String hint(int set) {
        return switch (set) {
            case 0 -> "Click the head, or drag from it to where its arc begins";
            case 1 -> "Click where the arc begins, as far as the head throws; Enter alone for a head of open radius";
            default -> "Click where the arc ends, clockwise, or type its degrees; Enter alone for all round";
        };
    }

    @Override
    public List<Guide> guides(List<Point> shown, UnitSystem units) {
        Point at = shown.get(0);
        double radiusM = at.distanceTo(shown.get(1));
        Guide rim = new Guide.Circle(at, radiusM, Guide.Style.HELP);
        if (shown.size() <= ARC_BEGUN) {
            return List.of(rim, new Guide.Line(shown, false, Guide.Style.DRAWN));
        }
        double startDeg = Azimuth.deg(at, shown.get(1));
        double sweepDeg = sweepDeg(shown);
        int steps = (int) Math.ceil(sweepDeg / SHOWN_STEP_DEG);
        List<Point> wedge = new ArrayList<>(List.of(at));
        IntStream.rangeClosed(0, steps)
                .mapToObj(i -> onRim(shown, startDeg + i * sweepDeg / steps))
                .forEach(wedge::add);
        return List.of(rim, new Guide.Line(wedge, true, Guide.Style.DRAWN));
    }

    @Override
    public String words(List<Point> shown, UnitSystem units) {
        return shown.size() <= ARC_BEGUN
                ? Form.super.words(shown, units)
                : Formatting.format(Measure.ANGLE, sweepDeg(shown), units).text();
    }
}
