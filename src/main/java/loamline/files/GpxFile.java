package loamline.files;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.WayPoint;
import java.util.List;
import java.util.Optional;
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

    private GpxFile() {}

    /** The file's text; empty if the yard has no place on the earth, which GPX needs. */
    public static Optional<String> of(CorePlan plan, Frame frame) {
        Places places = new Places(frame);
        if (!places.onEarth()) {
            return Optional.empty();
        }
        GPX.Builder gpx = GPX.builder(GPX.Version.V11, CREATOR);
        plan.cores().forEach(core -> gpx.addWayPoint(waypoint(core, places)));
        plan.walks().forEach(walk -> gpx.addRoute(route(walk, places)));
        return Optional.of(
                GPX.Writer.of(new GPX.Writer.Indent("  "), MAX_DECIMALS).toString(gpx.build()) + "\n");
    }

    /** Degrees to 9 decimals: a tenth of a millimetre. */
    private static final int MAX_DECIMALS = 9;

    private static WayPoint waypoint(PlannedCore core, Places places) {
        String what = core.spareOf().map(of -> "spare of " + of).orElse("core");
        return at(core.at(), places)
                .name(core.id())
                .desc("bag " + core.composite() + ", " + core.zone() + ", " + what)
                .type(core.spareOf().isPresent() ? "spare" : "core")
                .build();
    }

    private static Route route(Walk walk, Places places) {
        List<WayPoint> turns =
                walk.path().points().stream().map(p -> at(p, places).build()).toList();
        return Route.builder().name("walk " + walk.composite()).points(turns).build();
    }

    private static WayPoint.Builder at(Point p, Places places) {
        LonLat place = places.onEarth(p).orElseThrow();
        return WayPoint.builder().lat(place.latDeg()).lon(place.lonDeg());
    }
}
