package loamline.sampling.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class SparesTest {
    private static Cores cores(Ground ground, int k) {
        return CorePlacement.atCentres(EqualAreaStrata.divide(ground, k, 1));
    }

    @Test
    void inADiscTheSpareStandsTwoThirdsOut() {
        Ground disc = Grounds.of(101, (column, row) -> Math.hypot(column - 50, row - 50) <= 50);
        Spare spare = Spares.choose(cores(disc, 1), 1).get(0);
        double out = Math.hypot(spare.xM() - 0.505, spare.yM() - 0.505);
        assertThat(out).isBetween(0.32, 0.345);
    }

    @Test
    void aSecondSpareStandsAcrossTheCore() {
        Cores cores = cores(Grounds.square(60), 1);
        List<Spare> spares = Spares.choose(cores, 2);
        Spare first = spares.get(0);
        Spare second = spares.get(1);
        double apart = Math.hypot(first.xM() - second.xM(), first.yM() - second.yM());
        double out = Math.hypot(second.xM() - cores.xM(0), second.yM() - cores.yM(0));
        assertThat(apart).isGreaterThan(out);
    }

    @Test
    void everyStratumGetsItsFirstBeforeAnyGetsItsSecond() {
        assertThat(Spares.choose(cores(Grounds.l(), 5), 2))
                .extracting(Spare::stratum)
                .containsExactly(0, 1, 2, 3, 4, 0, 1, 2, 3, 4);
    }

    @Test
    void sparesKeepOffTheBorder() {
        Strata strata = EqualAreaStrata.divide(Grounds.u(), 12, 1);
        for (Spare spare : Spares.choose(CorePlacement.atCentres(strata), 1)) {
            for (int cell = 0; cell < strata.ground().size(); cell++) {
                if (strata.stratumOf(cell) != spare.stratum()) {
                    double away = Math.hypot(
                            strata.ground().xM(cell) - spare.xM(),
                            strata.ground().yM(cell) - spare.yM());
                    assertThat(away).isGreaterThan(0.2 * strata.meanRadiusM());
                }
            }
        }
    }

    @Test
    void aStratumOfOneCellHasNoSpareAndNoneWantedIsNone() {
        assertThat(Spares.choose(cores(Grounds.square(3), 9), 2)).isEmpty();
        assertThat(Spares.choose(cores(Grounds.square(9), 3), 0)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Spares.choose(cores(Grounds.square(9), 3), -1))
                .withMessage("perStratum must be 0 or more: got -1");
    }
}
