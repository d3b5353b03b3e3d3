package loamline.files;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/**
 * The program's own file, {@code *.loam.json}: a yard, whole and exact.
 *
 * <pre>{@code
 * {
 *  "format": "loamline-yard",
 *  "schema": 1,
 *  "needs": "Loamline 0.1",                  the oldest program that reads this schema
 *  "name": "…",
 *  "origin": [longitude, latitude],          left out for a drawing without a place
 *  "backdrop": {"file": …, "widthPx": …, "heightPx": …, "placement": [a, b, c, d, e, f], …},
 *  "planning": {"kits": 2, "cores": 12, "edgeBufferM": 0.9144, "place": "centre", "seed": 1, …},
 *  "attachments": [{"sort": "readings", "name": "…", "about": "2", "text": "cup,x_m,y_m,ml\n1,…"}, …],
 *  "features": [
 *   {"key": "f1", "kind": "turf", "properties": {"zone": "front"}, "outline": [[[[x, y], …], hole, …], part, …]},
 *   {"key": "f2", "kind": "fence", "properties": {…}, "line": [[x, y], …]},
 *   {"key": "f3", "kind": "tree", "properties": {…}, "point": [x, y]}
 *  ]
 * }
 * }</pre>
 *
 * Properties are named as in GeoJSON ({@link GeoJson}). Coordinates are metres in the yard's plane; where it
 * has a place they lie on the steps of {@link loamline.place.Frame}. Members that this program does not know
 * are kept at every level, so a member that may be left out, as {@code planning} may, needs no new schema: an
 * older program carries it along. {@code asRead} holds a feature of a GeoJSON file that was not understood.
 */
public final class ProjectFile {
    /** What {@code format} says. */
    public static final String FORMAT = "loamline-yard";

    /** How the name of a project file ends. */
    public static final String ENDING = ".loam.json";

    static final JsonNames NAMES = JsonNames.of(
            "format", "schema", "needs", "name", "origin", "backdrop", "planning", "attachments", "features");

    private static final String NEEDS = "Loamline 0.1";

    private ProjectFile() {}

    /**
     * Reads a yard.
     *
     * @return no yard if the text is not well formed or of a newer schema
     * @throws IOException if the stream cannot be read
     */
    public static Read<Yard> read(InputStream in) throws IOException {
        return read(in, Migrations.KNOWN);
    }

    static Read<Yard> read(InputStream in, Migrations migrations) throws IOException {
        ProblemLog log = new ProblemLog();
        return new Read<>(
                JsonTree.read(in, log).flatMap(tree -> new ProjectReader(migrations, log).yard(tree)), log.problems());
    }

    /** The text of a yard, UTF-8 once encoded. */
    public static String write(Yard yard) {
        Map<String, @Nullable Object> root = new LinkedHashMap<>();
        root.put("format", FORMAT);
        root.put("schema", Migrations.KNOWN.newest());
        root.put("needs", NEEDS);
        root.put("name", yard.name());
        yard.frame().origin().ifPresent(origin -> root.put("origin", List.of(origin.lonDeg(), origin.latDeg())));
        yard.backdrop().ifPresent(backdrop -> root.put("backdrop", BackdropCodec.written(backdrop)));
        yard.planning().ifPresent(planning -> root.put("planning", PlanningCodec.written(planning)));
        AttachmentCodec.write(yard.attachments(), root, "attachments");
        NAMES.addOthers(yard.extras().members(), root);
        root.put("features", yard.features().stream().map(ProjectFile::entry).toList());
        return JsonText.of(root);
    }

    private static Map<String, @Nullable Object> entry(Feature feature) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("key", feature.key());
        if (feature instanceof Unknown unknown) {
            entry.putAll(asRead(unknown));
            return entry;
        }
        Kind kind = feature.kind().orElseThrow();
        FeatureCodec<?, ?> codec = FeatureCodecs.of(kind);
        FeatureExtras extras = FeatureExtras.of(feature.extras());
        Map<String, @Nullable Object> properties = codec.properties(feature);
        codec.names().addOthers(extras.properties(), properties);
        entry.put("kind", kind.word());
        if (!properties.isEmpty()) {
            entry.put("properties", properties);
        }
        ProjectLayout.NAMES.addOthers(extras.feature(), entry);
        if (!extras.geometry().isEmpty()) {
            entry.put("geometry", extras.geometry());
        }
        feature.shape().ifPresent(shape -> entry.put(ProjectLayout.member(shape), ProjectLayout.written(shape)));
        return entry;
    }

    /** An entry of ours as it was; a GeoJSON feature inside an entry. */
    private static Map<String, @Nullable Object> asRead(Unknown unknown) {
        Map<String, @Nullable Object> raw = unknown.extras().members();
        return GeoJsonLayout.isFeature(raw) ? Map.of(ProjectLayout.AS_READ, raw) : raw;
    }
}
