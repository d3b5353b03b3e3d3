package loamline.sampling;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.yard.Barrier;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CorePlannerTest {
    private static final PlanOptions USUAL = PlanOptions.USUAL;

    private static final Yard SUBURBAN = yard(
            turf("front", box(0, 0, 30, 12)),
            turf("back", box(0, 22, 30, 40)),
            building(box(8, 12, 24, 22)),
            cover(Kind.PAVING, box(24, 0, 28, 12)),
            cover(Kind.BED, box(10, 30, 14, 33)),
            gate(29, 15));

    private static PlanOptions options(int kits, PlanOptions.Place place, long seed, PlanOptions.Rounds rounds) {
        return new PlanOptions(
                OptionalInt.of(kits),
                12,
                USUAL.edgeBufferM(),
                USUAL.trunkBufferM(),
                USUAL.headBufferM(),
                place,
                1,
                seed,
                rounds,
                Probe.USUAL,
                Extras.NONE);
    }

    private static PlanOptions noBuffers(int cores) {
        return new PlanOptions(
                OptionalInt.empty(),
                cores,
                0,
                0,
                0,
                PlanOptions.Place.CENTRE,
                1,
                1,
                PlanOptions.Rounds.ONE,
                Probe.USUAL,
                Extras.NONE);
    }

    @Test
    void everyBagHasTwelveCoresNumberedAlongItsWalk() {
        CorePlan plan = CorePlanner.plan(SUBURBAN, USUAL);
        assertThat(plan.composites()).extracting(CorePlan.Composite::name).containsExactly("A", "B");
        assertThat(plan.mainCores().stream().filter(c -> c.composite().equals("B")))
                .extracting(PlannedCore::id)
                .containsExactly(
                        IntStream.rangeClosed(1, 12).mapToObj(i -> "B" + i).toArray(String[]::new));
        assertThat(plan.mainCores()).extracting(c -> c.order().getAsInt()).startsWith(1, 2, 3);
        assertThat(plan.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"CENTRE, 1", "RANDOM, 1", "RANDOM, 2", "RANDOM, 3"})
    void everyCoreStandsOnEligibleGroundAndApartFromTheOthers(PlanOptions.Place place, long seed) {
        CorePlan plan = CorePlanner.plan(SUBURBAN, options(2, place, seed, PlanOptions.Rounds.ONE));
        List<Region> hard = List.copyOf(Zones.covers(SUBURBAN).values());
        for (PlannedCore core : plan.cores()) {
            for (Region cover : hard) {
                assertThat(cover.distanceToEdge(core.at())).isGreaterThanOrEqualTo(USUAL.edgeBufferM() - 1e-6);
            }
        }
        List<PlannedCore> cores = plan.mainCores();
        double meanRadiusM = plan.composites().stream()
                .mapToDouble(bag -> Math.sqrt(bag.eligibleM2() / bag.cores() / Math.PI))
                .min()
                .orElseThrow();
        for (int i = 0; i < cores.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(cores.get(i).at().distanceTo(cores.get(j).at())).isGreaterThan(0.5 * meanRadiusM);
            }
        }
    }

    @Test
    void everySpareBelongsToACoreOfItsStratum() {
        CorePlan plan = CorePlanner.plan(SUBURBAN, USUAL);
        List<PlannedCore> spares =
                plan.cores().stream().filter(c -> c.spareOf().isPresent()).toList();
        assertThat(spares).hasSize(24);
        for (PlannedCore spare : spares) {
            PlannedCore core = plan.mainCores().stream()
                    .filter(c -> c.id().equals(spare.spareOf().get()))
                    .findFirst()
                    .orElseThrow();
            assertThat(spare.id()).isEqualTo(core.id() + "s");
            assertThat(spare.stratum()).isEqualTo(core.stratum());
            assertThat(spare.order()).isEmpty();
        }
    }

    @Test
    void theSameSeedGivesTheSamePlan() {
        PlanOptions random = options(2, PlanOptions.Place.RANDOM, 5, PlanOptions.Rounds.ONE);
        assertThat(CorePlanner.plan(SUBURBAN, random)).isEqualTo(CorePlanner.plan(SUBURBAN, random));
        assertThat(CorePlanner.plan(SUBURBAN, options(2, PlanOptions.Place.RANDOM, 6, PlanOptions.Rounds.ONE))
                        .cores())
                .isNotEqualTo(CorePlanner.plan(SUBURBAN, random).cores());
    }

    @Test
    void aWalkIsClosedAndMeetsEveryCoreOfItsBagOnce() {
        CorePlan plan = CorePlanner.plan(SUBURBAN, USUAL);
        for (CorePlan.Walk walk : plan.walks()) {
            List<Point> path = walk.path().points();
            assertThat(path.get(0)).isEqualTo(new Point(29, 15)).isEqualTo(path.get(path.size() - 1));
            assertThat(walk.path().lengthM()).isCloseTo(walk.lengthM(), within(1e-9));
            assertThat(walk.proven()).isTrue();
            plan.mainCores().stream()
                    .filter(c -> c.composite().equals(walk.composite()))
                    .forEach(c -> assertThat(path).contains(c.at()));
        }
        assertThat(plan.totalWalkM())
                .isCloseTo(
                        plan.walks().stream()
                                .mapToDouble(CorePlan.Walk::lengthM)
                                .sum(),
                        within(1e-9));
    }

    @Test
    void allBagsCanBeWalkedInOneRound() {
        CorePlan plan = CorePlanner.plan(SUBURBAN, options(2, PlanOptions.Place.CENTRE, 1, PlanOptions.Rounds.ALL));
        assertThat(plan.walks()).extracting(CorePlan.Walk::composite).containsExactly("all");
        assertThat(plan.mainCores().stream().map(c -> c.order().getAsInt()).sorted())
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 24).boxed().toList());
        double separate = CorePlanner.plan(SUBURBAN, USUAL).totalWalkM();
        assertThat(plan.totalWalkM()).isLessThanOrEqualTo(separate);
    }

    @Test
    void withoutAGateTheWalkStartsAtTheFirstCore() {
        CorePlan plan = CorePlanner.plan(yard(turf("lawn", box(0, 0, 20, 20))), USUAL);
        List<Point> path = plan.walks().get(0).path().points();
        assertThat(path.get(0)).isEqualTo(plan.cores().get(0).at()).isEqualTo(path.get(path.size() - 1));
    }

    @Test
    void coresBehindAFenceWithoutAGapAreSaid() {
        Barrier fence = new Barrier(
                "fence",
                Kind.FENCE,
                1.8,
                List.of(),
                true,
                new Polyline(List.of(
                        new Point(-1, 20), new Point(-1, 41), new Point(31, 41), new Point(31, 20), new Point(-1, 20))),
                Extras.NONE);
        List<Feature> features = new ArrayList<>(SUBURBAN.features());
        features.add(fence);
        CorePlan plan = CorePlanner.plan(SUBURBAN.withFeatures(features), USUAL);
        assertThat(plan.problems()).hasSize(12).allMatch(p -> p.code().equals("CORE_NOT_REACHED") && p.isError());
        assertThat(plan.mainCores().stream().filter(c -> c.order().isEmpty())).hasSize(12);
        assertThat(plan.walks()).hasSize(2);
    }

    @Test
    void aZoneWithoutRoomIsLeftOutAndSaid() {
        Yard yard = yard(turf("lawn", box(0, 0, 20, 20)), turf("strip", box(30, 0, 31, 20)));
        CorePlan plan = CorePlanner.plan(yard, USUAL);
        assertThat(plan.problems()).extracting(p -> p.code()).containsExactly("ZONE_NO_ROOM");
        assertThat(plan.composites()).hasSize(1);
    }

    @Test
    void noTurfNoCores() {
        CorePlan plan = CorePlanner.plan(yard(building(box(0, 0, 1, 1))), USUAL);
        assertThat(plan.composites()).isEmpty();
        assertThat(plan.walks()).isEmpty();
        assertThat(plan.totalWalkM()).isZero();
    }

    @Test
    void ownCoresKeepTheirPlaceBagAndId() {
        Yard yard = yard(
                turf("lawn", box(0, 0, 20, 20)),
                new Core("c1", "B7", "B", "", new Point(5, 5), false, Extras.NONE),
                new Core("c2", "", "B", "lawn", new Point(15, 5), false, Extras.NONE),
                new Core("c3", "B1", "B", "lawn", new Point(15, 15), false, Extras.NONE));
        CorePlan plan = CorePlanner.keep(yard, noBuffers(12));
        assertThat(plan.mainCores()).extracting(PlannedCore::id).containsExactlyInAnyOrder("B7", "B1", "B2");
        assertThat(plan.mainCores()).extracting(PlannedCore::zone).containsOnly("lawn");
        assertThat(plan.walks().get(0).lengthM()).isCloseTo(20 + Math.hypot(10, 10), within(1e-9));
        assertThat(plan.composites().get(0).stratumAreaCv()).isEmpty();
    }

    /**
     * Equal-area strata on the reference shapes, 100 m a side. Best mean squared distance to the nearest core:
     * computed with numpy 1.24 (batch swaps of cells between equal-area strata, 40 starts).
     */
    @ParameterizedTest
    @CsvSource({
        "square, 12, 143.7294",
        "square, 15, 113.3936",
        "L, 10, 129.0730",
        "L, 15, 85.9852",
        "U, 10, 132.5833",
        "U, 12, 112.1037"
    })
    void coresSpreadAsWellAsTheBestKnown(String shape, int cores, double bestM2) {
        double[] outline = switch (shape) {
            case "square" -> box(0, 0, 100, 100);
            case "L" -> new double[] {0, 0, 100, 0, 100, 50, 50, 50, 50, 100, 0, 100};
            default -> new double[] {0, 0, 100, 0, 100, 100, 70, 100, 70, 40, 30, 40, 30, 100, 0, 100};
        };
        CorePlan plan = CorePlanner.plan(yard(turf("lawn", outline)), noBuffers(cores));
        CorePlan.Composite bag = plan.composites().get(0);
        assertThat(bag.mssdM2().getAsDouble()).isLessThanOrEqualTo(1.01 * bestM2);
        assertThat(bag.stratumAreaCv().getAsDouble()).isLessThanOrEqualTo(0.01);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 10, 15})
    void asManyCoresAsAskedFor(int cores) {
        assertThat(CorePlanner.plan(yard(turf("lawn", box(0, 0, 30, 20))), noBuffers(cores))
                        .mainCores())
                .hasSize(cores);
    }

    @Test
    void boundLettersAreKept() {
        assertThat(Letters.forBags(List.of(Optional.of("B"), Optional.empty(), Optional.of("south"))))
                .containsExactly("B", "A", "C");
        assertThat(Letters.letter(26)).isEqualTo("AA");
    }
}
