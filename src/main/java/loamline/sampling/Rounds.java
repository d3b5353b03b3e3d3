package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.sampling.CorePlan.Walk;
import loamline.sampling.walk.DistanceMatrix;
import loamline.sampling.walk.FreeSpace;
import loamline.sampling.walk.Tour;
import loamline.sampling.walk.TourSolver;
import loamline.sampling.walk.Ways;
import loamline.yard.Gate;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;

/** Plans the rounds: from the gate through a bag's cores and back. */
final class Rounds {
    private final FreeSpace space;
    private final Optional<Point> gate;
    private final long seed;

    private Rounds(Yard yard, long seed) {
        this.space = FreeSpace.of(yard);
        this.gate = yard.all(Gate.class).map(Gate::at).findFirst();
        this.seed = seed;
    }

    /** One round a bag, or one through all of them; none for a bag without cores. */
    static List<Round> walk(Yard yard, List<Draft.Bag> bags, PlanOptions options) {
        Rounds rounds = new Rounds(yard, options.seed());
        if (options.walk() == PlanOptions.Rounds.ONE) {
            return bags.stream()
                    .filter(bag -> !bag.spots().isEmpty())
                    .map(bag -> rounds.round(bag.name(), bag.spots()))
                    .toList();
        }
        List<Draft.Spot> all =
                bags.stream().flatMap(bag -> bag.spots().stream()).toList();
        return all.isEmpty() ? List.of() : List.of(rounds.round(Walk.ALL, all));
    }

    private Round round(String name, List<Draft.Spot> spots) {
        List<Point> stops = new ArrayList<>();
        gate.ifPresent(stops::add);
        int first = stops.size();
        spots.forEach(spot -> stops.add(spot.at()));
        Ways ways = space.ways(stops);
        List<Integer> reached = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(WalkDoubts.of(name, space.coarsenedM()));
        for (int stop = 0; stop < stops.size(); stop++) {
            if (Double.isFinite(ways.distanceM(0, stop))) {
                reached.add(stop);
                String who = stop < first ? "The gate" : "The core";
                WalkDoubts.astray(who + " at " + place(stops.get(stop)), ways.strayM(stop))
                        .ifPresent(problems::add);
            } else {
                problems.add(unreached(spots.get(stop - first)));
            }
        }
        Tour tour = TourSolver.shortest(distances(ways, reached), seed);
        List<Integer> order = tour.order().stream().map(reached::get).toList();
        boolean exact = space.coarsenedM() == 0;
        double boundM = exact ? tour.lowerBoundM() : straightBoundM(stops, reached, tour);
        Walk walk = new Walk(name, tour.lengthM(), boundM, exact && tour.proven(), path(ways, order));
        return new Round(
                walk,
                order.stream()
                        .filter(stop -> stop >= first)
                        .map(stop -> spots.get(stop - first))
                        .toList(),
                problems);
    }

    /** A bound that holds whatever stands between the stops: that of the round in straight lines. */
    private double straightBoundM(List<Point> stops, List<Integer> reached, Tour tour) {
        double[][] rows = new double[reached.size()][reached.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                rows[i][j] = stops.get(reached.get(i)).distanceTo(stops.get(reached.get(j)));
            }
        }
        return Math.min(
                tour.lowerBoundM(),
                TourSolver.shortest(DistanceMatrix.of(rows), seed).lowerBoundM());
    }

    private static Problem unreached(Draft.Spot spot) {
        return Problem.error(
                "CORE_NOT_REACHED",
                Where.WHOLE,
                "The core at " + place(spot.at()) + " in zone \"" + spot.zone() + "\" cannot be reached on foot and is"
                        + " left out of the walk. Check that fences have their gates and that buildings, beds and"
                        + " water do not close it off.");
    }

    private static String place(Point p) {
        return String.format(java.util.Locale.ROOT, "x %.2f m, y %.2f m", p.x(), p.y());
    }

    private static DistanceMatrix distances(Ways ways, List<Integer> stops) {
        double[][] rows = new double[stops.size()][stops.size()];
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows.length; j++) {
                rows[i][j] = ways.distanceM(stops.get(i), stops.get(j));
            }
        }
        return DistanceMatrix.of(rows);
    }

    private static Polyline path(Ways ways, List<Integer> order) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            List<Point> leg = ways.path(order.get(i), order.get((i + 1) % order.size()))
                    .orElseThrow()
                    .points();
            points.addAll(points.isEmpty() ? leg : leg.subList(1, leg.size()));
        }
        return new Polyline(points);
    }
}
