package loamline.files;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Walk;

/**
 * Cores and walks as GPX 1.1: cores and spares are waypoints, each walk is a route (a plan to follow; a track
 * would say that somebody has been there). Without a clock, so the same plan gives the same bytes.
 */
public final class GpxFile {
    private static final String CREATOR = "Loamline";

    /** Degrees to 9 decimals: a tenth of a millimetre. */
    private static final int MAX_DECIMALS = 9;

    private GpxFile() {}

    /** The file's text; empty if the yard has no place on the earth, which GPX needs. */
    public static Optional<String> of(CorePlan plan, Frame frame) {
        Places places = new Places(frame);
        if (!places.onEarth()) {
            return Optional.empty();
        }
        GPX.Builder gpx = GPX.builder(GPX.Version.V11, CREATOR);
        plan.cores().forEach(core -> gpx.addWayPoint(waypoint(core, places)));
        Map<Point, String> names = plan.mainCores().stream()
                .collect(Collectors.toMap(PlannedCore::at, PlannedCore::id, (first, second) -> first));
        plan.walks().forEach(walk -> gpx.addRoute(route(walk, names, places)));
        return Optional.of(
                GPX.Writer.of(new GPX.Writer.Indent("  "), MAX_DECIMALS).toString(gpx.build()) + "\n");
    }

    private static WayPoint waypoint(PlannedCore core, Places places) {
        String what = core.spareOf().map(of -> "spare of " + of).orElse("core");
        return at(core.at(), places)
                .name(XmlText.legal(core.id()))
                .desc(XmlText.legal("bag " + core.composite() + ", " + core.zone() + ", " + what))
                .type(core.spareOf().isPresent() ? "spare" : "core")
                .build();
    }

    /** Every turn of the walk; those at a core have its name. */
    private static Route route(Walk walk, Map<Point, String> cores, Places places) {
        List<WayPoint> turns = walk.path().points().stream()
                .map(p -> {
                    WayPoint.Builder turn = at(p, places);
                    Optional.ofNullable(cores.get(p)).ifPresent(id -> turn.name(XmlText.legal(id)));
                    return turn.build();
                })
                .toList();
        return Route.builder()
                .name(XmlText.legal("walk " + walk.composite()))
                .points(turns)
                .build();
    }

    private static WayPoint.Builder at(Point p, Places places) {
        LonLat place = places.onEarth(p).orElseThrow();
        return WayPoint.builder().lat(place.latDeg()).lon(place.lonDeg());
    }
}
