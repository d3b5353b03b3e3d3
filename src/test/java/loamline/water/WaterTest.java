package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.files.YardFiles;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.raster.Grid;
import loamline.raster.GridSpec;
import loamline.water.Coverage.Destination;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Cover;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.Kind;
import loamline.yard.Profile.Named;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

class WaterTest {
    private static final Yard DEMO =
            YardFiles.read(Path.of("maps/plover-court.geojson")).yard().orElseThrow();

    /** Quarter heads in the corners of a square lawn. */
    private static List<Head> square(double sideM, double radiusM) {
        return List.of(
                Heads.head("sw", new Point(0, 0), radiusM, 0, 90, 3),
                Heads.head("nw", new Point(0, sideM), radiusM, 90, 90, 3),
                Heads.head("ne", new Point(sideM, sideM), radiusM, 180, 90, 3),
                Heads.head("se", new Point(sideM, 0), radiusM, 270, 90, 3));
    }

    private static Yard lawn(double sideM, List<? extends Feature> more) {
        List<Feature> features = new ArrayList<>();
        features.add(Heads.turf("Lawn", 0, 0, sideM, 0, sideM, sideM, 0, sideM));
        features.addAll(more);
        return Heads.yard(features);
    }

    private static Water water(Yard yard) {
        return Water.of(yard, WaterOptions.USUAL);
    }

    private static double share(Water water, String ground) {
        return water.coverage().destinations().stream()
                .filter(d -> d.ground().equals(ground))
                .mapToDouble(Destination::share)
                .sum();
    }

    /** The four circles of 7 m about a square of 12 m leave 9.5842 m² about (22, 36): square − 4 circles + 4 lenses. */
    @Test
    void theHoleOfTheDemoYardIsFound() {
        List<Gap> gaps = water(DEMO).gaps();
        double lens = 2 * 49 * Math.acos(12 / 14.0) - 6 * Math.sqrt(4 * 49 - 144);
        double expectedM2 = 144 - Math.PI * 49 + 4 * lens / 2;
        assertThat(expectedM2).isCloseTo(9.5842, within(1e-4));
        assertThat(gaps).hasSize(1);
        assertThat(gaps.get(0).areaM2()).isCloseTo(expectedM2, within(0.01 * expectedM2));
        assertThat(gaps.get(0).centroid().distanceTo(new Point(22, 36))).isLessThan(0.01);
        assertThat(gaps.get(0).zone()).isEqualTo("Back lawn");
    }

    @Test
    void aSquareWithHeadsARadiusApartHasNoHoleAndTheUniformityOfItsLattice() {
        Water water = water(lawn(10, square(10, 10)));
        assertThat(water.problems()).isEmpty();
        assertThat(water.gaps()).isEmpty();
        ValveWater valve = water.valves().get(0);
        assertThat(valve.heads()).containsExactly("sw", "nw", "ne", "se");
        assertThat(valve.flowLpm()).isEqualTo(12);
        assertThat(valve.turfAreaM2()).isCloseTo(100, within(0.01));
        assertThat(valve.throwAreaM2()).isCloseTo(100, within(0.01));
        assertThat(valve.cells()).isEqualTo(10_000);
        assertThat(valve.grossMmH().orElseThrow()).isCloseTo(7.2, within(1e-3));
        assertThat(valve.meanMmH().orElseThrow()).isCloseTo(7.2, within(7.2e-3));
        Uniformity even = valve.uniformity().orElseThrow();
        assertThat(100 * even.cu()).isCloseTo(96.4, within(0.3)); // table of square layouts, cone, 50 %
        assertThat(100 * even.duLq()).isCloseTo(95.0, within(0.3));
        assertThat(valve.sc5().orElseThrow()).isCloseTo(1.05, within(0.02));
        assertThat(share(water, Destination.TURF)).isCloseTo(1, within(1e-4));
        assertThat(water.coverage().offTurfShare()).isCloseTo(0, within(1e-4));
    }

    /** Ground under 0 to 3 arcs, counted on cells of 2 cm. */
    @Test
    void groundIsCountedByTheHeadsThatReachIt() {
        List<Head> heads = square(10, 8);
        Water water = water(lawn(10, heads));
        int[] cells = new int[4];
        for (int i = 0; i < 500 * 500; i++) {
            double x = (i % 500 + 0.5) / 50;
            double y = (i / 500 + 0.5) / 50;
            long reached = water.patterns().values().stream()
                    .filter(p -> p.reaches(x, y))
                    .count();
            cells[(int) Math.min(3, reached)]++;
        }
        for (int depth = 0; depth <= 3; depth++) {
            assertThat(water.coverage().reachedBy().get(depth).areaM2())
                    .as("reached by " + depth)
                    .isCloseTo(cells[depth] / 2500.0, within(0.05));
        }
        assertThat(water.coverage().reachedBy().stream()
                        .mapToDouble(r -> r.areaM2())
                        .sum())
                .isCloseTo(100, within(1e-6));
    }

    @Test
    void statisticsRunOverTurfInsideTheHullOnly() {
        Head one = Heads.head("a", new Point(5, 5), 2, 0, 360, 4);
        ValveWater valve = water(lawn(10, List.of(one))).valves().get(0);
        assertThat(valve.turfAreaM2()).isCloseTo(Math.PI * 4, within(0.02));
        assertThat(valve.cells() * 0.01).isCloseTo(Math.PI * 4, within(0.1));
        assertThat(valve.minMmH().orElseThrow()).isGreaterThan(0);
        assertThat(valve.meanMmH().orElseThrow())
                .isCloseTo(4 * 60 / (Math.PI * 4), within(0.2)); // cells cut by the rim
    }

    @Test
    void waterGoesWhereItsGroundIs() {
        Head head = Heads.head("a", new Point(10, 5), 4, 0, 180, 6); // throws east, off the lawn
        Outline paving = Outline.of(10, 0, 12, 0, 12, 10, 10, 10);
        Outline lot = Outline.of(0, 0, 13, 0, 13, 10, 0, 10);
        Yard yard = lawn(
                10,
                List.of(
                        head,
                        new Cover("p", Kind.PAVING, "", paving, Extras.NONE),
                        new Boundary("b", "", lot, Extras.NONE)));
        Water water = water(yard);
        HeadPattern pattern = water.patterns().get("a");
        double[] expected = new double[3]; // paving, other, outside, on cells of 2 cm
        for (int i = 0; i < 200 * 400; i++) {
            double x = 10 + (i % 200 + 0.5) / 50;
            double y = 1 + (i / 200 + 0.5) / 50;
            expected[x < 12 ? 0 : x < 13 ? 1 : 2] += pattern.rateMmH(x, y) / 2500 / 360;
        }
        assertThat(share(water, "paving")).isCloseTo(expected[0], within(2e-3));
        assertThat(share(water, Destination.OTHER)).isCloseTo(expected[1], within(2e-3));
        assertThat(share(water, Destination.OUTSIDE)).isCloseTo(expected[2], within(2e-3));
        assertThat(share(water, Destination.TURF)).isZero();
        assertThat(water.problems()).extracting(Problem::code).contains("VALVE_OFF_TURF");
        assertThat(water.coverage().destinations().stream().mapToDouble(Destination::litresAYear))
                .as("a valve without turf does not run")
                .allMatch(litres -> litres == 0);
    }

    /** 660.4 mm on 100 m² are 66,040 litres; what falls elsewhere comes on top. */
    @Test
    void volumesGiveTurfTheYearsDepth() {
        Water water = water(lawn(10, square(10, 10)));
        assertThat(water.coverage().destinations().get(0).litresAYear()).isCloseTo(66_040, within(10.0));
    }

    @Test
    void aWallKeepsDryWhatLiesBehindItIfAsked() {
        Head head = Heads.head("a", new Point(2, 5), 6, 0, 360, 6);
        Barrier wall = new Barrier(
                "w",
                Kind.WALL,
                1.8,
                List.of(),
                true,
                new Polyline(List.of(new Point(4, 0), new Point(4, 10))),
                Extras.NONE);
        Yard yard = lawn(10, List.of(head, wall));
        assertThat(share(water(yard), Destination.OBSTACLES)).isZero();
        Water blocked = Water.of(yard, WaterOptions.USUAL.withObstacles(true));
        Grid rate = blocked.rateMmH().orElseThrow();
        for (int i = 0; i < rate.spec().size(); i++) {
            Point at = rate.spec().centre(i);
            double open = blocked.patterns().get("a").rateMmH(at.x(), at.y());
            assertThat(rate.at(i)).isCloseTo(at.x() < 4 ? open : 0, within(1e-9));
        }
        assertThat(share(blocked, Destination.OBSTACLES)).isBetween(0.1, 0.4);
        assertThat(blocked.coverage().destinations().stream().mapToDouble(Destination::share))
                .satisfies(shares ->
                        assertThat(shares.stream().mapToDouble(s -> s).sum()).isCloseTo(1, within(1e-9)));
        assertThat(blocked.gaps().get(0).areaM2()).isGreaterThan(50);
    }

    @Test
    void aBuildingStopsWaterAndAFenceThatIsNotSolidDoesNot() {
        Head head = Heads.head("a", new Point(2, 5), 6, 0, 360, 6);
        Outline house = Outline.of(4, 3, 6, 3, 6, 7, 4, 7);
        Barrier hedge = new Barrier(
                "w",
                Kind.FENCE,
                1.8,
                List.of(),
                false,
                new Polyline(List.of(new Point(1, 0), new Point(1, 10))),
                Extras.NONE);
        Yard yard = lawn(10, List.of(head, hedge, new Building("h", "", 3, 0, house, Extras.NONE)));
        Water water = Water.of(yard, WaterOptions.USUAL.withObstacles(true));
        assertThat(water.coverage().reachedBy().get(0).covers(new Point(7, 5))).isTrue();
        assertThat(water.coverage().reachedBy().get(1).covers(new Point(0.5, 5)))
                .isTrue();
        assertThat(water.coverage().reachedBy().get(1).covers(new Point(4, 8))).isTrue();
    }

    @Test
    void windMovesAllWater() {
        Head head = Heads.head("a", new Point(5, 5), 2, 0, 360, 4);
        Water still = water(lawn(10, List.of(head)));
        Water blown = Water.of(lawn(10, List.of(head)), WaterOptions.USUAL.withDrift(1, 90));
        HeadPattern moved = blown.patterns().get("a");
        assertThat(moved.at()).isEqualTo(new Point(6, 5));
        assertThat(moved.rateMmH(6, 5)).isEqualTo(still.patterns().get("a").rateMmH(5, 5));
    }

    @Test
    void anEditOfHeadsGivesTheSameAsComputingAnew() {
        Water water = water(DEMO);
        Yard yard = DEMO;
        SplittableRandom random = new SplittableRandom(7);
        for (int step = 0; step < 6; step++) {
            List<Head> heads = yard.all(Head.class).toList();
            Head head = heads.get(random.nextInt(heads.size()));
            List<Feature> features = new ArrayList<>(yard.features());
            if (step == 3) {
                features.remove(head);
            } else {
                features.set(
                        yard.indexOf(head),
                        head.withShape(head.at().plus(random.nextDouble(-2, 2), random.nextDouble(-2, 2))));
            }
            yard = yard.withFeatures(features);
            water = water.after(yard);
        }
        same(water, water(yard));
    }

    @Test
    void anEditOfTheGroundGivesTheSameAsComputingAnew() {
        List<Feature> features = new ArrayList<>(DEMO.features());
        features.add(new Cover("pond", Kind.WATER, "", Outline.of(20, 30, 24, 30, 24, 34, 20, 34), Extras.NONE));
        Yard edited = DEMO.withFeatures(features);
        same(water(DEMO).after(edited), water(edited));
    }

    private static void same(Water found, Water expected) {
        assertThat(found.rateMmH().orElseThrow().values())
                .containsExactly(expected.rateMmH().orElseThrow().values());
        assertThat(found.valves()).isEqualTo(expected.valves());
        assertThat(found.coverage()).isEqualTo(expected.coverage());
        assertThat(found.gaps()).isEqualTo(expected.gaps());
        assertThat(found.headToHead()).isEqualTo(expected.headToHead());
        assertThat(found.problems()).isEqualTo(expected.problems());
        assertThat(found.accounts()).isEqualTo(expected.accounts());
    }

    @Test
    void theRasterIsTheSumOfItsValvesAndHasNothingOffTurf() {
        Water water = water(DEMO);
        double[] all = water.rateMmH().orElseThrow().values();
        double[] sum = new double[all.length];
        for (String valve : List.of("1", "2", "3")) {
            double[] own = water.rateMmH(valve).orElseThrow().values();
            Arrays.setAll(sum, i -> sum[i] + own[i]);
        }
        for (int i = 0; i < all.length; i++) {
            assertThat(Double.compare(all[i], sum[i])).isZero();
        }
        assertThat(DoubleStream.of(all).filter(v -> !Double.isNaN(v)).count() * 0.01)
                .isCloseTo(water.coverage().turfM2(), within(1.0));
        assertThat(water.rateMmH("9")).isEmpty();
    }

    @Test
    void aYardWithoutHeadsOrWithoutTurfSaysSo() {
        Water dry = water(lawn(10, List.of()));
        assertThat(dry.problems()).singleElement().satisfies(p -> {
            assertThat(p.code()).isEqualTo("NO_HEADS");
            assertThat(p.message()).contains("no head is drawn");
        });
        assertThat(dry.valves()).isEmpty();
        assertThat(dry.coverage().reachedBy().get(0).areaM2()).isEqualTo(100);
        assertThat(dry.coverage().offTurfShare()).isZero();
        Water bare = water(Heads.yard(square(10, 10)));
        assertThat(bare.rateMmH()).isEmpty();
        assertThat(bare.valves().get(0).meanMmH()).isEmpty();
        assertThat(bare.valves().get(0).grossMmH()).isEmpty();
        assertThat(bare.gaps()).isEmpty();
    }

    @Test
    void headsWithoutSenseAreNamedAndLeftOut() {
        Head good = Heads.head("ok", new Point(5, 5), 3, 0, 360, 4);
        Head backwards = Heads.head("backwards", new Point(5, 5), 3, 0, 360, -4);
        Head wide = Heads.head("wide", new Point(5, 5), 0, 0, 720, 4);
        Water water = water(lawn(10, List.of(backwards, good, wide)));
        assertThat(water.patterns()).containsOnlyKeys("ok");
        assertThat(water.problems()).extracting(Problem::code).containsExactly("HEAD_VALUE", "HEAD_VALUE", "HEAD_ARC");
        assertThat(water.problems())
                .extracting(p -> p.where().pointer())
                .containsExactly("/features/1", "/features/3", "/features/3");
        assertThat(water(lawn(10, List.of(backwards))).problems())
                .extracting(Problem::message)
                .anyMatch(m -> m.contains("no head can be used"));
    }

    @Test
    void cellsThatWouldBeTooManyAreMadeLarger() {
        Yard yard = lawn(10, List.of(Heads.head("a", new Point(5, 5), 0.3, 0, 360, 0.1)));
        Water water = Water.of(yard, WaterOptions.USUAL.withCellM(1e-6));
        assertThat(water.problems()).extracting(Problem::code).containsExactly("CELLS_TOO_MANY");
        GridSpec grid = Lawn.of(yard, 1e-6).mask().orElseThrow().grid();
        assertThat(grid.size()).isBetween(Lawn.MOST_CELLS * 9 / 10, Lawn.MOST_CELLS);
        assertThatThrownBy(() -> WaterOptions.USUAL.withCellM(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void headsWithoutAValveCountAsOne() {
        List<Head> heads = square(10, 10).stream()
                .map(head -> Heads.with(head, "", Named.CONE))
                .toList();
        Water water = water(lawn(10, heads));
        assertThat(water.valves()).hasSize(1);
        assertThat(water.problems()).extracting(Problem::code).containsExactly("HEAD_WITHOUT_VALVE");
    }

    @Test
    void computingStopsWhenNobodyWaits() {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> water(DEMO)).isInstanceOf(CancellationException.class);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    @Test
    void headsThatReachTheirNeighboursPass() {
        for (HeadToHead check : water(lawn(10, square(10, 10))).headToHead()) {
            assertThat(check.ok()).as(check.head()).isTrue();
            assertThat(check.nearestM()).hasValue(10);
            assertThat(check.reach()).hasValue(1);
            assertThat(check.sides()).hasSize(1);
        }
        for (HeadToHead check : water(lawn(12, square(12, 7))).headToHead()) {
            assertThat(check.ok()).as(check.head()).isFalse();
            assertThat(check.reach().orElseThrow()).isCloseTo(7 / 12.0, within(1e-9));
        }
    }

    @Test
    void everySideOfAnArcIsCheckedByItself() {
        Head middle = Heads.head("m", new Point(10, 10), 5, 0, 360, 4);
        List<Head> heads = List.of(
                middle,
                Heads.head("n", new Point(10, 15), 5, 90, 180, 4),
                Heads.head("w", new Point(1, 10), 5, 0, 180, 4));
        HeadToHead check = water(lawn(20, heads)).headToHead().get(0);
        assertThat(check.ok()).isFalse();
        assertThat(check.nearestM()).hasValue(5);
        assertThat(check.sides()).extracting(HeadToHead.Side::ok).containsExactly(true, true, false, true);
        assertThat(check.sides())
                .extracting(HeadToHead.Side::nearest)
                .containsExactly(Optional.of("n"), Optional.empty(), Optional.of("w"), Optional.of("n"));
    }

    @Test
    void aHeadAcrossAHouseIsNoNeighbour() {
        Head south = Heads.head("s", new Point(5, 0), 4, 0, 360, 4);
        Head north = Heads.head("n", new Point(5, 10), 4, 0, 360, 4);
        Outline house = Outline.of(0, 1.5, 10, 1.5, 10, 8.5, 0, 8.5);
        Yard yard = lawn(10, List.of(south, north, new Building("h", "", 3, 0, house, Extras.NONE)));
        HeadToHead check = water(yard).headToHead().get(0);
        assertThat(check.nearestM()).isEqualTo(OptionalDouble.empty());
        assertThat(check.ok()).isFalse();
    }

    @Test
    void everyNumberHasAnAccountWithASource() {
        Map<String, loamline.account.Account> accounts = water(DEMO).accounts();
        for (String key : List.of("duLq", "cu", "sc5", "meanMmH", "grossMmH")) {
            assertThat(accounts.get("/valves/0/" + key).sources()).as(key).isNotEmpty();
            assertThat(accounts.get("/valves/0/" + key).note().isEmpty()
                            || key.equals("grossMmH")
                            || accounts.get("/valves/0/" + key).note().contains("no wind"))
                    .isTrue();
        }
        assertThat(accounts).containsKeys("/gaps/0/areaM2", "/coverage/offTurfShare", "/headToHead/0/reach");
        assertThat(IntStream.range(0, 14).mapToObj(i -> "/headToHead/" + i + "/ok"))
                .allMatch(accounts::containsKey);
    }
}
