package loamline.files;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.yard.Kind;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;

class ZoneFilesTest {
    /** 40 x 30 with holes of 12 x 10 and 6 x 6: 1044 m² (arithmetic); and 10 x 10 beside it. */
    private static final Map<String, String> FILES = ZoneFiles.of(Zones.of(yard(
            turf("front", box(0, 0, 40, 30)),
            turf("back/yard", Optional.of("B"), box(50, 0, 60, 10)),
            building(box(14, 10, 26, 20)),
            cover(Kind.WATER, box(30, 5, 36, 11)))));

    private static JsonNode json(String name) throws Exception {
        return new ObjectMapper().readTree(FILES.get(name));
    }

    @Test
    void theJsonHasEveryKeyOfTheContract() throws Exception {
        JsonNode tree = json("zones.json");
        assertThat(tree.get("totalNetAreaM2").asDouble()).isEqualTo(1144);
        JsonNode front = tree.at("/zones/0");
        assertThat(front.get("name").asText()).isEqualTo("front");
        assertThat(front.get("netAreaM2").asDouble()).isEqualTo(1044);
        assertThat(front.get("grossAreaM2").asDouble()).isEqualTo(1200);
        assertThat(front.get("perimeterM").asDouble()).isEqualTo(208);
        assertThat(front.get("areaSeM2").asDouble()).isPositive();
        assertThat(front.at("/minus/building").asDouble()).isEqualTo(120);
        assertThat(front.at("/minus/water").asDouble()).isEqualTo(36);
        assertThat(front.get("minus")).hasSize(2);
        assertThat(front.has("bag")).isFalse();
        assertThat(tree.at("/zones/1/bag").asText()).isEqualTo("B");
    }

    @Test
    void theTableHasAColumnForEveryCover() {
        assertThat(FILES.get("zones.csv").lines().toList())
                .startsWith("name,net_area_m2,gross_area_m2,area_se_m2,perimeter_m,minus_building_m2,minus_paving_m2,"
                        + "minus_bed_m2,minus_gravel_m2,minus_water_m2,minus_deck_m2")
                .anyMatch(line ->
                        line.startsWith("front,1044.0,1200.0,") && line.endsWith(",208.0,120.0,0.0,0.0,0.0,36.0,0.0"));
    }

    @Test
    void everyAccountPointsAtANumberOfTheResult() throws Exception {
        JsonNode result = json("zones.json");
        JsonNode accounts = json("accounts.json");
        assertThat(accounts.fieldNames())
                .toIterable()
                .contains("/zones/0/netAreaM2", "/zones/1/areaSeM2", "/totalNetAreaM2")
                .allSatisfy(pointer -> assertThat(result.at(pointer).isNumber()).isTrue());
        assertThat(accounts.at("/~1totalNetAreaM2/inputs/back~1yard").asDouble())
                .isEqualTo(100);
    }

    @Test
    void aYardWithoutTurfHasNoZones() throws Exception {
        Map<String, String> files = ZoneFiles.of(List.of());
        assertThat(files.get("zones.json")).isEqualTo("{\"zones\": [], \"totalNetAreaM2\": 0.0}\n");
        assertThat(files.get("zones.csv").lines()).hasSize(1);
    }
}
