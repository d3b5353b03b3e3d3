package loamline.desk.cores;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import loamline.sampling.CorePlanner;
import loamline.sampling.SoilNeed;
import org.junit.jupiter.api.Test;

class CoreCountTest {
    @Test
    void theNumberInForceIsARowOfItsOwnAndMarked() {
        CoreCount count = CoreCount.of(14);
        assertThat(count.elements()).containsExactly("P", "K", "OM");
        assertThat(count.rows()).extracting(CoreCount.Row::cores).containsExactly(5, 8, 10, 12, 14, 15, 20, 25, 30);
        assertThat(count.rows().stream().filter(CoreCount.Row::current))
                .singleElement()
                .extracting(CoreCount.Row::cores)
                .isEqualTo(14);
    }

    /** t(0.95; 11) = 1.79588, computed with scipy 1.17.1: 1.79588 · 70 / √12 = 36.29. */
    @Test
    void twelveCoresLeavePhosphorusThirtySixPerCentOff() {
        CoreCount.Row twelve = CoreCount.of(12).rows().get(3);
        assertThat(twelve.halfWidthsPct().get(0)).isCloseTo(36.29, within(0.005));
        assertThat(twelve.words().get(0)).isEqualTo("± 36 %");
    }

    @Test
    void moreCoresAreSurer() {
        for (int i = 1; i < CoreCount.of(12).rows().size(); i++) {
            assertThat(CoreCount.of(12).rows().get(i).halfWidthsPct().get(1))
                    .isLessThan(
                            CoreCount.of(12).rows().get(i - 1).halfWidthsPct().get(1));
        }
    }

    @Test
    void itSaysItsFormulaItsSourcesAndWhatIsNotPublished() {
        assertThat(CoreCount.of(12).why()).anyMatch(line -> line.contains("CV / √n"));
        assertThat(CoreCount.of(12).why()).anyMatch(line -> line.contains("SB271"));
        assertThat(CoreCount.of(12).why()).contains(CoreCount.PH);
    }

    @Test
    void oneCoreHasNoErrorThatCouldBeTold() {
        assertThat(CoreCount.of(1).rows()).noneMatch(CoreCount.Row::current);
    }

    /** π/4 · 1.905² · 10.16 cm = 28.958 ml a core; 12 give 347 ml, and 2 cups (473.2 ml) take 17. */
    @Test
    void aBagOfTwelveUsualCoresIsJustShortOfWhatALabAsksFor() {
        var plan = CorePlanner.standing(yard(turf("lawn", box(0, 0, 30, 20))));
        assertThat(SoilNeed.of(plan.composites().get(0)).takenMl()).isCloseTo(347.5, within(0.05));
        assertThat(BagSoil.of(plan)).singleElement().satisfies(bag -> {
            assertThat(bag.tooLittle()).isTrue();
            assertThat(bag.words())
                    .isEqualTo("Bag A: 347 ml of soil; a lab asks for 355 to 473 ml. 17 cores, or a wider probe, give"
                            + " plenty.");
        });
    }
}
