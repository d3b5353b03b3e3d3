package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.reference.SoilWater;
import loamline.reference.TurfCoefficients;
import loamline.water.need.EffectiveRain;
import loamline.water.need.LawnSoil;
import loamline.water.need.MonthClimate;
import loamline.water.need.WateringNeed;
import org.junit.jupiter.api.Test;

class CupTestTest {
    /** 24 catches, ml, whose numbers were worked out by hand: derived. */
    private static final double[] CATCHES = {
        22, 25, 28, 31, 18, 20, 24, 27, 30, 33, 26, 21, 15, 17, 23, 29, 32, 35, 19, 24, 28, 26, 22, 25
    };

    private static CupTest of(List<Cup> cups) {
        return CupTest.of(FourHeads.yard(), FourHeads.VALVE, cups, Optional.empty());
    }

    private static List<String> codes(CupTest test) {
        return test.problems().stream().map(Problem::code).toList();
    }

    @Test
    void theNumbersOfTwentyFourCupsAreThoseWorkedOutByHand() {
        CupTest test = of(FourHeads.caught(CATCHES));
        var even = test.uniformity().orElseThrow();
        assertThat(test.meanMl()).hasValue(25);
        assertThat(test.meanMmH()).hasValueCloseTo(14.01, within(0.005));
        assertThat(even.duLq()).isCloseTo(18.3333 / 25, within(1e-5));
        assertThat(even.duLh()).isCloseTo(20.8333 / 25, within(1e-5));
        assertThat(even.cu()).isCloseTo(1 - 100.0 / 24 / 25, within(1e-9));
        assertThat(even.cv()).isCloseTo(5.2254 / 25, within(1e-5));
        assertThat(even.minRatio()).isCloseTo(0.6, within(1e-9));
        assertThat(test.schedulingWords()).isEqualTo("1.67");
    }

    @Test
    void aCountThatDoesNotPartIntoQuartersIsTold() {
        assertThat(codes(of(FourHeads.caught(CATCHES).subList(0, 22)))).contains("CUPS_NOT_BY_FOUR");
        assertThat(codes(of(FourHeads.caught(CATCHES)))).doesNotContain("CUPS_NOT_BY_FOUR");
    }

    @Test
    void twoCupsGiveMeansButNoUniformity() {
        CupTest test = of(FourHeads.caught(20, 30));
        assertThat(test.meanMl()).hasValue(25);
        assertThat(test.uniformity()).isEmpty();
        assertThat(test.schedulingWords()).isEqualTo("none (too few cups)");
        assertThat(test.problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("CUPS_TOO_FEW");
            assertThat(problem.severity()).isEqualTo(Severity.ERROR);
        });
    }

    @Test
    void aDryTestHasNoRatiosAndAnInfiniteCoefficientInWords() {
        CupTest test = of(FourHeads.caught(new double[24]));
        assertThat(test.meanMl()).hasValue(0);
        assertThat(test.uniformity()).isEmpty();
        assertThat(test.schedulingWords()).isEqualTo("infinite (every cup is dry)");
        assertThat(codes(test)).contains("CUPS_ALL_DRY");
    }

    @Test
    void aDryCupMakesTheCoefficientInfinite() {
        double[] catches = CATCHES.clone();
        catches[4] = 0;
        CupTest test = of(FourHeads.caught(catches));
        assertThat(test.schedulingWords()).isEqualTo("infinite (a dry hole)");
        assertThat(test.uniformity()).isPresent();
    }

    @Test
    void cupsOutOfTheThrowAreNamedWithTheirLineAndStillCount() {
        List<Cup> cups = new ArrayList<>(FourHeads.caught(CATCHES));
        cups.add(new Cup("far", new Point(40, 5), 3, 107.1, 10, OptionalInt.of(26)));
        CupTest test = of(cups);
        assertThat(test.cups()).hasSize(25);
        assertThat(test.problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("CUP_OUT_OF_THROW");
            assertThat(problem.where()).isEqualTo(Where.line(26));
            assertThat(problem.message()).contains("20.4 m beyond");
        });
    }

    @Test
    void aTestOfAnotherPlaceIsAnError() {
        List<Cup> elsewhere = FourHeads.caught(CATCHES).stream()
                .map(cup -> new Cup(cup.name(), cup.at().plus(500, 0), cup.ml(), 107.1, 10, cup.line()))
                .toList();
        CupTest test = of(elsewhere);
        assertThat(codes(test)).contains("CUPS_ELSEWHERE");
        assertThat(test.findings().heads()).isEmpty();
    }

    @Test
    void anOddCupIsFlaggedWithItsLineAndStillCounts() {
        List<Cup> cups = new ArrayList<>(FourHeads.readings(head -> head));
        cups.set(7, FourHeads.cup(7, cups.get(7).at(), 5 * cups.get(7).ml()));
        CupTest test = of(cups);
        assertThat(test.problems()).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo("CUP_ODD");
            assertThat(problem.where()).isEqualTo(Where.line(9));
        });
        assertThat(test.uniformity().orElseThrow().n()).isEqualTo(24);
    }

    @Test
    void cupsWithOneNameOrInOnePlaceAreTold() {
        List<Cup> cups = new ArrayList<>(FourHeads.caught(CATCHES));
        cups.set(3, cups.get(2));
        assertThat(codes(of(cups))).contains("CUP_NAME_TWICE", "CUP_PLACE_TWICE");
    }

    @Test
    void aSmallCatchAsksForMoreMinutes() {
        assertThat(of(FourHeads.caught(5, 5, 5, 5, 5, 5, 5, 5)).problems())
                .anySatisfy(problem -> assertThat(problem.message()).contains("about 50 minutes for 25 ml"));
    }

    @Test
    void runTimesRestOnTheMeasuredRateAndLowHalf() {
        WateringNeed need = WateringNeed.of(
                List.of(MonthClimate.typed(Month.JULY, 5, 0)),
                Optional.empty(),
                TurfCoefficients.of("cool season").orElseThrow(),
                EffectiveRain.USDA_SCS);
        LawnSoil soil = LawnSoil.usual(SoilWater.of("loam").orElseThrow());
        CupTest test = CupTest.of(
                FourHeads.yard(), FourHeads.VALVE, FourHeads.caught(CATCHES), Optional.of(new Watering(need, soil)));
        assertThat(test.runTimes()).singleElement().satisfies(july -> {
            double even = 60 * july.needMm() / test.meanMmH().orElseThrow();
            assertThat(july.minutes()).isCloseTo(even / (20.8333 / 25), within(1e-3));
        });
    }

    @Test
    void everyNumberHasAnAccount() {
        assertThat(of(FourHeads.caught(CATCHES)).accounts())
                .containsKeys("/meanMmH", "/duLq", "/duLh", "/cu", "/cv", "/sc", "/suspects/0", "/suspects/3");
    }
}
