package loamline.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.place.LonLat;
import org.jspecify.annotations.Nullable;

/**
 * The nested coordinate lists of one feature as a shape. Every position that is none is reported at its place,
 * up to {@value #MAX_LISTED} of them, and then there is no shape: half an outline would be another outline.
 */
final class Coordinates {
    /** What the numbers are. */
    enum Sort {
        /** Longitude and latitude in degrees, kept in a point's x and y. */
        DEGREES(Double.NaN),
        /** Metres east and north; a double tells tenths of a micrometre apart, beyond any national grid. */
        METRES(1e8),
        /** Metres from where a plane touches the earth; so far the way to degrees and back is exact. */
        METRES_ON_EARTH(2 * EarthPlace.REACH_M);

        private final double mostM;

        Sort(double mostM) {
            this.mostM = mostM;
        }
    }

    /** Positions reported for one feature; who has more mends the feature, not the position. */
    static final int MAX_LISTED = 20;

    private final Sort sort;
    private final ProblemLog log;
    private int faults;

    Coordinates(Sort sort, ProblemLog log) {
        this.sort = sort;
        this.log = log;
    }

    Optional<Shape> point(@Nullable Object position, String pointer) {
        return position(position, pointer).map(p -> p);
    }

    Optional<Shape> line(@Nullable Object positions, String pointer) {
        List<Point> points = positions(positions, pointer);
        if (faults == 0 && points.isEmpty()) {
            fault("GEOMETRY_EMPTY", pointer, "a line without points: draw it again");
        }
        return faults > 0 ? Optional.empty() : Optional.of(new Polyline(points));
    }

    /** One shell and its holes. */
    Optional<Shape> polygon(@Nullable Object rings, String pointer) {
        List<Outline.Part> parts = new ArrayList<>();
        part(rings, pointer).ifPresent(parts::add);
        return outline(parts);
    }

    /** Several shells, each with its holes. */
    Optional<Shape> polygons(@Nullable Object polygons, String pointer) {
        List<Outline.Part> parts = new ArrayList<>();
        List<?> list = list(polygons, pointer);
        for (int i = 0; i < list.size(); i++) {
            part(list.get(i), pointer + "/" + i).ifPresent(parts::add);
        }
        return outline(parts);
    }

    private Optional<Shape> outline(List<Outline.Part> parts) {
        return faults > 0 ? Optional.empty() : Optional.of(new Outline(parts));
    }

    private Optional<Outline.Part> part(@Nullable Object rings, String pointer) {
        List<List<Point>> read = new ArrayList<>();
        List<?> list = list(rings, pointer);
        for (int i = 0; i < list.size(); i++) {
            read.add(positions(list.get(i), pointer + "/" + i));
        }
        return read.isEmpty()
                ? Optional.empty()
                : Optional.of(new Outline.Part(read.get(0), read.subList(1, read.size())));
    }

    private List<Point> positions(@Nullable Object positions, String pointer) {
        List<?> list = list(positions, pointer);
        List<Point> points = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof List<?> pair && isPlain(pair)) {
                points.add(point(pair)); // without a pointer, of which there might be millions
            } else {
                position(list.get(i), pointer + "/" + i).ifPresent(points::add);
            }
        }
        return points;
    }

    private List<?> list(@Nullable Object value, String pointer) {
        if (value instanceof List<?> list) {
            return list;
        }
        fault("WRONG_TYPE", pointer, "must be a list of coordinates in [ ], not " + JsonText.excerpt(value, 40));
        return List.of();
    }

    private Optional<Point> position(@Nullable Object value, String pointer) {
        if (!(value instanceof List<?> pair) || !arePair(pair)) {
            fault(
                    "POSITION_WRONG",
                    pointer,
                    "a position is two numbers, " + (sort == Sort.DEGREES ? "[longitude, latitude]" : "[east, north]")
                            + ", not " + JsonText.excerpt(value, 60) + ": mend or remove it");
            return Optional.empty();
        }
        if (pair.size() > 2) {
            log.infoOnce("ALTITUDE_DROPPED", "", pointer, "a position has an altitude; it is not used and not kept");
        }
        Point p = point(pair);
        Optional<String> doubt = doubt(p);
        doubt.ifPresent(message -> fault("POSITION_OFF", pointer, message));
        return doubt.isPresent() ? Optional.empty() : Optional.of(p);
    }

    private boolean isPlain(List<?> pair) {
        return pair.size() == 2 && arePair(pair) && doubt(point(pair)).isEmpty();
    }

    private static boolean arePair(List<?> values) {
        return values.size() >= 2 && isFinite(values.get(0)) && isFinite(values.get(1));
    }

    private static boolean isFinite(@Nullable Object value) {
        return value instanceof Number number && Double.isFinite(number.doubleValue());
    }

    private static Point point(List<?> pair) {
        return new Point(((Number) pair.get(0)).doubleValue(), ((Number) pair.get(1)).doubleValue());
    }

    /** Why no yard has a point there. */
    private Optional<String> doubt(Point p) {
        if (sort != Sort.DEGREES) {
            return Math.max(Math.abs(p.x()), Math.abs(p.y())) <= sort.mostM
                    ? Optional.empty()
                    : Optional.of(shown(p) + " is farther off than any yard reaches: mend or remove it");
        }
        if (EarthPlace.hasTurf(p.x(), p.y())) {
            return Optional.empty();
        }
        if (EarthPlace.hasTurf(p.y(), p.x())) {
            return Optional.of("no yard lies at latitude " + JsonText.number(p.y())
                    + "; longitude comes first: swap the two numbers of " + shown(p));
        }
        return Optional.of(
                LonLat.isOnEarth(p.x(), p.y())
                        ? shown(p) + " is next to a pole, where nothing is mown: mend or remove it"
                        : shown(p) + " is no longitude and latitude but perhaps metres of a map grid: export the file"
                                + " in WGS 84 longitude and latitude");
    }

    private static String shown(Point p) {
        return "[" + JsonText.number(p.x()) + ", " + JsonText.number(p.y()) + "]";
    }

    private void fault(String code, String pointer, String message) {
        faults++;
        if (faults <= MAX_LISTED) {
            log.error(code, pointer, message);
        } else if (faults == MAX_LISTED + 1) {
            log.error("POSITION_MORE", pointer, "from here on more positions of this feature are wrong: draw it again");
        }
    }
}
