package loamline.desk.sun;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sun.Glare;
import loamline.yard.Building;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Panel;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;

class SunModelTest {
    private static final LonLat ILLINOIS = new LonLat(-88.2, 40.1);
    private static final Building TOWER = new Building("b", "Tower", 9, 0, Outline.of(box(0, -6, 20, 0)), Extras.NONE);

    /** North of the tower, deep in its shade near it and out of it far from it. */
    private static final Feature LAWN = turf("North", box(0, 0, 20, 24));

    private static final int NOON = 12 * 60;

    private static Session session(Frame frame, Feature... features) {
        Session session = new Session(Yard.empty("y", frame).withFeatures(List.of(features)), AtOnce.work());
        session.seen().set(true);
        return session;
    }

    private static Session onEarth(Feature... features) {
        return session(Frame.at(ILLINOIS), features);
    }

    @Test
    void zonesAreCutByLightInOneNamedEdit() {
        Session session = onEarth(TOWER, LAWN);
        SunModel model = new SunModel(session, 2027);
        model.season().set(Season.EQUINOX);
        Yard before = session.history().get().now();
        model.zones().cut();
        List<Zone> zones = Zones.of(session.history().get().now());
        assertThat(zones).extracting(Zone::name).contains("North, deep shade", "North, full sun");
        assertThat(zones.stream().mapToDouble(Zone::netAreaM2).sum()).isCloseTo(480, within(0.01));
        assertThat(model.zones().cutting().outcome().get())
                .isEqualTo("1 zone became " + zones.size()
                        + " zones, by hours of sun on 2027-03-21 and 2027-09-21. Undo takes it back.");
        session.undo();
        assertThat(session.history().get().now()).isEqualTo(before);
    }

    @Test
    void oneLightMakesNoEditAndSaysSo() {
        Session session = onEarth(LAWN);
        SunModel model = new SunModel(session, 2027);
        model.zones().cut();
        assertThat(session.history().get().now().features()).containsExactly(LAWN);
        assertThat(model.zones().cutting().outcome().get())
                .isEqualTo("Nothing to cut by sun: each zone is all of one part.");
    }

    @Test
    void withoutAPlaceOnTheEarthThereAreNoZonesBySun() {
        SunModel model = new SunModel(session(Frame.local(), LAWN), 2027);
        model.zones().cut();
        assertThat(model.zones().cutting().outcome().get())
                .isEqualTo("Hours of sun need turf, and a place on the earth.");
    }

    @Test
    void glareIsSeenAtAnHourOnlyAndSouthOfASouthernWindow() {
        Polyline base = new Polyline(List.of(new Point(20, -6), new Point(0, -6)));
        Panel window = new Panel("p", 1.5, 1, 0, base, Extras.NONE);
        SunModel model = new SunModel(onEarth(TOWER, LAWN, window), 2027);
        assertThat(model.found().get().glare()).isEmpty();
        model.minute().set(OptionalInt.of(NOON));
        assertThat(model.found().get().glare()).extracting(Glare::panel).containsExactly("p");
        assertThat(model.found().get().glare().get(0).ground().vertices()).allMatch(at -> at.y() < -6);
        assertThat(model.glareWords()).startsWith("Glare where");
        model.minute().set(OptionalInt.of(0));
        assertThat(model.found().get().glare()).isEmpty();
        assertThat(model.glareWords()).isEqualTo("No panel throws the sun on the ground now.");
    }

    @Test
    void withoutAPanelItSaysHowToGetOne() {
        assertThat(new SunModel(onEarth(TOWER, LAWN), 2027).glareWords()).contains("panel in Trace (Q)");
    }
}
