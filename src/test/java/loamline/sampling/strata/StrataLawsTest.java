package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import loamline.Laws;
import loamline.sampling.strata.Grounds.Shape;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds on any ground: random unions of rectangles with a gap, often in parts. */
class StrataLawsTest {
    private static final int SIZE = 55;
    private static final int TRIES = 25;

    @Provide
    Arbitrary<Shape> shapes() {
        return Grounds.shapes();
    }

    @Property(seed = Laws.SEED, tries = TRIES)
    void everyCellHasOneStratumAndStrataDifferByAtMostOneCell(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 1, max = 16) int k, @ForAll long seed) {
        Ground ground = Grounds.of(SIZE, shape);
        Strata strata = EqualAreaStrata.divide(ground, k, seed);
        int[] seen = new int[ground.size()];
        for (int s = 0; s < k; s++) {
            assertThat(strata.cellsOf(s).length).isBetween(ground.size() / k, (ground.size() + k - 1) / k);
            for (int cell : strata.cellsOf(s)) {
                assertThat(strata.stratumOf(cell)).isEqualTo(s);
                seen[cell]++;
            }
        }
        assertThat(seen).containsOnly(1);
    }

    @Property(seed = Laws.SEED, tries = TRIES)
    void theSamePlanComesBackAndMovesWithTheGround(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 1, max = 16) int k, @ForAll long seed) {
        Strata here = EqualAreaStrata.divide(Grounds.of(SIZE, shape), k, seed);
        Strata again = EqualAreaStrata.divide(Grounds.of(SIZE, shape), k, seed);
        Strata far = EqualAreaStrata.divide(Grounds.at(329280.37, 4425363.806, SIZE, shape), k, seed);
        assertThat(again.owners()).isEqualTo(here.owners());
        assertThat(far.owners()).isEqualTo(here.owners());
        assertThat(CorePlacement.atCentres(far).nearestMssdM2())
                .isEqualTo(CorePlacement.atCentres(here).nearestMssdM2());
        assertThat(CorePlacement.atRandom(again, seed).xM(0))
                .isEqualTo(CorePlacement.atRandom(here, seed).xM(0));
    }

    @Property(seed = Laws.SEED, tries = TRIES)
    void coresLieOnTheirStratumAndApart(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 1, max = 16) int k, @ForAll long seed) {
        Strata strata = EqualAreaStrata.divide(Grounds.of(SIZE, shape), k, seed);
        for (Cores cores : List.of(CorePlacement.atCentres(strata), CorePlacement.atRandom(strata, seed))) {
            for (int s = 0; s < k; s++) {
                assertThat(stratumAt(strata, cores.xM(s), cores.yM(s))).isEqualTo(s);
                for (int t = 0; t < s; t++) {
                    assertThat(Math.hypot(cores.xM(s) - cores.xM(t), cores.yM(s) - cores.yM(t)))
                            .isGreaterThanOrEqualTo(Strata.CLEARANCE * strata.meanRadiusM() * (1 - 1e-9));
                }
            }
            assertThat(cores.nearestMssdM2()).isLessThanOrEqualTo(cores.ownMssdM2() * (1 + 1e-9));
        }
    }

    @Property(seed = Laws.SEED, tries = TRIES)
    void sparesLieOnTheirStratumClearOfAllCores(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 1, max = 16) int k, @ForAll long seed) {
        Strata strata = EqualAreaStrata.divide(Grounds.of(SIZE, shape), k, seed);
        Cores cores = CorePlacement.atCentres(strata);
        List<Spare> spares = Spares.choose(cores, 2);
        assertThat(spares).doesNotHaveDuplicates().isEqualTo(Spares.choose(cores, 2));
        for (Spare spare : spares) {
            assertThat(stratumAt(strata, spare.xM(), spare.yM())).isEqualTo(spare.stratum());
            for (int s = 0; s < k; s++) {
                assertThat(Math.hypot(spare.xM() - cores.xM(s), spare.yM() - cores.yM(s)))
                        .isGreaterThanOrEqualTo(Strata.CLEARANCE * strata.meanRadiusM() * (1 - 1e-9));
            }
        }
    }

    @Property(seed = Laws.SEED, tries = TRIES)
    void brokenStrataAreThoseThatAWalkFromOneOfTheirCellsDoesNotFill(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 1, max = 16) int k, @ForAll long seed) {
        Strata strata = EqualAreaStrata.divide(Grounds.of(SIZE, shape), k, seed);
        for (int s = 0; s < k; s++) {
            boolean whole = reachable(strata, s) == strata.cellsOf(s).length;
            assertThat(Arrays.stream(strata.broken()).anyMatch(Integer.valueOf(s)::equals))
                    .isNotEqualTo(whole);
        }
    }

    /** Grows from one cell until nothing more is found: slow and obvious. */
    private static int reachable(Strata strata, int stratum) {
        int[] cells = strata.cellsOf(stratum);
        boolean[] in = new boolean[strata.ground().size()];
        in[cells[0]] = true;
        int count = 0;
        for (int before = -1; count != before; ) {
            before = count;
            for (int a : cells) {
                for (int b : cells) {
                    boolean touching =
                            Math.abs(strata.ground().column(a) - strata.ground().column(b))
                                            + Math.abs(strata.ground().row(a)
                                                    - strata.ground().row(b))
                                    == 1;
                    in[b] |= in[a] && touching;
                }
            }
            count = (int) Arrays.stream(cells).filter(cell -> in[cell]).count();
        }
        return count;
    }

    private static int stratumAt(Strata strata, double xM, double yM) {
        Ground ground = strata.ground();
        int cell = ground.cellCovering((xM - ground.xM(0.0)) / ground.cellM(), (yM - ground.yM(0.0)) / ground.cellM());
        return cell == Ground.NONE ? Ground.NONE : strata.stratumOf(cell);
    }
}
