package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import loamline.geometry.Point;
import loamline.raster.GridSpec;
import loamline.yard.Profile;
import loamline.yard.Profile.Measured;
import loamline.yard.Profile.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RateFieldTest {
    private static final GridSpec GRID = new GridSpec(-1, 2, 0.1, 300, 200);

    static List<Profile> profiles() {
        List<Profile> all = new ArrayList<>(List.of(Named.values()));
        all.add(new Measured(List.of(2.0, 5.0, 4.0, 1.0)));
        return all;
    }

    /** Heads anywhere, over the border too; every third full, others of any arc or of quarters on the lines. */
    private static List<HeadPattern> heads(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<HeadPattern> heads = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Arc any = Arc.of(random.nextDouble(360), random.nextDouble(1, 360));
            Arc quarters = Arc.of(90 * random.nextInt(4), 90 * random.nextInt(1, 4));
            Arc arc = i % 3 == 0 ? Arc.of(0, 360) : i % 3 == 1 ? any : quarters;
            Point onLattice = GRID.centre(random.nextInt(GRID.size()));
            Point at = i % 2 == 0 ? onLattice : new Point(random.nextDouble(-4, 32), random.nextDouble(-2, 25));
            RadialProfile profile =
                    RadialProfile.of(profiles().get(i % profiles().size()));
            heads.add(new HeadPattern(at, random.nextDouble(0.05, 9), arc, profile, random.nextDouble(1, 20)));
        }
        return heads;
    }

    /** Cell by cell, head by head. */
    private static double[] oracle(GridSpec grid, List<HeadPattern> heads) {
        double[] rates = new double[grid.size()];
        for (int i = 0; i < rates.length; i++) {
            Point at = grid.centre(i);
            rates[i] =
                    heads.stream().mapToDouble(h -> h.rateMmH(at.x(), at.y())).sum();
        }
        return rates;
    }

    private static RateField field(List<HeadPattern> heads) {
        return RateField.of(GRID, heads.stream().map(Heads::alone).toList());
    }

    private static double[] whole(RateField field) {
        double[] rates = new double[field.grid().size()];
        field.addTo(rates);
        return rates;
    }

    private static double tolerance(List<HeadPattern> heads) {
        return RateKernel.ACCURACY
                * heads.stream().mapToDouble(HeadPattern::scaleMmH).sum();
    }

    @Test
    void everyCellHasWhatItsHeadsRainOnItsMiddle() {
        for (long seed = 1; seed <= 12; seed++) {
            List<HeadPattern> heads = heads(seed, 12);
            double[] expected = oracle(GRID, heads);
            double[] found = whole(field(heads));
            for (int i = 0; i < expected.length; i++) {
                assertThat(found[i]).as("seed " + seed + " cell " + i).isCloseTo(expected[i], within(tolerance(heads)));
            }
        }
    }

    @Test
    void headsThatDoNotReachTheGridGiveNothing() {
        HeadPattern far = new HeadPattern(new Point(100, 100), 5, Arc.of(0, 360), RadialProfile.of(Named.CONE), 5);
        assertThat(whole(field(List.of(far)))).containsOnly(0);
        assertThat(whole(field(List.of()))).containsOnly(0);
    }

    @Test
    void draggingOneHeadGivesTheSameBitsAsComputingAllAnew() {
        List<HeadPattern> heads = new ArrayList<>(heads(5, 15));
        RateField field = field(heads);
        SplittableRandom random = new SplittableRandom(8);
        for (int step = 0; step < 40; step++) {
            int index = random.nextInt(heads.size());
            HeadPattern moved = heads.get(index)
                    .movedTo(new Point(random.nextDouble(-6, 35), random.nextDouble(-4, 27)))
                    .turnedBy(random.nextDouble(360));
            heads.set(index, moved);
            field = field.with(index, Heads.alone(moved));
        }
        assertThat(whole(field)).containsExactly(whole(field(heads)));
    }

    static Stream<Profile> everyProfile() {
        return profiles().stream();
    }

    private static double flowKept(HeadPattern head) {
        RateField field = field(List.of(head));
        return DoubleStream.of(whole(field)).sum() * GRID.cellAreaM2() / 60 / head.flowLpm();
    }

    @ParameterizedTest
    @EnumSource(names = {"CONE", "PARABOLA", "RING", "ELLIPSE"})
    void oneHeadKeepsItsFlowWhereItsEdgesLieOnLinesBetweenCells(Named profile) {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 60; i++) {
            boolean full = i % 2 == 0;
            Point at = full
                    ? new Point(random.nextDouble(10, 15), random.nextDouble(10, 15))
                    : new Point(10 + random.nextInt(30) * 0.1, 10 + random.nextInt(30) * 0.1);
            Arc arc = full ? Arc.of(0, 360) : Arc.of(90 * random.nextInt(4), 90 * random.nextInt(1, 5));
            HeadPattern head = new HeadPattern(at, random.nextDouble(5, 7.5), arc, RadialProfile.of(profile), 7);
            assertThat(flowKept(head)).as(head.toString()).isCloseTo(1, within(RateKernel.FLOW_ACCURACY));
        }
    }

    /** 10 by 10 places within a cell: what sampling takes in one place it gives in another. */
    @ParameterizedTest
    @MethodSource("everyProfile")
    void everyProfileAndArcKeepsItsFlowInTheMeanOverThePlacesOfTheLattice(Profile profile) {
        for (double sweepDeg : new double[] {10, 37, 90, 180, 270, 359, 360}) {
            double mean = 0;
            for (int place = 0; place < 100; place++) {
                Point at = new Point(12 + (place % 10 + 0.5) / 100, 12 + (place / 10 + 0.5) / 100);
                mean += flowKept(new HeadPattern(at, 6.13, Arc.of(90, sweepDeg), RadialProfile.of(profile), 7)) / 100;
            }
            assertThat(mean).as(sweepDeg + "°").isCloseTo(1, within(RateKernel.FLOW_ACCURACY));
        }
    }
}
