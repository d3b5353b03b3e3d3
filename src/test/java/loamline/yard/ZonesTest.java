package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;

class ZonesTest {
    @Test
    void turfIsNetOfWhatLiesOnIt() {
        // yard 40 x 30 with holes 12 x 10 and 6 x 6: area 1044 (arithmetic)
        Zone zone = Zones.of(yard(
                        turf("all", box(0, 0, 40, 30)),
                        building(box(14, 10, 26, 20)),
                        cover(Kind.WATER, box(30, 5, 36, 11))))
                .get(0);
        assertThat(zone.grossM2()).isEqualTo(1200);
        assertThat(zone.netAreaM2()).isEqualTo(1044);
        assertThat(zone.minusM2()).containsExactly(Map.entry(Kind.BUILDING, 120.0), Map.entry(Kind.WATER, 36.0));
    }

    @Test
    void groundCoveredTwiceIsChargedOnce() {
        Zone zone = Zones.of(yard(
                        turf("all", box(0, 0, 10, 10)), cover(Kind.PAVING, box(0, 0, 4, 4)), building(box(2, 2, 6, 6))))
                .get(0);
        assertThat(zone.minusM2()).containsExactly(Map.entry(Kind.BUILDING, 16.0), Map.entry(Kind.PAVING, 12.0));
        assertThat(zone.netAreaM2()).isEqualTo(72);
    }

    @Test
    void sharedTurfGoesToTheZoneListedFirst() {
        List<Zone> zones = Zones.of(yard(turf("front", box(0, 0, 10, 10)), turf("back", box(5, 0, 15, 10))));
        assertThat(zones).extracting(Zone::netAreaM2).containsExactly(100.0, 50.0);
    }

    @Test
    void outlinesWithOneNameAreOneZone() {
        List<Zone> zones = Zones.of(yard(
                turf("side", box(0, 0, 10, 10)), turf("back", box(20, 0, 30, 10)), turf("side", box(5, 0, 15, 10))));
        assertThat(zones).extracting(Zone::name).containsExactly("side", "back");
        assertThat(zones.get(0).netAreaM2()).isEqualTo(150);
    }

    @Test
    void aZoneThatIsBuiltOverHasNoArea() {
        Zone zone = Zones.of(yard(turf("strip", box(0, 0, 5, 1)), building(box(-1, -1, 6, 2))))
                .get(0);
        assertThat(zone.netAreaM2()).isZero();
        assertThat(zone.areaSeM2()).isZero();
    }

    @Test
    void aYardWithoutTurfHasNoZones() {
        assertThat(Zones.of(yard(building(box(0, 0, 1, 1))))).isEmpty();
    }

    @Test
    void theStandardErrorOfARectangleIsTheVertexErrorTimesItsDiagonal() {
        // derived: four vertices, each with the diagonal between its neighbours
        Digitizing digitizing = new Digitizing(0.1, 0);
        assertThat(digitizing.areaSeM2(Region.of(Outline.of(box(0, 0, 30, 40)))))
                .isCloseTo(5, within(1e-12));
    }

    @Test
    void theStandardErrorAgreesWithShakingTheVertices() {
        double[] outline = {0, 0, 12, 0, 12, 5, 7, 6, 7, 14, 0, 13};
        double pointM = 0.05;
        Random random = new Random(7);
        double[] areas = new double[20_000];
        for (int i = 0; i < areas.length; i++) {
            double[] shaken = outline.clone();
            for (int j = 0; j < shaken.length; j++) {
                shaken[j] += pointM * random.nextGaussian();
            }
            areas[i] = Region.of(Outline.of(shaken)).areaM2();
        }
        double mean = Arrays.stream(areas).average().orElseThrow();
        double sd =
                Math.sqrt(Arrays.stream(areas).map(a -> (a - mean) * (a - mean)).sum() / (areas.length - 1));
        double formula = new Digitizing(pointM, 0).areaSeM2(Region.of(Outline.of(outline)));
        // the sampling error of a standard deviation from 20,000 draws is 0.5 %
        assertThat(formula / sd).isCloseTo(1, within(0.02));
    }

    @Test
    void aScaleErrorCountsTwiceInTheArea() {
        assertThat(new Digitizing(0, 0.02).areaSeM2(Region.of(Outline.of(box(0, 0, 10, 10)))))
                .isCloseTo(4, within(1e-12));
    }
}
