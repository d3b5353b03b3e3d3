package loamline.files;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import org.jspecify.annotations.Nullable;

/**
 * A geometry of RFC 7946, section 3.1, as it stands in the file.
 *
 * <p>RFC 7946 wants shells counterclockwise and holes clockwise. Rings that were drawn the other way round are
 * written turned, and their numbers go into the member {@code loamlineReversed}, so that the drawing can be
 * read back as it was.
 *
 * @param shape in the file's coordinates, rings closed if the file closes them
 * @param reversed the rings that were drawn the other way round, counted through all parts from 0
 * @param members the geometry in the file
 */
record GeoJsonGeometry(Shape shape, Set<Integer> reversed, JsonMembers members) implements FeatureLayout.Drawing {
    static final JsonNames NAMES = JsonNames.of("type", "coordinates", "bbox", "loamlineReversed");

    @Override
    public Shape drawn(UnaryOperator<Point> toYard) {
        Shape there = shape.map(toYard);
        return there instanceof Outline outline ? Rings.asDrawn(outline, reversed) : there;
    }

    @Override
    public Map<String, @Nullable Object> others() {
        return members.others(NAMES);
    }

    /** Reads a geometry; empty, with errors in the log, if it is none or not of a sort that features have. */
    static Optional<GeoJsonGeometry> read(JsonMembers geometry, Coordinates coordinates) {
        String type = geometry.text("type", "");
        @Nullable Object given = geometry.members().get("coordinates");
        String at = geometry.at("coordinates");
        Optional<Shape> shape = switch (type) {
            case "Point" -> coordinates.point(given, at);
            case "LineString" -> coordinates.line(given, at);
            case "Polygon" -> coordinates.polygon(given, at);
            case "MultiPolygon" -> coordinates.polygons(given, at);
            case "MultiPoint", "MultiLineString" -> onlyOne(geometry, type, coordinates);
            default -> {
                geometry.log()
                        .error(
                                "GEOMETRY_TYPE",
                                geometry.at("type"),
                                "“" + type + "” cannot be drawn in a yard: use Point, LineString, Polygon or"
                                        + " MultiPolygon");
                yield Optional.empty();
            }
        };
        return shape.map(s -> new GeoJsonGeometry(s, reversed(geometry), geometry));
    }

    /** Some programs write every point and line as a list of one. */
    private static Optional<Shape> onlyOne(JsonMembers geometry, String type, Coordinates coordinates) {
        List<?> list = geometry.list("coordinates");
        if (list.size() != 1) {
            geometry.log()
                    .error(
                            "GEOMETRY_TYPE",
                            geometry.at("type"),
                            "a " + type + " of " + list.size() + ": make each of them a feature of its own");
            return Optional.empty();
        }
        String at = geometry.at("coordinates") + "/0";
        return type.equals("MultiPoint") ? coordinates.point(list.get(0), at) : coordinates.line(list.get(0), at);
    }

    private static Set<Integer> reversed(JsonMembers geometry) {
        Set<Integer> reversed = new HashSet<>();
        for (Object ring : geometry.list("loamlineReversed")) {
            if (ring instanceof Long number) {
                reversed.add(number.intValue());
            }
        }
        return reversed;
    }

    /** A shape as a geometry; each point becomes the position that the function gives. */
    static Map<String, @Nullable Object> write(Shape drawn, Function<Point, List<Double>> position) {
        if (drawn instanceof Point point) {
            return geometry("Point", position.apply(point));
        }
        if (drawn instanceof Polyline line) {
            return geometry("LineString", line.points().stream().map(position).toList());
        }
        Rings.ForFile rings = Rings.forFile((Outline) drawn);
        List<List<List<List<Double>>>> parts = Rings.nested(rings.outline(), position);
        Map<String, @Nullable Object> geometry =
                parts.size() == 1 ? geometry("Polygon", parts.get(0)) : geometry("MultiPolygon", parts);
        if (!rings.reversed().isEmpty()) {
            geometry.put("loamlineReversed", rings.reversed());
        }
        return geometry;
    }

    private static Map<String, @Nullable Object> geometry(String type, Object coordinates) {
        Map<String, @Nullable Object> geometry = new LinkedHashMap<>();
        geometry.put("type", type);
        geometry.put("coordinates", coordinates);
        return geometry;
    }
}
