package loamline.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.yard.Extras;
import loamline.yard.Kind;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/** From a GeoJSON tree to a yard. */
final class GeoJsonReader {
    private final JsonMembers root;
    private final ProblemLog log;
    private final boolean isLocal;

    GeoJsonReader(Map<String, @Nullable Object> tree, ProblemLog log) {
        this.root = new JsonMembers(tree, "", log);
        this.log = log;
        this.isLocal = GeoJson.LOCAL_METRES.equals(tree.get("loamlineFrame"));
    }

    /** The yard; empty if the tree is no collection in coordinates that we know. */
    Optional<Yard> yard() {
        if (!isCollection() || !isInKnownCoordinates()) {
            return Optional.empty();
        }
        List<FeatureRead> read = withHeadIds(read());
        Frame frame = isLocal ? local(read) : onEarth(read);
        if (!isLocal && frame.origin().isEmpty() && !read.isEmpty()) {
            log.error("NO_PLACE", root.at("features"), "no feature could be placed on the earth: mend them first");
            return Optional.empty();
        }
        return Optional.of(new Yard(
                root.text("name", ""),
                frame,
                FeatureRead.features(read, toYard(frame), log),
                root.object("loamlineBackdrop").flatMap(BackdropCodec::read),
                root.object("loamlinePlanning").map(PlanningCodec::read),
                AttachmentCodec.read(root, "loamlineAttachments"),
                new Extras(root.others(GeoJson.COLLECTION))));
    }

    private Frame local(List<FeatureRead> read) {
        Box.around(read.stream().flatMap(f -> f.shape().stream()).flatMap(Shape::vertices))
                .ifPresent(box -> EarthPlace.doubtWidth(box, log));
        return Frame.local();
    }

    /** The plane where the features lie; those too far from the others are set aside. */
    private Frame onEarth(List<FeatureRead> read) {
        Optional<LonLat> given = root.lonLat("loamlineOrigin");
        boolean isPlaced = read.stream().anyMatch(feature -> feature.shape().isPresent());
        EarthPlace place = EarthPlace.of(
                read.stream().map(FeatureRead::shape).toList(), isPlaced ? given : given.or(() -> guess(read)), log);
        place.far().forEach(i -> read.set(i, read.get(i).setAside()));
        return place.frame();
    }

    /** Where features lie that are not understood: what is kept in degrees needs a plane on the earth. */
    private static Optional<LonLat> guess(List<FeatureRead> read) {
        ProblemLog unheard = new ProblemLog();
        List<Optional<Shape>> shapes = read.stream()
                .map(feature -> new JsonMembers(feature.asRead(), "", unheard)
                        .object("geometry")
                        .flatMap(geometry ->
                                GeoJsonGeometry.read(geometry, new Coordinates(Coordinates.Sort.DEGREES, unheard)))
                        .map(GeoJsonGeometry::shape))
                .toList();
        return EarthPlace.of(shapes, Optional.empty(), unheard).frame().origin();
    }

    private boolean isCollection() {
        Object type = root.members().get("type");
        if ("FeatureCollection".equals(type)) {
            return true;
        }
        log.error(
                "NOT_A_COLLECTION",
                root.at("type"),
                type instanceof String
                        ? "a “" + type + "” is no yard: put its features into a “FeatureCollection”"
                        : "neither a Loamline project nor GeoJSON: the member “type” must be “FeatureCollection”");
        return false;
    }

    private boolean isInKnownCoordinates() {
        Object frame = root.members().get("loamlineFrame");
        if (frame != null && !isLocal) {
            log.error(
                    "FRAME_UNKNOWN",
                    root.at("loamlineFrame"),
                    "must be “" + GeoJson.LOCAL_METRES + "” or be left out for longitude and latitude");
            return false;
        }
        String crs = JsonText.excerpt(root.members().get("crs"), 200);
        if (isLocal || crs.equals("null") || crs.contains("CRS84") || crs.contains("4326")) {
            return true;
        }
        log.error(
                "CRS_NOT_WGS84",
                root.at("crs"),
                "the coordinates are in another reference system: export the file in WGS 84 longitude and latitude");
        return false;
    }

    private List<FeatureRead> read() {
        List<?> list = root.list("features");
        if (list.isEmpty()) {
            log.error("NO_FEATURES", root.at("features"), "there are no features in this file: choose another");
        }
        FeatureLayout layout = new GeoJsonLayout(isLocal ? Coordinates.Sort.METRES : Coordinates.Sort.DEGREES);
        List<FeatureRead> read = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            read.add(FeatureRead.of(list.get(i), root.at("features") + "/" + i, layout, log));
        }
        return read;
    }

    private static UnaryOperator<Point> toYard(Frame frame) {
        if (frame.origin().isEmpty()) {
            return UnaryOperator.identity();
        }
        Projection projection = new Projection(frame.origin().get());
        return degrees -> projection.toYard(new LonLat(degrees.x(), degrees.y()));
    }

    /** Names heads that have no id: h1, h2, … by their position among the heads; taken names are passed over. */
    private static List<FeatureRead> withHeadIds(List<FeatureRead> read) {
        List<FeatureRead> heads = read.stream().filter(f -> f.is(Kind.HEAD)).toList();
        Set<String> taken = heads.stream()
                .flatMap(head -> head.property("id").stream())
                .map(String::valueOf)
                .collect(Collectors.toCollection(HashSet::new));
        List<FeatureRead> named = new ArrayList<>(read.size());
        int position = 0;
        int spare = heads.size();
        for (FeatureRead feature : read) {
            if (feature.is(Kind.HEAD)) {
                String id = "h" + ++position;
                boolean isNamed = feature.property("id").isPresent();
                while (!isNamed && !taken.add(id)) {
                    id = "h" + ++spare;
                }
                named.add(isNamed ? feature : feature.withProperty("id", id));
            } else {
                named.add(feature);
            }
        }
        return named;
    }
}
