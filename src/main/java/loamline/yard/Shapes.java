package loamline.yard;

import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;

/** Says so when a feature is given a shape that it cannot have. */
final class Shapes {
    private Shapes() {}

    static Outline outline(Shape shape) {
        return as(Outline.class, shape);
    }

    static Polyline polyline(Shape shape) {
        return as(Polyline.class, shape);
    }

    static Point point(Shape shape) {
        return as(Point.class, shape);
    }

    private static <T extends Shape> T as(Class<T> sort, Shape shape) {
        if (!sort.isInstance(shape)) {
            throw new IllegalArgumentException("needs a " + sort.getSimpleName() + ", not a "
                    + shape.getClass().getSimpleName());
        }
        return sort.cast(shape);
    }
}
