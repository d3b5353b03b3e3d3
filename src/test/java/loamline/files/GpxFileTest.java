package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import org.junit.jupiter.api.Test;

class GpxFileTest {
    private static final String TEXT =
            GpxFile.of(PlanFixture.plan("front"), PlanFixture.COLUMBUS).orElseThrow();

    private static GPX read(String text) throws Exception {
        return GPX.Reader.of(GPX.Version.V11, GPX.Reader.Mode.STRICT)
                .read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void itIsValid() throws Exception {
        XmlChecks.validate(TEXT, "gpx-1.1-part.xsd");
    }

    @Test
    void coresAndSparesAreWaypoints() throws Exception {
        assertThat(read(TEXT).getWayPoints())
                .extracting(p -> p.getName().orElseThrow() + " " + p.getType().orElseThrow())
                .containsExactly("A1 core", "A2 core", "A1s spare");
        assertThat(read(TEXT).getWayPoints().get(2).getDescription()).contains("bag A, front, spare of A1");
    }

    @Test
    void aWalkIsARouteOfAllItsTurnsWithTheNamesOfTheCores() throws Exception {
        var routes = read(TEXT).getRoutes();
        assertThat(routes).hasSize(1);
        assertThat(routes.get(0).getName()).contains("walk A");
        assertThat(routes.get(0).getPoints())
                .extracting(p -> p.getName().orElse("-"))
                .containsExactly("-", "A1", "-", "A2", "-");
    }

    @Test
    void placesAreRightToATenthOfAMillimetre() throws Exception {
        WayPoint core = read(TEXT).getWayPoints().get(1);
        Point back = new Projection(PlanFixture.COLUMBUS.origin().orElseThrow())
                .toYard(new LonLat(
                        core.getLongitude().doubleValue(), core.getLatitude().doubleValue()));
        assertThat(back.distanceTo(new Point(7, 3))).isCloseTo(0, within(1e-4));
    }

    @Test
    void thereIsNoClockInIt() throws Exception {
        assertThat(TEXT).doesNotContain("<time>").doesNotContain("<metadata>");
    }

    @Test
    void theSamePlanGivesTheSameBytesEverywhere() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(GpxFile.of(PlanFixture.plan("front"), PlanFixture.COLUMBUS))
                    .contains(TEXT);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void namesMayHoldAnything() throws Exception {
        String text = GpxFile.of(PlanFixture.plan("<b> & \"ü\" \u0001 \uD83C\uDF33 \uD800"), PlanFixture.COLUMBUS)
                .orElseThrow();
        XmlChecks.validate(text, "gpx-1.1-part.xsd");
        assertThat(read(text).getWayPoints().get(0).getDescription())
                .contains("bag A, <b> & \"ü\" \uFFFD \uD83C\uDF33 \uFFFD, core");
    }

    @Test
    void aDrawingWithoutAPlaceHasNoGpx() {
        assertThat(GpxFile.of(PlanFixture.plan("front"), Frame.local())).isEmpty();
    }
}
