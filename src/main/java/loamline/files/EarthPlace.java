package loamline.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.place.Frame;
import loamline.place.LonLat;

/**
 * Where on the earth a yard lies, from shapes in longitude and latitude.
 *
 * <p>The plane's origin is the centre of the box round all coordinates, to {@link #ORIGIN_DECIMALS} decimals,
 * unless one is given. What lies farther off than {@link #REACH_M} belongs to no yard that holds the rest.
 *
 * @param frame the yard's plane; without a place if there is neither a shape nor an origin
 * @param far which shapes lie out of reach
 */
record EarthPlace(Frame frame, Set<Integer> far) {
    /** Within this the plane takes each point to the micrometre (checked to 100 km), metres. */
    static final double REACH_M = 50_000;

    /** A yard wider than this is doubted, metres. */
    static final double WIDE_M = 5_000;

    /** South of this is only ice, degrees. A swapped pair from the eastern United States lands there. */
    private static final double SOUTHERNMOST_DEG = -60;

    /** North of this is only ice, and the plane is no longer as exact, degrees. */
    private static final double NORTHERNMOST_DEG = 80;

    /** One metre and less: nobody needs an origin finer than that. */
    private static final double ORIGIN_DECIMALS = 1e5;

    /** Mean length of a degree of latitude (IUGG mean radius 6371008.8 m); only for telling near from far. */
    static final double M_PER_DEG = Math.toRadians(6371008.8);

    /** Whether turf may grow at a longitude and latitude; false off the earth and at the poles. */
    static boolean hasTurf(double lonDeg, double latDeg) {
        return LonLat.isOnEarth(lonDeg, latDeg) && latDeg >= SOUTHERNMOST_DEG && latDeg <= NORTHERNMOST_DEG;
    }

    /**
     * Finds the place.
     *
     * @param shapes by number; longitude in x, latitude in y
     * @param given the origin, if the file tells it
     */
    static EarthPlace of(List<Optional<Shape>> shapes, Optional<LonLat> given, ProblemLog log) {
        Optional<LonLat> middle = given.or(() -> median(shapes));
        if (middle.isEmpty()) {
            return new EarthPlace(Frame.local(), Set.of());
        }
        Offsets offsets = new Offsets(middle.get());
        Set<Integer> far = new HashSet<>();
        List<Shape> near = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            Optional<Shape> shape = shapes.get(i);
            if (shape.isPresent() && shape.get().vertices().allMatch(offsets::isNear)) {
                near.add(shape.get());
            } else if (shape.isPresent()) {
                far.add(i);
                boolean swapped = shape.get().vertices().allMatch(p -> offsets.isNear(new Point(p.y(), p.x())));
                log.error("FEATURE_FAR_AWAY", "/features/" + i + "/geometry/coordinates", farMessage(swapped));
            }
        }
        Optional<Box> box = Box.around(near.stream().flatMap(Shape::vertices).map(offsets::of));
        box.ifPresent(b -> doubtWidth(b, log));
        LonLat origin = given.orElseGet(() -> offsets.place(box.map(Box::centre).orElse(new Point(0, 0))));
        return new EarthPlace(Frame.at(origin), far);
    }

    /** Warns of a yard that is wider than {@link #WIDE_M}. */
    static void doubtWidth(Box box, ProblemLog log) {
        double widthM = Math.hypot(box.widthM(), box.heightM());
        if (widthM > WIDE_M) {
            log.add(Problem.warning(
                    "YARD_WIDE",
                    Where.WHOLE,
                    String.format(
                            Locale.ROOT,
                            "the features lie %.1f km apart: see whether one of another yard is among them,"
                                    + " or coordinates are mixed up",
                            widthM / 1000)));
        }
    }

    private static String farMessage(boolean swapped) {
        return swapped
                ? "longitude and latitude of this feature are swapped: longitude comes first"
                : "lies more than " + Math.round(REACH_M / 1000)
                        + " km from the rest: mend its coordinates or take it out";
    }

    /** The middle first corner in each direction: one stray feature does not move it. */
    private static Optional<LonLat> median(List<Optional<Shape>> shapes) {
        List<Point> firsts = shapes.stream()
                .flatMap(Optional::stream)
                .flatMap(shape -> shape.vertices().limit(1))
                .toList();
        return firsts.isEmpty()
                ? Optional.empty()
                : Optional.of(new LonLat(middle(firsts, Point::x), middle(firsts, Point::y)));
    }

    private static double middle(List<Point> points, ToDoubleFunction<Point> coordinate) {
        double[] sorted = points.stream().mapToDouble(coordinate).sorted().toArray();
        return sorted[sorted.length / 2];
    }

    /** Metres east and north of a place, by the sphere. */
    private record Offsets(LonLat middle) {
        private double eastPerDeg() {
            return M_PER_DEG * Math.cos(Math.toRadians(middle.latDeg()));
        }

        private Point of(Point lonLat) {
            return new Point(
                    LonLat.wrapped(lonLat.x() - middle.lonDeg()) * eastPerDeg(),
                    (lonLat.y() - middle.latDeg()) * M_PER_DEG);
        }

        private boolean isNear(Point lonLat) {
            Point offset = of(lonLat);
            return Math.max(Math.abs(offset.x()), Math.abs(offset.y())) <= REACH_M;
        }

        private LonLat place(Point offset) {
            double lon = LonLat.wrapped(middle.lonDeg() + offset.x() / eastPerDeg());
            double lat = middle.latDeg() + offset.y() / M_PER_DEG;
            return new LonLat(
                    Math.rint(lon * ORIGIN_DECIMALS) / ORIGIN_DECIMALS,
                    Math.rint(lat * ORIGIN_DECIMALS) / ORIGIN_DECIMALS);
        }
    }
}
