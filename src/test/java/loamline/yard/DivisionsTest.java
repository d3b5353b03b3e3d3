package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.ZoneDivision.Part;
import org.junit.jupiter.api.Test;

/** Areas are worked out by hand from the drawings. */
class DivisionsTest {
    private static final double LEAST_M2 = 10;
    private static final Turf LAWN = turf("Lawn", 0, 0, 30, 0, 30, 40, 0, 40);
    private static final Boundary LOT = new Boundary("lot", "", Outline.of(box(0, 0, 30, 40)), Extras.NONE);
    private static final Building HOUSE = building(box(10, 15, 20, 25));
    private static final Cover DRIVE = cover(Kind.PAVING, box(22, 0, 25, 15));

    private static Map<String, Double> netM2(Yard yard, Optional<List<Part>> parts) {
        return Zones.of(ZoneDivision.of(yard, parts.orElseThrow(), LEAST_M2).orElseThrow()).stream()
                .collect(Collectors.toMap(Zone::name, zone -> zone.net().areaM2()));
    }

    @Test
    void theLawnRoundAHouseIsPartedThroughItsMiddle() {
        Map<String, Double> areas =
                netM2(yard(LAWN, LOT, HOUSE, DRIVE), Divisions.byHouse(yard(LAWN, LOT, HOUSE, DRIVE)));
        assertThat(areas).containsOnlyKeys("Lawn, front", "Lawn, back");
        assertThat(areas.get("Lawn, front")).isCloseTo(30 * 20 - 50 - 45, within(1e-6));
        assertThat(areas.get("Lawn, back")).isCloseTo(30 * 20 - 50, within(1e-6));
    }

    @Test
    void theFrontIsWhereTheDriveMeetsTheLineElseWhereTheGateIs() {
        Gate gate = new Gate("gate", new Point(29, 20), Extras.NONE);
        assertThat(front(yard(LAWN, LOT, HOUSE, DRIVE, gate)).covers(new Point(5, 5)))
                .isTrue();
        assertThat(front(yard(LAWN, LOT, HOUSE, gate)).covers(new Point(5, 5))).isFalse();
        assertThat(front(yard(LAWN, LOT, HOUSE, gate)).covers(new Point(29, 39)))
                .isTrue();
        assertThat(Divisions.byHouse(yard(LAWN, LOT, HOUSE))).isEmpty();
        assertThat(Divisions.byHouse(yard(LAWN, LOT, DRIVE))).isEmpty();
    }

    private static loamline.geometry.Region front(Yard yard) {
        return Divisions.byHouse(yard).orElseThrow().get(0).ground();
    }

    @Test
    void thePartingLineRunsAlongTheWallOfATurnedHouse() {
        // walls at 3 in 4 to the axes; middle at 15, 20.25
        Building turned = building(15, 14, 21, 22, 15, 26.5, 9, 18.5);
        Gate south = new Gate("gate", new Point(10, 0), Extras.NONE);
        Part front =
                Divisions.byHouse(yard(LAWN, LOT, turned, south)).orElseThrow().get(0);
        Point middle = new Point(15, 20.25);
        // the wall that looks to the gate runs from 9, 18.5 to 15, 14: 6 east and 4.5 south
        assertThat(front.ground().distanceToEdge(middle)).isCloseTo(0, within(1e-9));
        assertThat(front.ground().distanceToEdge(middle.plus(8, -6))).isCloseTo(0, within(1e-9));
        assertThat(front.ground().covers(new Point(2, 2))).isTrue();
        assertThat(front.ground().covers(new Point(28, 38))).isFalse();
    }

    @Test
    void troubleSpotsBecomeZonesOfTheirOwn() {
        Trouble spot =
                new Trouble("spot", "thin", java.util.OptionalInt.empty(), Outline.of(box(0, 30, 5, 40)), Extras.NONE);
        Map<String, Double> areas = netM2(yard(LAWN, spot), Divisions.byTrouble(yard(LAWN, spot)));
        assertThat(areas.get("Lawn, trouble")).isCloseTo(50, within(1e-6));
        assertThat(areas.get("Lawn, sound")).isCloseTo(1150, within(1e-6));
        assertThat(Divisions.byTrouble(yard(LAWN))).isEmpty();
    }

    @Test
    void groundGoesToTheValveWhoseHeadReachesItElseToTheNearest() {
        Yard yard = yard(
                LAWN, head("1", 0, 20, 10, 0, 180), head("2", 30, 20, 10, 180, 180), head("2", 4, 20, 10, 180, 180));
        List<Part> parts = Divisions.byValve(yard).orElseThrow();
        assertThat(parts).extracting(Part::word).containsExactly("valve 1", "valve 2");
        assertThat(parts.get(0).ground().covers(new Point(6, 20))).isTrue(); // nearer to a head of 2 that looks away
        assertThat(parts.get(1).ground().covers(new Point(25, 20))).isTrue();
        assertThat(parts.get(1).ground().covers(new Point(18, 38))).isTrue(); // reached by none
        assertThat(parts.get(0).ground().areaM2() + parts.get(1).ground().areaM2())
                .isCloseTo(50 * 60, within(1e-6));
        assertThat(Divisions.byValve(yard(LAWN, head("1", 0, 20, 10, 0, 180)))).isEmpty();
    }

    private static Head head(String valve, double x, double y, double radiusM, double startDeg, double sweepDeg) {
        return new Head(
                valve + x,
                valve + x,
                valve,
                Optional.empty(),
                OptionalDouble.of(radiusM),
                startDeg,
                sweepDeg,
                OptionalDouble.empty(),
                Head.DEFAULT_PROFILE,
                0,
                new Point(x, y),
                Extras.NONE);
    }
}
