package loamline.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import org.jspecify.annotations.Nullable;

/**
 * How one sort of feature stands in files: what it is drawn as, the names of its properties, and the way in
 * and out.
 *
 * @param type the features it is for
 * @param sort the shapes they can have
 * @param names property names in use, {@code kind} included
 */
record FeatureCodec<F extends Feature, S extends Shape>(
        Class<F> type, Class<S> sort, JsonNames names, Reading<F, S> reading, Writing<F> writing) {

    /** What does not stand in the properties. */
    record Base<S extends Shape>(Kind kind, String key, S shape, Extras extras) {}

    interface Reading<F, S extends Shape> {
        F read(Base<S> base, JsonMembers properties);
    }

    interface Writing<F> {
        void write(F feature, Members properties);
    }

    /** Members being put together; what is empty is left out. */
    record Members(Map<String, @Nullable Object> map) {
        Members put(String name, Object value) {
            map.put(name, value);
            return this;
        }

        Members text(String name, String value) {
            return value.isEmpty() ? this : put(name, value);
        }

        Members number(String name, OptionalDouble value) {
            return value.isEmpty() ? this : put(name, value.getAsDouble());
        }
    }

    /** Whether features of this sort can be drawn as a shape. */
    boolean takes(Shape shape) {
        return sort.isInstance(shape);
    }

    /** The geometries of RFC 7946 for it, in words. */
    String drawnAs() {
        if (sort == Point.class) {
            return "a Point";
        }
        if (sort == Polyline.class) {
            return "a LineString";
        }
        return sort == Outline.class ? "a Polygon or MultiPolygon" : "a Point, LineString or Polygon";
    }

    F read(Kind kind, String key, Shape shape, JsonMembers properties, Extras extras) {
        return reading.read(new Base<>(kind, key, sort.cast(shape), extras), properties);
    }

    /** The properties of a feature of this sort, without {@code kind}. */
    Map<String, @Nullable Object> properties(Feature feature) {
        Members members = new Members(new LinkedHashMap<>());
        writing.write(type.cast(feature), members);
        return members.map();
    }
}
