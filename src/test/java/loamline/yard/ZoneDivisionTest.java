package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import loamline.yard.ZoneDivision.Part;
import org.junit.jupiter.api.Test;

/** By hand: rectangles on whole metres. */
class ZoneDivisionTest {
    private static final double LEAST_M2 = 10;
    private static final Turf FRONT = turf("Front", Optional.of("A"), box(0, 0, 20, 10));
    private static final Turf BACK = turf("Back", box(0, 20, 20, 30));

    /** Full sun east of a line, shade west of it. */
    private static List<Part> split(double x) {
        return List.of(
                new Part("shade", Region.of(Outline.of(box(-100, -100, x, 100)))),
                new Part("full sun", Region.of(Outline.of(box(x, -100, 100, 100)))));
    }

    private static Map<String, Double> areas(Yard yard) {
        return Zones.of(yard).stream().collect(Collectors.toMap(Zone::name, Zone::netAreaM2));
    }

    @Test
    void aZoneInTwoClassesBecomesTwoAndKeepsItsBagAndItsGround() {
        Yard after = ZoneDivision.of(yard(FRONT), split(5), LEAST_M2).orElseThrow();
        assertThat(areas(after)).isEqualTo(Map.of("Front, full sun", 150.0, "Front, shade", 50.0));
        assertThat(after.all(Turf.class)).extracting(Turf::bag).containsOnly(Optional.of("A"));
        assertThat(after.features().get(0).key()).isEqualTo(FRONT.key());
    }

    @Test
    void aZoneInOneClassIsLeftAlone() {
        Yard before = yard(turf("West", box(0, 0, 4, 10)), FRONT);
        Yard after = ZoneDivision.of(before, split(5), LEAST_M2).orElseThrow();
        assertThat(after.features().get(0)).isEqualTo(before.features().get(0));
        assertThat(ZoneDivision.of(yard(FRONT, BACK), split(-1), LEAST_M2)).isEmpty();
        assertThat(ZoneDivision.of(yard(), split(5), LEAST_M2)).isEmpty();
    }

    @Test
    void tooLittleOfAClassGoesWithTheLargestPiece() {
        assertThat(ZoneDivision.of(yard(FRONT), split(0.9), LEAST_M2)).isEmpty();
        assertThat(ZoneDivision.of(yard(FRONT), split(1), LEAST_M2)).isPresent();
    }

    @Test
    void groundOfNoClassStaysInTheOutline() {
        Yard before = yard(FRONT, building(box(8, 2, 14, 8)));
        Region house = Region.of(Outline.of(box(8, 2, 14, 8)));
        List<Part> net = split(5).stream()
                .map(part -> new Part(part.word(), part.ground().minus(house)))
                .toList();
        Yard after = ZoneDivision.of(before, net, LEAST_M2).orElseThrow();
        double outlinedM2 = after.all(Turf.class)
                .mapToDouble(turf -> Region.of(turf.outline()).areaM2())
                .sum();
        assertThat(outlinedM2).isCloseTo(200, within(1e-9));
        assertThat(areas(after)).isEqualTo(Map.of("Front, full sun", 150.0 - 36, "Front, shade", 50.0));
    }

    @Test
    void twoOutlinesOfAZoneInTwoClassesAreToldApartUncut() {
        Turf west = turf("Strip", box(0, 0, 4, 10));
        Turf east = turf("Strip", box(6, 0, 7, 2));
        Yard after = ZoneDivision.of(yard(west, east), split(5), LEAST_M2).orElseThrow();
        assertThat(after.features()).containsExactly(west.withZone("Strip, shade"), east.withZone("Strip, full sun"));
    }

    @Test
    void cutAnewPiecesOfOneClassComeTogether() {
        Yard once = ZoneDivision.of(yard(FRONT), split(5), LEAST_M2).orElseThrow();
        Yard again = ZoneDivision.of(once, split(12), LEAST_M2).orElseThrow();
        assertThat(areas(again)).isEqualTo(Map.of("Front, full sun", 80.0, "Front, shade", 120.0));
    }
}
