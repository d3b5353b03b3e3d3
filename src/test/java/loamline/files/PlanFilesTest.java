package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.place.Projection;
import loamline.yard.Core;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class PlanFilesTest {
    private static final Map<String, String> ON_EARTH =
            PlanFiles.of(PlanFixture.plan("front, \"left\""), PlanFixture.COLUMBUS);
    private static final Map<String, String> LOCAL = PlanFiles.of(PlanFixture.plan("front"), Frame.local());

    private static JsonNode json(Map<String, String> files, String name) throws Exception {
        return new ObjectMapper().readTree(files.get(name));
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void thereAreFourFiles() {
        assertThat(ON_EARTH).containsOnlyKeys("cores.json", "cores.csv", "cores.geojson", "accounts.json");
        assertThat(ON_EARTH.values())
                .allSatisfy(text -> assertThat(text).endsWith("\n").doesNotContain("\r"));
    }

    @Test
    void theJsonHasEveryKeyOfTheContract() throws Exception {
        JsonNode tree = json(ON_EARTH, "cores.json");
        assertThat(tree.get("seed").asLong()).isEqualTo(7);
        assertThat(tree.get("totalWalkM").asDouble()).isEqualTo(14.5);
        JsonNode composite = tree.at("/composites/0");
        assertThat(names(composite)).contains("name", "zones", "cores", "areaM2", "stratumAreaCv", "mssdM2", "probe");
        assertThat(composite.get("cores").asInt()).isEqualTo(2);
        assertThat(composite.get("stratumAreaCv").asDouble()).isEqualTo(0.01);
        assertThat(composite.get("mssdM2").isNull()).isTrue();
        assertThat(composite.at("/probe/volumeMl").asDouble()).isEqualTo(62.5);
        assertThat(composite.at("/probe/depthM").asDouble()).isEqualTo(0.1);
        assertThat(composite.at("/probe/diameterM").asDouble()).isEqualTo(0.02);
        assertThat(composite.at("/strata/0/areaM2").asDouble()).isEqualTo(25);
        JsonNode walk = tree.at("/walks/0");
        assertThat(names(walk)).contains("composite", "lengthM", "lowerBoundM", "proven", "path");
        assertThat(walk.get("proven").asBoolean()).isFalse();
        assertThat(walk.get("path")).hasSize(5);
        assertThat(walk.at("/path/1/1").asDouble()).isEqualTo(3);
        assertThat(tree.at("/merges/0/cost").asDouble()).isEqualTo(0.125);
    }

    @Test
    void sparesFollowTheCoresAndHaveNoOrder() throws Exception {
        JsonNode cores = json(ON_EARTH, "cores.json").get("cores");
        assertThat(cores).extracting(core -> core.get("id").asText()).containsExactly("A1", "A2", "A1s");
        assertThat(names(cores.get(0)))
                .containsExactly("id", "composite", "zone", "xM", "yM", "lon", "lat", "stratum", "spareOf", "order");
        assertThat(cores.get(0).get("spareOf").isNull()).isTrue();
        assertThat(cores.get(0).get("order").asInt()).isEqualTo(1);
        assertThat(cores.get(2).get("spareOf").asText()).isEqualTo("A1");
        assertThat(cores.get(2).get("order").isNull()).isTrue();
    }

    @Test
    void placesOnEarthLeadBackToTheMetres() throws Exception {
        JsonNode core = json(ON_EARTH, "cores.json").at("/cores/1");
        LonLat place = new LonLat(core.get("lon").asDouble(), core.get("lat").asDouble());
        assertThat(new Projection(PlanFixture.COLUMBUS.origin().orElseThrow()).toYard(place))
                .isEqualTo(new Point(7, 3));
    }

    @Test
    void aDrawingWithoutAPlaceHasNoLongitudes() throws Exception {
        assertThat(names(json(LOCAL, "cores.json").at("/cores/0")))
                .doesNotContain("lon", "lat")
                .contains("xM", "yM");
        assertThat(LOCAL.get("cores.csv")).startsWith("id,composite,zone,x_m,y_m,stratum,spare_of,order\n");
        assertThat(json(LOCAL, "cores.geojson").get("loamlineFrame").asText()).isEqualTo("local-metres");
    }

    @Test
    void theTableQuotesAndLeavesBlank() {
        List<String> lines = ON_EARTH.get("cores.csv").lines().toList();
        assertThat(lines.get(0)).isEqualTo("id,composite,zone,x_m,y_m,lon,lat,stratum,spare_of,order");
        assertThat(lines.get(1))
                .startsWith("A1,A,\"front, \"\"left\"\"\",2.0,3.0,-82.99")
                .endsWith(",1,,1");
        assertThat(lines.get(3)).endsWith(",1,A1,");
    }

    @Test
    void theGeoJsonIsAYardOfCores() throws Exception {
        for (Map<String, String> files : List.of(ON_EARTH, LOCAL)) {
            Read<Yard> read = GeoJson.read(
                    new ByteArrayInputStream(files.get("cores.geojson").getBytes(StandardCharsets.UTF_8)));
            Yard yard = read.value().orElseThrow();
            assertThat(yard.all(Core.class)).extracting(Core::id).containsExactly("A1", "A2");
            assertThat(yard.all(Core.class))
                    .allSatisfy(core -> assertThat(core.composite()).isEqualTo("A"));
            assertThat(yard.all(Unknown.class)).hasSize(2); // the spare and the walk, which are no cores to keep
            assertThat(read.problems()).noneMatch(p -> p.isError());
        }
    }

    @Test
    void everyAccountHasItsParts() throws Exception {
        JsonNode account = json(ON_EARTH, "accounts.json").get("/composites/0/areaM2");
        assertThat(account.get("formula").asText()).isEqualTo("A = net");
        assertThat(account.at("/inputs/net_m2").asDouble()).isEqualTo(50);
        assertThat(account.at("/source/0").asText()).isEqualTo("own");
        assertThat(account.at("/citations/0").asText()).isEqualTo("derived");
        assertThat(account.get("note").asText()).isEqualTo("What is left.");
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(PlanFiles.of(PlanFixture.plan("front"), Frame.local())).isEqualTo(LOCAL);
    }

    @Test
    void numbersAreWrittenInFull() throws Exception {
        double lon = json(ON_EARTH, "cores.json").at("/cores/0/lon").asDouble();
        double expected = new Projection(PlanFixture.COLUMBUS.origin().orElseThrow())
                .toEarth(new Point(2, 3))
                .lonDeg();
        assertThat(lon).isCloseTo(expected, within(0.0));
    }
}
