package loamline.files;

import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import org.jspecify.annotations.Nullable;

/** Where the parts of a feature stand in one sort of file. Whatever is wrong goes to the log of its members. */
interface FeatureLayout {
    /** A feature's shape, as the file has it. */
    interface Drawing {
        /** The shape in the file's coordinates. */
        Shape shape();

        /** The shape as drawn, each of the file's positions brought to the yard's plane. */
        Shape drawn(UnaryOperator<Point> toYard);

        /** Members of the geometry that are not ours. */
        Map<String, @Nullable Object> others();
    }

    /** The names of a feature's own members. */
    JsonNames names();

    /** The member with its key. */
    String keyName();

    /** The member for what came from a file of another layout and was not understood. */
    String asReadName();

    /** Whether an object is a feature at all; if not, that is reported. */
    boolean isFeature(JsonMembers feature);

    /** The object that says of what kind a feature is. */
    JsonMembers kindHolder(JsonMembers feature, JsonMembers properties);

    /** How a feature is drawn; empty, and reported, if it is not or if that cannot be read. */
    Optional<? extends Drawing> drawing(JsonMembers feature);
}
