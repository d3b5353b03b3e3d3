package loamline.files;

import java.io.IOException;
import java.io.InputStream;
import loamline.yard.Yard;

/**
 * Yards as GeoJSON (RFC 7946): longitude and latitude of WGS 84, or plain metres with {@code "loamlineFrame":
 * "local-metres"}.
 *
 * <p>Members of ours beside the standard ones: {@code name}, {@code loamlineFrame}, {@code loamlineOrigin}
 * (where the yard's plane touches the earth; with it every coordinate comes back to the last micrometre),
 * {@code loamlineBackdrop}, {@code loamlinePlanning}, {@code loamlineAttachments}, in a geometry {@code loamlineReversed} (rings that were drawn against the
 * right-hand rule), in a feature {@code loamlineAsRead} (what came from a file of another layout and was not
 * understood). A feature's {@code id} is its key.
 */
public final class GeoJson {
    /** Value of {@code loamlineFrame} for metres. */
    static final String LOCAL_METRES = "local-metres";

    static final JsonNames COLLECTION = JsonNames.of(
            "type",
            "features",
            "name",
            "bbox",
            "crs",
            "loamlineFrame",
            "loamlineOrigin",
            "loamlineBackdrop",
            "loamlinePlanning",
            "loamlineAttachments");

    private GeoJson() {}

    /**
     * Reads a yard.
     *
     * <p>The features keep their order and number. Without {@code loamlineOrigin}, the plane's origin is the
     * centre of the box round all coordinates to 5 decimals; a collection without features has no place.
     *
     * @return no yard if the text is not well formed, not a FeatureCollection, in another reference system, or if
     *     none of its features has a place
     * @throws IOException if the stream cannot be read
     */
    public static Read<Yard> read(InputStream in) throws IOException {
        ProblemLog log = new ProblemLog();
        return new Read<>(JsonTree.read(in, log).flatMap(root -> new GeoJsonReader(root, log).yard()), log.problems());
    }

    /** The text of a yard, UTF-8 once encoded; rings by the right-hand rule, degrees to 12 decimals. */
    public static String write(Yard yard) {
        return JsonText.of(GeoJsonWriter.collection(yard));
    }
}
