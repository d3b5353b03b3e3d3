package loamline.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Gate;
import loamline.yard.Head;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemoYardsTest {
    /** Rounding of overlays over lots of 60 m, m². */
    private static final double OVERLAY_TOLERANCE_M2 = 1e-9;

    /** Half the width that stands for a fence which stops a walker, m. */
    private static final double FENCE_HALF_M = 0.02;

    static Stream<DemoYard> yards() {
        return DemoYards.all().stream();
    }

    @ParameterizedTest
    @MethodSource("yards")
    void everySquareMetreOfTheLotIsTraced(DemoYard demo) {
        Region lot = lot(demo.yard());
        Region traced = Region.union(ground(demo.yard(), f -> true));
        assertThat(lot.minus(traced).areaM2()).isLessThan(OVERLAY_TOLERANCE_M2);
        assertThat(traced.minus(lot).areaM2()).isLessThan(OVERLAY_TOLERANCE_M2);
    }

    @ParameterizedTest
    @MethodSource("yards")
    void zonesDoNotOverlapNorDoTheThingsThatLieOnThem(DemoYard demo) {
        Predicate<Feature> isTurf = Turf.class::isInstance;
        for (Predicate<Feature> layer : List.of(isTurf, isTurf.negate())) {
            List<Region> pieces = ground(demo.yard(), layer);
            double sum = pieces.stream().mapToDouble(Region::areaM2).sum();
            assertThat(sum).isCloseTo(Region.union(pieces).areaM2(), within(OVERLAY_TOLERANCE_M2));
        }
    }

    @ParameterizedTest
    @MethodSource("yards")
    void shellsRunCounterClockwiseAndHolesClockwise(DemoYard demo) {
        demo.yard().features().stream()
                .flatMap(f -> f.shape().stream())
                .filter(Outline.class::isInstance)
                .flatMap(shape -> ((Outline) shape).parts().stream())
                .forEach(part -> {
                    assertThat(signedAreaM2(part.shell())).as(part.toString()).isPositive();
                    part.holes().forEach(hole -> assertThat(signedAreaM2(hole)).isNegative());
                });
    }

    @ParameterizedTest
    @MethodSource("yards")
    void headsStandOnTurfOrAtItsEdge(DemoYard demo) {
        Region turf = Region.union(ground(demo.yard(), Turf.class::isInstance)).buffer(FENCE_HALF_M);
        assertThat(demo.yard().all(Head.class)).allMatch(head -> turf.covers(head.at()));
    }

    @ParameterizedTest
    @MethodSource("yards")
    void theFencedPartsAreReachedThroughTheirGatesOnly(DemoYard demo) {
        Point start = demo.yard().all(Gate.class).findFirst().orElseThrow().at();
        Region open = walkable(demo.yard(), barrier -> barrier.closedStretches());
        Region shut = walkable(demo.yard(), barrier -> List.of(barrier.line()));
        double everywhere = open.areaM2();
        assertThat(partWith(open, start).areaM2()).isCloseTo(everywhere, within(OVERLAY_TOLERANCE_M2));
        assertThat(partWith(shut, start).areaM2()).isLessThan(0.75 * everywhere);
    }

    @ParameterizedTest
    @MethodSource("yards")
    void everyBuildingOfThePictureHasARoofOverItsWalls(DemoYard demo) {
        Region roofs = Region.union(demo.scenery().roofs().stream()
                .map(roof -> Region.of(Roofs.plan(roof)))
                .toList());
        assertThat(demo.yard().all(Building.class))
                .allMatch(b -> Region.of(b.outline()).minus(roofs).isEmpty());
    }

    @Test
    void theOnlyDryGroundOfPloverCourtIsTheHoleOfKnownArea() {
        Yard yard = PloverCourt.yard().yard();
        Region wet = Region.union(yard.all(Head.class).map(Throws::of).toList());
        Region turf = Region.union(ground(yard, Turf.class::isInstance))
                .minus(Region.union(ground(yard, f -> !(f instanceof Turf))));
        List<Region> dry = turf.minus(wet).parts().stream()
                .filter(part -> part.areaM2() > OVERLAY_TOLERANCE_M2)
                .toList();
        assertThat(dry).hasSize(1);
        assertThat(dry.get(0).areaM2()).isCloseTo(holeM2(), within(Throws.AREA_TOLERANCE_M2));
        assertThat(dry.get(0).covers(PloverCourt.HOLE_MIDDLE)).isTrue();
    }

    @Test
    void theHoleHasTheAreaThatIsWrittenDown() {
        assertThat(holeM2()).isCloseTo(DemoYards.HOLE_M2, within(5e-5));
    }

    /** A square less four quarter discs, neighbours of which share half a lens each; plane geometry. */
    private static double holeM2() {
        double s = PloverCourt.HOLE_SQUARE_M;
        double r = PloverCourt.HOLE_RADIUS_M;
        double lens = 2 * r * r * Math.acos(s / (2 * r)) - s / 2 * Math.sqrt(4 * r * r - s * s);
        return s * s - Math.PI * r * r + 2 * lens;
    }

    private static Region lot(Yard yard) {
        return Region.of(yard.all(Boundary.class).findFirst().orElseThrow().outline());
    }

    /** Turf, covers and buildings that fit, one region each. */
    private static List<Region> ground(Yard yard, Predicate<Feature> which) {
        return yard.features().stream()
                .filter(f -> f instanceof Turf || f instanceof Cover || f instanceof Building)
                .filter(which)
                .map(f -> Region.of((Outline) f.shape().orElseThrow()))
                .toList();
    }

    private static Region walkable(Yard yard, Function<Barrier, List<Polyline>> stops) {
        List<Region> shut = new ArrayList<>(ground(yard, Building.class::isInstance));
        yard.all(Barrier.class)
                .flatMap(barrier -> stops.apply(barrier).stream())
                .forEach(line -> shut.add(Region.around(line, FENCE_HALF_M)));
        return lot(yard).minus(Region.union(shut));
    }

    private static Region partWith(Region region, Point p) {
        return region.parts().stream()
                .filter(part -> part.covers(p))
                .findFirst()
                .orElseThrow();
    }

    private static double signedAreaM2(List<Point> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
