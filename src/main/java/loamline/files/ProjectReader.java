package loamline.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/** From a project file's tree to a yard. */
final class ProjectReader {
    /** The code of the problem that only another program can solve. */
    static final String SCHEMA_NEWER = "SCHEMA_NEWER";

    private final Migrations migrations;
    private final ProblemLog log;

    ProjectReader(Migrations migrations, ProblemLog log) {
        this.migrations = migrations;
        this.log = log;
    }

    /** The yard; empty if the tree is no project of a schema that this program knows. */
    Optional<Yard> yard(Map<String, @Nullable Object> tree) {
        JsonMembers root = new JsonMembers(tree, "", log);
        if (!ProjectFile.FORMAT.equals(tree.get("format"))) {
            log.error("NOT_A_PROJECT", root.at("format"), "must be “" + ProjectFile.FORMAT + "”: choose another file");
            return Optional.empty();
        }
        OptionalInt schema = root.whole("schema");
        if (schema.isEmpty() || schema.getAsInt() < 1) {
            log.error("SCHEMA_MISSING", root.at("schema"), "must be a whole number from 1: open a backup");
            return Optional.empty();
        }
        if (schema.getAsInt() > migrations.newest()) {
            log.error(SCHEMA_NEWER, root.at("schema"), newerMessage(root, schema.getAsInt()));
            return Optional.empty();
        }
        return Optional.of(newest(new JsonMembers(migrations.toNewest(tree, schema.getAsInt()), "", log)));
    }

    private String newerMessage(JsonMembers root, int schema) {
        return "written by a newer Loamline: the file has schema " + schema + ", this program reads up to "
                + migrations.newest() + "; open it with "
                + root.text("needs").map(needs -> needs + " or later").orElse("the newest version");
    }

    private Yard newest(JsonMembers root) {
        Frame frame = root.lonLat("origin").map(Frame::at).orElse(Frame.local());
        return new Yard(
                root.text("name", ""),
                frame,
                features(root, frame),
                root.object("backdrop").flatMap(BackdropCodec::read),
                root.object("planning").map(PlanningCodec::read),
                AttachmentCodec.read(root, "attachments"),
                new Extras(root.others(ProjectFile.NAMES)));
    }

    private List<Feature> features(JsonMembers root, Frame frame) {
        boolean isOnEarth = frame.origin().isPresent();
        UnaryOperator<Point> toYard = isOnEarth ? Frame::onStep : UnaryOperator.identity();
        FeatureLayout layout =
                new ProjectLayout(isOnEarth ? Coordinates.Sort.METRES_ON_EARTH : Coordinates.Sort.METRES);
        List<?> list = root.list("features");
        List<FeatureRead> read = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            read.add(FeatureRead.of(list.get(i), root.at("features") + "/" + i, layout, log));
        }
        return FeatureRead.features(read, toYard, log);
    }
}
