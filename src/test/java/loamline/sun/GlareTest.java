package loamline.sun;

import static loamline.sun.Scenes.sun;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Extras;
import loamline.yard.Panel;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.Test;

class GlareTest {
    /** A panel on the x axis that faces south. */
    private static Panel south(double heightM, double bottomM, double tiltDeg) {
        return new Panel(
                "window",
                heightM,
                bottomM,
                tiltDeg,
                new Polyline(List.of(new Point(3, 0), new Point(-1, 0))),
                Extras.NONE);
    }

    private static List<Glare> thrown(Panel panel, SunPosition... suns) {
        return Glare.of(YardFixtures.yard(panel), List.of(suns));
    }

    @Test
    void anUprightPanelThrowsTheMirrorImageOfItsShadow() {
        for (SunPosition sun : List.of(sun(180, 40), sun(140, 25), sun(250, 60))) {
            Region shadow =
                    ShadowPolygons.of(new Caster.Prism(List.of(new Point(3, 0), new Point(-1, 0)), 1, 2.5, 0), sun);
            Region lit = Region.of(thrown(south(1.5, 1, 0), sun).get(0).ground());
            Region mirrored = Region.of(shadow.outline().map(p -> new Point(p.x(), -p.y())));
            assertThat(lit.areaM2()).isCloseTo(shadow.areaM2(), within(1e-9));
            assertThat(lit.intersection(mirrored).areaM2()).isCloseTo(lit.areaM2(), within(1e-6));
        }
    }

    /** By hand: a face that looks up by 10° throws a sun at 60° down by 40°. */
    @Test
    void aPanelThatLeansBackThrowsFarther() {
        Glare glare = thrown(south(1e-6, 2, 10), sun(180, 60)).get(0);
        assertThat(glare.ground().vertices().mapToDouble(Point::y).max().orElseThrow())
                .isCloseTo(-2 / Math.tan(Math.toRadians(40)), within(1e-4));
    }

    @Test
    void thereIsNoneFromBehindAtNightOrIntoTheSky() {
        assertThat(thrown(south(1, 1, 0), sun(0, 30), sun(10, 1))).isEmpty();
        assertThat(thrown(south(1, 1, 0), sun(180, -3))).isEmpty();
        assertThat(thrown(south(1, 1, 90), sun(180, 30))).as("a roof").isEmpty();
        assertThat(thrown(south(1, 1, 0), sun(180, 0.3))).as("too flat").isEmpty();
    }

    @Test
    void everySideOfABaseIsAFace() {
        Panel corner = new Panel(
                "rail",
                1,
                0,
                0,
                new Polyline(List.of(new Point(0, 2), new Point(0, 0), new Point(0, 0), new Point(-2, 0))),
                Extras.NONE);
        // The first side looks east, the second south; a sun in the south-east meets both.
        assertThat(thrown(corner, sun(135, 30)))
                .hasSize(2)
                .allMatch(g -> g.panel().equals("rail"));
        assertThat(thrown(corner, sun(225, 30))).hasSize(1);
    }
}
