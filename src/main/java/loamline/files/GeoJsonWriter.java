package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import loamline.geometry.Point;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/** From a yard to a GeoJSON tree. */
final class GeoJsonWriter {
    private GeoJsonWriter() {}

    static Map<String, @Nullable Object> collection(Yard yard) {
        Function<Point, List<Double>> position = position(yard);
        Map<String, @Nullable Object> collection = new LinkedHashMap<>();
        collection.put("type", "FeatureCollection");
        if (!yard.name().isEmpty()) {
            collection.put("name", yard.name());
        }
        yard.frame()
                .origin()
                .ifPresentOrElse(
                        origin -> collection.put("loamlineOrigin", List.of(origin.lonDeg(), origin.latDeg())),
                        () -> collection.put("loamlineFrame", GeoJson.LOCAL_METRES));
        yard.backdrop().ifPresent(backdrop -> collection.put("loamlineBackdrop", BackdropCodec.written(backdrop)));
        yard.planning().ifPresent(planning -> collection.put("loamlinePlanning", PlanningCodec.written(planning)));
        AttachmentCodec.write(yard.attachments(), collection, "loamlineAttachments");
        GeoJson.COLLECTION.addOthers(yard.extras().members(), collection);
        collection.put(
                "features",
                yard.features().stream().map(f -> feature(f, position)).toList());
        return collection;
    }

    private static Function<Point, List<Double>> position(Yard yard) {
        if (yard.frame().origin().isEmpty()) {
            return p -> List.of(p.x(), p.y());
        }
        Projection projection = new Projection(yard.frame().origin().get());
        return p -> {
            LonLat place = projection.toEarth(p);
            return List.of(place.lonDeg(), place.latDeg());
        };
    }

    private static Map<String, @Nullable Object> feature(Feature feature, Function<Point, List<Double>> position) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("type", "Feature");
        members.put("id", feature.key());
        if (feature instanceof Unknown unknown) {
            members.putAll(asRead(unknown));
            members.put("id", feature.key());
            return members;
        }
        Kind kind = feature.kind().orElseThrow();
        FeatureCodec<?, ?> codec = FeatureCodecs.of(kind);
        FeatureExtras extras = FeatureExtras.of(feature.extras());
        Map<String, @Nullable Object> properties = new LinkedHashMap<>();
        properties.put("kind", kind.word());
        properties.putAll(codec.properties(feature));
        codec.names().addOthers(extras.properties(), properties);
        members.put("properties", properties);
        Map<String, @Nullable Object> geometry =
                GeoJsonGeometry.write(feature.shape().orElseThrow(), position);
        GeoJsonGeometry.NAMES.addOthers(extras.geometry(), geometry);
        members.put("geometry", geometry);
        GeoJsonLayout.NAMES.addOthers(extras.feature(), members);
        return members;
    }

    /** A GeoJSON feature as it was; anything else inside a feature that is drawn nowhere. */
    private static Map<String, @Nullable Object> asRead(Unknown unknown) {
        Map<String, @Nullable Object> raw = unknown.extras().members();
        if (GeoJsonLayout.isFeature(raw)) {
            return raw;
        }
        Map<String, @Nullable Object> wrapped = new LinkedHashMap<>();
        wrapped.put("properties", Map.of());
        wrapped.put("geometry", null);
        wrapped.put(GeoJsonLayout.AS_READ, raw);
        return wrapped;
    }
}
