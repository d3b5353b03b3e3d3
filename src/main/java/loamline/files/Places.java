package loamline.files;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import org.jspecify.annotations.Nullable;

/** Points of a yard for result files: metres always, longitude and latitude where the yard has a place. */
final class Places {
    private final Optional<Projection> projection;

    Places(Frame frame) {
        this.projection = frame.origin().map(Projection::new);
    }

    boolean onEarth() {
        return projection.isPresent();
    }

    Optional<LonLat> onEarth(Point p) {
        return projection.map(earth -> earth.toEarth(p));
    }

    /** A point as GeoJSON has it: longitude and latitude, or metres where there is no place. */
    List<Double> position(Point p) {
        return onEarth(p)
                .map(place -> Arrays.asList(place.lonDeg(), place.latDeg()))
                .orElseGet(() -> Arrays.asList(p.x(), p.y()));
    }

    /** Adds {@code xM, yM} and, where there is a place, {@code lon, lat}. */
    void put(Map<String, @Nullable Object> members, Point p) {
        members.put("xM", p.x());
        members.put("yM", p.y());
        onEarth(p).ifPresent(place -> {
            members.put("lon", place.lonDeg());
            members.put("lat", place.latDeg());
        });
    }
}
