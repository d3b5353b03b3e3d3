package loamline.sampling;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Boundary;
import loamline.yard.Extras;
import loamline.yard.KeepAway;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;

class EligibleGroundTest {
    private static PlanOptions edge(double edgeM) {
        PlanOptions u = PlanOptions.USUAL;
        return new PlanOptions(
                u.kits(),
                u.coresPerComposite(),
                edgeM,
                u.trunkBufferM(),
                u.headBufferM(),
                u.place(),
                u.sparesPerStratum(),
                u.seed(),
                u.walk(),
                u.probe(),
                Extras.NONE);
    }

    private static Region eligible(Yard yard, int zone, double edgeM) {
        return EligibleGround.of(yard, edge(edgeM)).in(Zones.of(yard).get(zone));
    }

    @Test
    void staysOffTheOuterEdgeButNotOffTheLineBetweenTwoZones() {
        Yard yard = yard(turf("a", box(0, 0, 10, 10)), turf("b", box(10, 0, 20, 10)));
        assertThat(eligible(yard, 0, 1).areaM2()).isCloseTo(9 * 8, within(1e-9));
    }

    @Test
    void aHairlineBetweenTwoTracedZonesIsNoEdge() {
        Yard yard = yard(turf("a", box(0, 0, 10, 10)), turf("b", box(10.04, 0, 20, 10)));
        // 9 x 8, less a notch where the hairline meets the outer edge; 8 x 8 if it counted as an edge
        assertThat(eligible(yard, 0, 1).areaM2()).isBetween(71.95, 72.0);
    }

    @Test
    void staysTheFullDistanceOffARoundCorner() {
        Yard yard = yard(turf("a", box(0, 0, 20, 20)), building(box(9, 9, 11, 11)));
        Region ground = eligible(yard, 0, 1);
        Point corner = new Point(9, 9);
        assertThat(ground.outline()
                        .vertices()
                        .mapToDouble(corner::distanceTo)
                        .min()
                        .orElseThrow())
                .isBetween(1.0, 1.002);
    }

    @Test
    void keepAwaySpotsKeepTheirOwnRadius() {
        Yard yard =
                yard(turf("a", box(0, 0, 20, 20)), new KeepAway("k", 2, "pet spot", new Point(10, 10), Extras.NONE));
        assertThat(eligible(yard, 0, 0).areaM2()).isCloseTo(400 - 4 * Math.PI, within(0.05));
    }

    @Test
    void aNarrowStripHasNoRoomForACore() {
        assertThat(eligible(yard(turf("strip", box(0, 0, 1.5, 30))), 0, 1).isEmpty())
                .isTrue();
    }

    @Test
    void staysWithinThePropertyLine() {
        Yard yard =
                yard(new Boundary("lot", "", Outline.of(box(0, 0, 10, 20)), Extras.NONE), turf("a", box(0, 0, 20, 20)));
        assertThat(eligible(yard, 0, 1).areaM2()).isCloseTo(9 * 18, within(1e-9));
    }
}
