package loamline.files;

import java.util.Map;
import java.util.Optional;

/**
 * Features as RFC 7946, section 3.2, has them.
 *
 * @param sort what the coordinates are
 */
record GeoJsonLayout(Coordinates.Sort sort) implements FeatureLayout {
    static final String AS_READ = "loamlineAsRead";
    static final JsonNames NAMES = JsonNames.of("type", "id", "properties", "geometry", "bbox", AS_READ);

    @Override
    public JsonNames names() {
        return NAMES;
    }

    @Override
    public String keyName() {
        return "id";
    }

    @Override
    public String asReadName() {
        return AS_READ;
    }

    /** Whether an object says that it is a GeoJSON feature. */
    static boolean isFeature(Map<?, ?> members) {
        return "Feature".equals(members.get("type"));
    }

    @Override
    public boolean isFeature(JsonMembers feature) {
        boolean isFeature = isFeature(feature.members());
        if (!isFeature) {
            feature.log()
                    .error(
                            "FEATURE_TYPE",
                            feature.at("type"),
                            "the type must be “Feature”; this is kept but not used: correct it or take it out");
        }
        return isFeature;
    }

    @Override
    public JsonMembers kindHolder(JsonMembers feature, JsonMembers properties) {
        return properties;
    }

    @Override
    public Optional<GeoJsonGeometry> drawing(JsonMembers feature) {
        if (feature.members().get("geometry") == null) {
            feature.log()
                    .error("GEOMETRY_MISSING", feature.at("geometry"), "this is drawn nowhere: draw it or take it out");
        }
        return feature.object("geometry")
                .flatMap(geometry -> GeoJsonGeometry.read(geometry, new Coordinates(sort, feature.log())));
    }
}
