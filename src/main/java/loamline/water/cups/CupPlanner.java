package loamline.water.cups;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.water.HeadPattern;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * Lays cup tests.
 *
 * <p>An even grid on the valve's turf, edge cups {@link #EDGE_M} inside the edge, cups beside a head {@link #EDGE_M} off
 * it; what lies between two heads, no more than a quarter of the radius beyond their throw, counts too, so that a hole gets
 * cups. At least {@link #LEAST_CUPS} cups and
 * three in the throw of every head; of the grids that have them the coarsest whose count parts into quarters.
 *
 * <p>Distances and counts: University of Maryland, irrigation course 969638, unit 4.3 (20 to 24 cups or more, 1 to 2 ft
 * off a head), and from memory of the Irrigation Association, Recommended Audit Guidelines, 2009 (edge cups 12 to 24 in
 * inside, 5 to 8 ft apart for sprays and 10 to 20 ft for rotors, about 25 ml).
 */
public final class CupPlanner {
    /** 18 in, the middle of 12 to 24 in. */
    static final double EDGE_M = 0.4572;

    static final int LEAST_CUPS = 24;

    /** 8 ft. */
    private static final double WIDEST_SPRAY_M = 2.4384;

    /** 20 ft. */
    private static final double WIDEST_M = 6.096;

    /** 2 ft: closer cups catch the same water twice. Common practice, no source. */
    private static final double CLOSEST_M = 0.6096;

    private static final double STEP = 0.98;

    /** Finer grids than the first that has enough cups are tried this long for a count that parts into quarters. */
    private static final int STEPS_FOR_QUARTERS = 20;

    /** Ground so far from two heads, in radii, is theirs: holes lie there. */
    static final double BEYOND = 1.25;

    /** A concern this near to the throw is the valve's, m. */
    private static final double NEAR_M = 1;

    /** Rotors turn slowly: five full sweeps take about so long. Common practice, no source. */
    private static final int LEAST_ROTOR_MIN = 15;

    private final Yard yard;
    private final String valve;
    private final ValveHeads heads;
    private final List<HeadPattern> patterns;
    private final Region inside;

    private CupPlanner(Yard yard, String valve) {
        this.yard = yard;
        this.valve = valve;
        this.heads = ValveHeads.of(yard, valve);
        this.patterns = List.copyOf(heads.byId().values());
        this.inside =
                Region.union(Zones.of(yard).stream().map(Zone::net).toList()).buffer(-EDGE_M);
    }

    /**
     * Lays the test of one valve.
     *
     * @param valve one of {@link CupTest#valves}
     * @param concerns parts of the yard that make somebody doubt the water, such as {@link Concern#troubles}
     * @param throatCm2 the opening of the cups, above 0
     */
    public static CupPlan of(Yard yard, String valve, List<Concern> concerns, double throatCm2) {
        return new CupPlanner(yard, valve).plan(concerns, throatCm2);
    }

    /** The tests that holes, trouble spots or dry cores ask for, valve by valve; none where nothing does. */
    public static List<CupPlan> worthwhile(Yard yard, List<Concern> concerns, double throatCm2) {
        return CupTest.valves(yard).stream()
                .map(valve -> of(yard, valve, concerns, throatCm2))
                .filter(plan -> !plan.reasons().isEmpty())
                .toList();
    }

    private CupPlan plan(List<Concern> concerns, double throatCm2) {
        List<Problem> problems = new ArrayList<>(heads.problems());
        Grid grid = patterns.isEmpty() ? new Grid(0, List.of()) : grid();
        if (!isEnough(grid.cups)) {
            problems.add(
                    Problem.warning(
                            "CUP_PLAN_SMALL",
                            Where.WHOLE,
                            "the turf that valve " + valve + " reaches has room for " + grid.cups.size()
                                    + " cups only, or for fewer than three in the throw of a head: what they say will be weak"));
        }
        double mean = grid.cups.stream()
                .mapToDouble(cup -> patterns.stream()
                        .mapToDouble(head -> head.rateMmH(cup.x(), cup.y()))
                        .sum())
                .average()
                .orElse(0);
        return new CupPlan(
                valve,
                reasons(concerns),
                grid.cups,
                grid.spacingM,
                minutes(mean, throatCm2),
                throatCm2,
                mean,
                problems);
    }

    private List<String> reasons(List<Concern> concerns) {
        Region near = Region.union(patterns.stream()
                .map(head -> Region.around(head.at(), head.radiusM() + NEAR_M))
                .toList());
        return concerns.stream()
                .filter(concern -> !near.intersection(concern.ground()).isEmpty())
                .map(Concern::words)
                .toList();
    }

    private Stream<Head> valveHeads() {
        return yard.all(Head.class).filter(head -> head.valve().equals(valve));
    }

    private boolean has(HeadClass headClass) {
        return valveHeads().anyMatch(head -> head.headClass().equals(Optional.of(headClass)));
    }

    private int minutes(double meanMmH, double throatCm2) {
        double readable = meanMmH > 0 ? CupDoubts.READABLE_ML * 600 / (meanMmH * throatCm2) : 0;
        boolean turns = has(HeadClass.ROTOR) || has(HeadClass.ROTARY);
        return (int) Math.ceil(Math.max(readable, turns ? LEAST_ROTOR_MIN : 0));
    }

    private record Grid(double spacingM, List<Point> cups) {}

    /** The coarsest grid with enough cups, or one a little finer whose count parts into quarters. */
    private Grid grid() {
        double spacingM = has(HeadClass.SPRAY) ? WIDEST_SPRAY_M : WIDEST_M;
        Grid best = new Grid(spacingM, List.of());
        int finer = 0;
        while (spacingM >= CLOSEST_M && finer < STEPS_FOR_QUARTERS) {
            Grid grid = new Grid(spacingM, cups(spacingM));
            boolean enough = isEnough(grid.cups);
            if (enough && grid.cups.size() % 4 == 0) {
                return grid;
            }
            if (enough ? finer++ == 0 : grid.cups.size() > best.cups.size() && finer == 0) {
                best = grid;
            }
            spacingM *= STEP;
        }
        return best;
    }

    private boolean isEnough(List<Point> cups) {
        return cups.size() >= LEAST_CUPS
                && patterns.stream()
                        .allMatch(head -> cups.stream()
                                        .filter(cup -> head.reaches(cup.x(), cup.y()))
                                        .count()
                                >= HeadFindings.LEAST_CUPS_A_HEAD);
    }

    /** Rows from the south, walked to and fro. */
    private List<Point> cups(double spacingM) {
        Region ground = Region.union(patterns.stream()
                        .map(head -> Region.around(head.at(), BEYOND * head.radiusM()))
                        .toList())
                .intersection(inside);
        List<Point> cups = new ArrayList<>();
        ground.box().ifPresent(box -> {
            int columns = (int) Math.floor(box.widthM() / spacingM) + 1;
            int rows = (int) Math.floor(box.heightM() / spacingM) + 1;
            double west = box.centre().x() - (columns - 1) * spacingM / 2;
            double south = box.centre().y() - (rows - 1) * spacingM / 2;
            for (int row = 0; row < rows; row++) {
                for (int i = 0; i < columns; i++) {
                    int column = row % 2 == 0 ? i : columns - 1 - i;
                    Point at = onCentimetre(offHeads(new Point(west + column * spacingM, south + row * spacingM)));
                    if (inside.covers(at) && isWatered(at)) {
                        cups.add(at);
                    }
                }
            }
        });
        return cups;
    }

    /** Nobody sets a cup to a millimetre. */
    private static Point onCentimetre(Point p) {
        return new Point(Math.rint(p.x() * 100) / 100, Math.rint(p.y() * 100) / 100);
    }

    /** Whether a head waters a place, or two would if they threw a little farther. */
    private boolean isWatered(Point p) {
        long near = patterns.stream()
                .filter(head -> head.at().distanceTo(p) <= BEYOND * head.radiusM()
                        && head.arc()
                                .holds(p.x() - head.at().x(), p.y() - head.at().y()))
                .count();
        return near > 1 || patterns.stream().anyMatch(head -> head.reaches(p.x(), p.y()));
    }

    /** A cup at a head is moved off it, away from the head or to the north. */
    private Point offHeads(Point p) {
        for (HeadPattern head : patterns) {
            double distance = head.at().distanceTo(p);
            if (distance == 0) {
                return p.plus(0, EDGE_M);
            }
            if (distance < EDGE_M) {
                return head.at().towards(p, EDGE_M / distance);
            }
        }
        return p;
    }
}
