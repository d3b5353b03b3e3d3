package loamline.sun;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.turf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.geometry.Outline;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.raster.GridSpec;
import loamline.yard.Building;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;

class SunStudyTest {
    private static final LonLat ILLINOIS = new LonLat(-89.05, 40.35);
    private static final LocalDate JUNE = LocalDate.of(2027, 6, 21);
    private static final LocalDate DECEMBER = LocalDate.of(2027, 12, 21);
    private static final Duration TEN = Duration.ofMinutes(10);

    /** A step more or less on either side of noon, and rounding. */
    private static final double STEP_H = 1 / 6.0 + 1e-9;

    private static Yard at(LonLat place, Feature... features) {
        return Yard.empty("", Frame.at(place)).withFeatures(List.of(features));
    }

    private static SunRequest request(double cellM, LocalDate... dates) {
        return new SunRequest(List.of(dates), TEN, cellM);
    }

    private static SunStudy study(Yard yard, SunRequest request) {
        SunStudy.Answer answer = SunStudy.of(yard, request);
        assertThat(answer.problems()).isEmpty();
        return answer.study().orElseThrow();
    }

    private static List<String> codes(Yard yard, SunRequest request) {
        return SunStudy.of(yard, request).problems().stream().map(Problem::code).toList();
    }

    /** A house 6 m high with turf round it. */
    private static Yard house() {
        Feature house = new Building("house", "", 6, 0, Outline.of(box(10, 10, 20, 18)), Extras.NONE);
        return at(ILLINOIS, turf("south", box(0, 0, 30, 14)), turf("north", box(0, 14, 30, 28)), house);
    }

    @Test
    void openTurfHasTheSunAllDay() {
        SunStudy open = study(at(ILLINOIS, turf("all", box(0, 0, 20, 10))), request(0.5, JUNE));
        ZoneSun zone = open.zones().get(0);
        double dayH = open.positions().size() / 6.0;
        assertThat(zone.meanHours()).isCloseTo(dayH, within(1e-9));
        assertThat(zone.p10()).isCloseTo(dayH, within(1e-9));
        assertThat(zone.p90()).isCloseTo(dayH, within(1e-9));
        assertThat(zone.morningHours() + zone.afternoonHours()).isCloseTo(dayH, within(1e-9));
        assertThat(zone.morningHours()).isCloseTo(zone.afternoonHours(), within(STEP_H));
        assertThat(zone.classShares()).containsEntry("full sun", 1.0).containsEntry("deep shade", 0.0);
        // acos(−tan φ tan δ) / 7.5 h.
        double half = Math.acos(-Math.tan(Math.toRadians(40.35)) * Math.tan(Math.toRadians(23.436)));
        assertThat(dayH).isCloseTo(Math.toDegrees(half) / 7.5, within(STEP_H));
    }

    /**
     * FAO-56's clear-sky radiation, 0.75 of what arrives outside the air (41.7 MJ/m² in mid June at 40° N), with 2.06
     * mol/MJ: another model of the same sky.
     */
    @Test
    void theLightOfAClearDayAgreesWithAnotherClearSky() {
        double mol = study(at(ILLINOIS, turf("all", box(0, 0, 20, 10))), request(0.5, JUNE))
                .zones()
                .get(0)
                .clearDayMolM2();
        assertThat(mol).isCloseTo(0.75 * 41.8 * 2.06, within(6.0));
    }

    @Test
    void datesAreAveraged() {
        ZoneSun june = study(house(), request(0.5, JUNE)).zones().get(1);
        ZoneSun december = study(house(), request(0.5, DECEMBER)).zones().get(1);
        ZoneSun both = study(house(), request(0.5, JUNE, DECEMBER)).zones().get(1);
        assertThat(both.meanHours()).isCloseTo((june.meanHours() + december.meanHours()) / 2, within(1e-6));
        assertThat(both.clearDayMolM2()).isCloseTo((june.clearDayMolM2() + december.clearDayMolM2()) / 2, within(1e-3));
    }

    @Test
    void zonesFollowFromTheirCells() {
        SunStudy study = study(house(), request(0.25, DECEMBER));
        assertThat(study.zones()).extracting(ZoneSun::name).containsExactly("south", "north");
        assertThat(study.zones().get(0).meanHours())
                .isGreaterThan(study.zones().get(1).meanHours());
        double[] all = Arrays.stream(study.hours().values())
                .filter(h -> !Double.isNaN(h))
                .toArray();
        double turfM2 = 30 * 28 - 80;
        assertThat(all.length * 0.0625).isCloseTo(turfM2, within(1e-9));
        double south = 30 * 14 - 40;
        double mean =
                (study.zones().get(0).meanHours() * south + study.zones().get(1).meanHours() * (turfM2 - south))
                        / turfM2;
        assertThat(Arrays.stream(all).average().orElseThrow()).isCloseTo(mean, within(1e-9));
        assertThat(study.zones().get(1).accounts()).containsKeys("meanHours", "p10", "clearDayMolM2", "classShares");
    }

    @Test
    void aGridOfTheSameYardIsTheSameTwice() {
        assertThat(study(house(), request(0.25, JUNE)).hours().values())
                .isEqualTo(study(house(), request(0.25, JUNE)).hours().values());
    }

    @Test
    void whatCannotBeAnsweredIsRefusedWithItsReason() {
        assertThat(codes(YardFixtures.yard(turf("all", box(0, 0, 9, 9))), request(1, JUNE)))
                .containsExactly("SUN_NO_PLACE");
        assertThat(codes(at(ILLINOIS, building(box(0, 0, 9, 9))), request(1, JUNE)))
                .containsExactly("SUN_NO_TURF");
        assertThat(codes(at(ILLINOIS, turf("all", box(0, 0, 9, 9))), request(1e-5, JUNE)))
                .containsExactly("SUN_CELL_TOO_SMALL");
    }

    @Test
    void polarNightAndNarrowZonesAreTold() {
        Yard north = at(new LonLat(20, 80), turf("all", box(0, 0, 9, 9)), turf("strip", box(9.51, 0, 9.52, 9)));
        SunStudy.Answer answer = SunStudy.of(north, request(1, DECEMBER));
        assertThat(answer.problems()).extracting(Problem::code).containsExactly("SUN_NOT_UP", "SUN_ZONE_TOO_SMALL");
        ZoneSun zone = answer.study().orElseThrow().zones().get(0);
        assertThat(zone.meanHours()).isZero();
        assertThat(zone.clearDayMolM2()).isZero();
    }

    @Test
    void requestsWithoutSenseAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SunRequest(List.of(), TEN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> request(Double.NaN, JUNE));
        assertThat(request(1, JUNE, DECEMBER, JUNE).dates()).containsExactly(JUNE, DECEMBER);
    }

    /** Hyndman & Fan 1996, type 7, worked out by hand. */
    @Test
    void quantilesLieBetweenNeighbours() {
        double[] sorted = {1, 2, 4, 8, 16};
        assertThat(ZoneSun.quantile(sorted, 0.1)).isCloseTo(1.4, within(1e-12));
        assertThat(ZoneSun.quantile(sorted, 0.5)).isEqualTo(4);
        assertThat(ZoneSun.quantile(sorted, 0.9)).isCloseTo(12.8, within(1e-12));
        assertThat(ZoneSun.quantile(new double[] {3}, 0.9)).isEqualTo(3);
    }

    @Test
    void shadeAtAMomentIsThatOfTheStudy() {
        GridSpec grid = new GridSpec(0, 0, 0.5, 60, 56);
        Shade shade = Shade.of(house(), JUNE, 40.35, grid);
        SunPosition noon = SunPath.at(ILLINOIS, Instant.parse("2027-06-21T18:00:00Z"));
        float[] light = shade.light(noon);
        double shadedM2 =
                IntStream.range(0, light.length).filter(i -> light[i] == 0).count() * grid.cellAreaM2();
        // By hand: the footprint and its width across the sun times the shadow's length.
        double a = Math.toRadians(noon.azimuthDeg());
        double across = 10 * Math.abs(Math.cos(a)) + 8 * Math.abs(Math.sin(a));
        assertThat(shadedM2).isCloseTo(80 + across * 6 / Math.tan(Math.toRadians(noon.elevationDeg())), within(4.0));
        assertThat(shade.light(SunPath.at(ILLINOIS, Instant.parse("2027-06-21T06:00:00Z"))))
                .containsOnly(0f);
    }

    @Test
    void sunClassesCutTheTurfWithoutGapOrOverlap() {
        Yard yard = house();
        List<SunClass> classes = SunClass.propose(study(yard, request(0.25, DECEMBER)), Zones.of(yard));
        assertThat(classes)
                .extracting(c -> c.light().name())
                .startsWith("deep shade")
                .doesNotHaveDuplicates();
        Region all = Region.union(classes.stream().map(SunClass::ground).toList());
        double sum = classes.stream().mapToDouble(c -> c.ground().areaM2()).sum();
        assertThat(all.areaM2()).isCloseTo(760, within(1e-6));
        assertThat(sum).isCloseTo(760, within(1e-6));
    }

    @Test
    void smallPatchesGoToTheNeighbourWithTheLongestBorder() {
        int n = Patchwork.NONE;
        int[] labels = {0, 0, 0, 0, n, 0, 2, 1, 1, n, 0, 0, 1, 1, n, n, n, n, n, 3};
        assertThat(new Patchwork(5, labels).withoutSmall(2).labels())
                .containsExactly(0, 0, 0, 0, n, 0, 0, 1, 1, n, 0, 0, 1, 1, n, n, n, n, n, 3);
        assertThat(new Patchwork(5, labels).withoutSmall(5).labels())
                .containsExactly(0, 0, 0, 0, n, 0, 0, 0, 0, n, 0, 0, 0, 0, n, n, n, n, n, 3);
        assertThat(new Patchwork(3, new int[] {n, n, n, n, 4, n, n, n, n})
                        .grown(1)
                        .labels())
                .containsExactly(n, 4, n, 4, 4, 4, n, 4, n);
    }
}
