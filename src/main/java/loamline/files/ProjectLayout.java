package loamline.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Shape;
import org.jspecify.annotations.Nullable;

/**
 * Features as the project file has them: {@code key}, {@code kind}, {@code properties}, and one of {@code
 * point} (a position), {@code line} (a list of positions) and {@code outline} (a list of parts, each a shell
 * and its holes, rings open and as drawn).
 *
 * @param sort what the coordinates are
 */
record ProjectLayout(Coordinates.Sort sort) implements FeatureLayout {
    static final String AS_READ = "asRead";
    static final JsonNames NAMES =
            JsonNames.of("key", "kind", "properties", "point", "line", "outline", "geometry", AS_READ);

    /** @param others members that a geometry had in another layout */
    private record AsDrawn(Shape shape, Map<String, @Nullable Object> others) implements Drawing {
        @Override
        public Shape drawn(UnaryOperator<Point> toYard) {
            return shape.map(toYard);
        }
    }

    @Override
    public JsonNames names() {
        return NAMES;
    }

    @Override
    public String keyName() {
        return "key";
    }

    @Override
    public String asReadName() {
        return AS_READ;
    }

    @Override
    public boolean isFeature(JsonMembers feature) {
        return true;
    }

    @Override
    public JsonMembers kindHolder(JsonMembers feature, JsonMembers properties) {
        return feature;
    }

    @Override
    public Optional<AsDrawn> drawing(JsonMembers feature) {
        Map<?, ?> members = feature.members();
        Coordinates coordinates = new Coordinates(sort, feature.log());
        Optional<Shape> shape;
        if (members.containsKey("point")) {
            shape = coordinates.point(members.get("point"), feature.at("point"));
        } else if (members.containsKey("line")) {
            shape = coordinates.line(members.get("line"), feature.at("line"));
        } else if (members.containsKey("outline")) {
            shape = coordinates.polygons(members.get("outline"), feature.at("outline"));
        } else {
            feature.log()
                    .error(
                            "GEOMETRY_MISSING",
                            feature.pointer(),
                            "has neither “point” nor “line” nor “outline”: draw it again");
            return Optional.empty();
        }
        JsonNames none = JsonNames.of();
        return shape.map(s -> new AsDrawn(
                s, feature.object("geometry").map(g -> g.others(none)).orElse(Map.of())));
    }

    /** The name of the member that holds a shape. */
    static String member(Shape shape) {
        if (shape instanceof Point) {
            return "point";
        }
        return shape instanceof Polyline ? "line" : "outline";
    }

    /** A shape as nested lists. */
    static Object written(Shape shape) {
        if (shape instanceof Point p) {
            return position(p);
        }
        if (shape instanceof Polyline line) {
            return line.points().stream().map(ProjectLayout::position).toList();
        }
        return Rings.nested((Outline) shape, ProjectLayout::position);
    }

    private static List<Double> position(Point p) {
        return List.of(p.x(), p.y());
    }
}
