package loamline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.yard.Head;

/**
 * The water one head throws, without wind: rate = scale · f(distance / radius) inside its arc, 0 outside.
 *
 * <p>The scale keeps the flow: the integral of the rate over the arc is the flow, whatever profile, radius or arc, so
 * scale = 60 · flow / (throw area · mean of f). A point on the rim is in.
 *
 * @param at where the head stands
 * @param radiusM radius of throw, above 0
 * @param arc what it throws into
 * @param profile how depth falls off
 * @param flowLpm litres a minute, 0 or more
 */
public record HeadPattern(Point at, double radiusM, Arc arc, RadialProfile profile, double flowLpm) {
    private static final double MINUTES_PER_HOUR = 60;

    /** @throws IllegalArgumentException if radius or flow is out of range */
    public HeadPattern {
        if (!(radiusM > 0 && Double.isFinite(radiusM)) || !(flowLpm >= 0 && Double.isFinite(flowLpm))) {
            throw new IllegalArgumentException(
                    "a radius is above 0 m and a flow 0 L/min or more, not " + radiusM + " and " + flowLpm);
        }
    }

    /**
     * What a head of a yard throws, or why that cannot be said.
     *
     * @param pattern empty exactly if there are problems
     * @param problems errors, one for every value that is missing or impossible
     */
    public record Read(Optional<HeadPattern> pattern, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a head of a yard.
     *
     * @param where its place in the yard, for the problems
     */
    public static Read of(Head head, Where where) {
        List<Problem> problems = new ArrayList<>();
        double radiusM = positive(head.radiusM(), "radius of throw", "radiusM", head, where, problems);
        double flowLpm = positive(head.flowLpm(), "flow", "flowLpm", head, where, problems);
        checkArc(head, where, problems);
        if (!problems.isEmpty()) {
            return new Read(Optional.empty(), problems);
        }
        HeadPattern pattern = new HeadPattern(
                head.at(),
                radiusM,
                Arc.of(head.arcStartDeg(), head.arcSweepDeg()),
                RadialProfile.of(head.profile()),
                flowLpm);
        return new Read(Optional.of(pattern), List.of());
    }

    private static void checkArc(Head head, Where where, List<Problem> problems) {
        if (!(head.arcSweepDeg() >= 1 && head.arcSweepDeg() <= Arc.FULL_DEG)) {
            problems.add(leftOut(
                    "HEAD_ARC", head, where, "its arc of " + head.arcSweepDeg() + "° is none: give 1 to 360 degrees"));
        }
        if (!Double.isFinite(head.arcStartDeg())) {
            problems.add(leftOut("HEAD_ARC", head, where, "its arc has no first edge: give “arcStartDeg”"));
        }
    }

    private static double positive(
            OptionalDouble given, String what, String key, Head head, Where where, List<Problem> problems) {
        double value = given.orElse(0);
        if (given.isEmpty()) {
            problems.add(leftOut("HEAD_VALUE", head, where, "its " + what + " is not known: give “" + key + "”"));
        } else if (!(value > 0 && Double.isFinite(value))) {
            problems.add(leftOut(
                    "HEAD_VALUE", head, where, "its " + what + " is " + value + ": correct “" + key + "” to above 0"));
        }
        return value;
    }

    private static Problem leftOut(String code, Head head, Where where, String why) {
        return Problem.error(code, where, "head " + head.id() + " is left out of the water; " + why);
    }

    /** Area of the arc, m². */
    public double throwAreaM2() {
        return Math.PI * radiusM * radiusM * arc.share();
    }

    /** The rate where the profile is 1, mm/h: at the head itself for a cone. */
    public double scaleMmH() {
        return MINUTES_PER_HOUR * flowLpm / (throwAreaM2() * profile.meanOverPeak());
    }

    /** Whether water falls on a place: in the arc and no farther than the radius. */
    public boolean reaches(double x, double y) {
        double dx = x - at.x();
        double dy = y - at.y();
        return dx * dx + dy * dy <= reachM2() && arc.holds(dx, dy);
    }

    /** The squared radius, the rim and what rounding makes of it included, m². */
    double reachM2() {
        return (radiusM + Arc.EDGE_M) * (radiusM + Arc.EDGE_M);
    }

    /** The rate on a place, mm/h; 0 where no water falls. */
    public double rateMmH(double x, double y) {
        if (!reaches(x, y)) {
            return 0;
        }
        double share = Math.min(1, Math.hypot(x - at.x(), y - at.y()) / radiusM);
        return scaleMmH() * profile.at(share);
    }

    /** The same water from another place. */
    public HeadPattern movedTo(Point place) {
        return new HeadPattern(place, radiusM, arc, profile, flowLpm);
    }

    /** The head turned clockwise in the ground. */
    public HeadPattern turnedBy(double deg) {
        return new HeadPattern(at, radiusM, arc.turnedBy(deg), profile, flowLpm);
    }

    /**
     * The head sweeping another arc, its first edge where it was, with the same flow: less arc gets more.
     *
     * @param sweepDeg above 0 to 360
     */
    public HeadPattern narrowedTo(double sweepDeg) {
        return new HeadPattern(at, radiusM, Arc.of(arc.startDeg(), sweepDeg), profile, flowLpm);
    }

    /**
     * The head giving another flow over the same ground.
     *
     * @param factor 0 (shut) or more; 1 changes nothing
     */
    public HeadPattern withOutput(double factor) {
        return new HeadPattern(at, radiusM, arc, profile, factor * flowLpm);
    }
}
