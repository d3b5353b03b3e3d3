package loamline.scene;

import loamline.geometry.Point;

/** The outline of a core's sign: tells its bag without colour. Sizes make all shapes weigh about the same. */
public enum CoreShape {
    DISC,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    HEXAGON,
    PENTAGON;

    private static final Point MIDDLE = new Point(0, 0);

    /** The shape of the bag at a position of the plan's list; shapes repeat after the last. */
    public static CoreShape ofBag(int index) {
        return values()[index % values().length];
    }

    /** The outline round the origin, weighing about as much as a disc of a radius. */
    public Path path(double radiusMm) {
        return switch (this) {
            case DISC -> Path.circle(MIDDLE, radiusMm);
            case SQUARE -> polygon(4, 1.27 * radiusMm, Math.PI / 4);
            case TRIANGLE -> polygon(3, 1.5 * radiusMm, 0);
            case DIAMOND -> polygon(4, 1.35 * radiusMm, 0);
            case HEXAGON -> polygon(6, 1.12 * radiusMm, Math.PI / 6);
            case PENTAGON -> polygon(5, 1.17 * radiusMm, 0);
        };
    }

    /** Where the middle of the number goes, as a share of the radius below the origin. */
    double numberDrop() {
        return switch (this) {
            case TRIANGLE -> 0.2;
            case PENTAGON -> 0.06;
            default -> 0;
        };
    }

    /** Width of the number, in radii, that the shape has room for. */
    double numberRoom() {
        return this == TRIANGLE ? 1.15 : 1.5;
    }

    /** Room the shape takes round the origin. */
    PaperRect box(double radiusMm) {
        return bounds(path(radiusMm));
    }

    private static PaperRect bounds(Path path) {
        double left = path.points().mapToDouble(Point::x).min().orElse(0);
        double right = path.points().mapToDouble(Point::x).max().orElse(0);
        double top = path.points().mapToDouble(Point::y).min().orElse(0);
        double bottom = path.points().mapToDouble(Point::y).max().orElse(0);
        return new PaperRect(left, top, right - left, bottom - top);
    }

    private static Path polygon(int corners, double radiusMm, double turn) {
        Point[] points = new Point[corners];
        for (int i = 0; i < corners; i++) {
            double angle = turn + 2 * Math.PI * i / corners;
            points[i] = new Point(radiusMm * Math.sin(angle), -radiusMm * Math.cos(angle));
        }
        return Path.closed(points);
    }
}
