package loamline.water.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import loamline.account.Problem;
import loamline.reference.SoilWater;
import loamline.reference.TurfCoefficients;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunTimesTest {
    private static final double IN = Factors.MM_PER_IN;
    private static final TurfCoefficients EIGHT_TENTHS = turf(0.80);
    private static final RunTimeMultiplier EVEN = RunTimeMultiplier.ofLowHalf(1);
    private static final Optional<Site> NOWHERE = Optional.empty();

    private static TurfCoefficients turf(double factor) {
        double[] year = new double[12];
        Arrays.fill(year, factor);
        return new TurfCoefficients(
                "test",
                Arrays.stream(year).boxed().toList(),
                TurfCoefficients.published().get(0).source());
    }

    private static SoilWater soil(String texture) {
        return SoilWater.of(texture).orElseThrow();
    }

    private static LawnSoil slope(String texture, double slopePct) {
        return new LawnSoil(soil(texture), 150, 0.5, slopePct, OptionalDouble.empty());
    }

    private static WateringNeed july(double etoMmDay, double rainMm) {
        return WateringNeed.of(
                List.of(MonthClimate.typed(Month.JULY, etoMmDay, rainMm)),
                NOWHERE,
                EIGHT_TENTHS,
                EffectiveRain.USDA_SCS);
    }

    /** Soil whose allowed water lasts so many days of a use. */
    private static LawnSoil lasting(double days, double turfMmDay) {
        SoilWater loam = soil("loam");
        return new LawnSoil(loam, days * turfMmDay / 0.5 / loam.availableShare(), 0.5, 0, OptionalDouble.empty());
    }

    private static String codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).collect(Collectors.joining(" "));
    }

    /** Worked out by hand: ETo 0.22 in a day, Kc 0.80, 3 days, 0.55 in/h, low quarter 0.7333. */
    @Test
    void threeDaysNeedBecomesMinutes() {
        double turfMmDay = 0.22 * IN * 0.80;
        MonthRunTime run = RunTimes.of(
                        july(0.22 * IN, 0), 0.55 * IN, RunTimeMultiplier.ofLowQuarter(0.7333), lasting(3.01, turfMmDay))
                .months()
                .get(0);
        assertThat(run.intervalDays()).isEqualTo(3);
        assertThat(run.waterings()).isEqualTo(11);
        // 31 days are watered 11 times, so each brings 31/33 of three days' need.
        double share = 31 / 33.0;
        assertThat(run.needMm() / share).isCloseTo(0.528 * IN, within(1e-9));
        assertThat(run.evenMinutes() / share).isCloseTo(57.6, within(0.005));
        assertThat(run.minutes() / share).isCloseTo(68.6, within(0.05));
        assertThat(run.etoMmDay()).isEqualTo(0.22 * IN);
    }

    /** Worked out from 1/(0.4 + 0.6 DU); the formula from memory of the Irrigation Association's auditor handbook. */
    @ParameterizedTest
    @CsvSource({
        "0.40, 1.563", "0.45, 1.493", "0.50, 1.429", "0.55, 1.370", "0.60, 1.316", "0.65, 1.266",
        "0.70, 1.220", "0.75, 1.176", "0.80, 1.136", "0.85, 1.099", "0.90, 1.064", "1.00, 1"
    })
    void theMultiplierFollowsFromTheLowestQuarter(double lowQuarter, double factor) {
        RunTimeMultiplier multiplier = RunTimeMultiplier.ofLowQuarter(lowQuarter);
        assertThat(multiplier.factor()).isCloseTo(factor, within(0.0005));
        assertThat(multiplier.isBeyondRunTime()).isFalse();
    }

    @Test
    void aMeasuredLowHalfIsUsedAsItIs() {
        assertThat(RunTimeMultiplier.ofLowHalf(0.8333).factor()).isCloseTo(1.2, within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"0", "0.2", "0.39"})
    void noUniformityHoldsTheMultiplierAndSaysSo(double lowQuarter) {
        for (RunTimeMultiplier multiplier :
                List.of(RunTimeMultiplier.ofLowQuarter(lowQuarter), RunTimeMultiplier.ofLowHalf(lowQuarter))) {
            assertThat(multiplier.factor()).isCloseTo(1 / 0.64, within(1e-12));
            assertThat(codes(RunTimes.of(july(5, 0), 14, multiplier, slope("loam", 0))
                            .problems()))
                    .contains("RUN_TIME_UNEVEN");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> RunTimeMultiplier.ofLowHalf(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> RunTimeMultiplier.ofLowQuarter(1.01));
    }

    /** Worked out by hand: 0.17 in/in, 6 in of roots, half of it, 0.176 in a day. */
    @Test
    void loamUnderSixInchesOfRootsLastsTwoDays() {
        LawnSoil loam = new LawnSoil(soil("loam"), 6 * IN, 0.5, 0, OptionalDouble.empty());
        assertThat(loam.availableMm() / IN).isCloseTo(1.02, within(1e-9));
        assertThat(loam.allowedMm() / IN).isCloseTo(0.51, within(1e-9));
        assertThat(loam.days(0.176 * IN)).isEqualTo(2);
        assertThat(loam.days(0)).isEqualTo(365);
    }

    /** Worked out by hand: clay loam on 5 %, 1.6 in/h, 26 min in all. */
    @Test
    void clayLoamOnASlopeTakesThreeCycles() {
        LawnSoil clayLoam = slope("clay loam", 5);
        double rate = 1.6 * IN;
        assertThat(clayLoam.longestRunMin(rate).orElseThrow()).isCloseTo(9.43, within(0.005));
        double monthNeedMm = 26 / 60.0 * rate;
        LawnSoil onceAMonth = new LawnSoil(soil("clay loam"), 2000, 1, 5, OptionalDouble.empty());
        MonthRunTime run = RunTimes.of(july(monthNeedMm / 31 / 0.8, 0), rate, EVEN, onceAMonth)
                .months()
                .get(0);
        assertThat(run.minutes()).isCloseTo(26, within(1e-9));
        assertThat(run.cycles()).isEqualTo(3);
        assertThat(run.minutes() / run.cycles()).isCloseTo(8.67, within(0.005));
        assertThat(run.soakMin()).isCloseTo(0.202 * 60 / 0.2, within(0.1));
    }

    @Test
    void soilThatTakesInAllHasNoLongestRun() {
        for (double slopePct : new double[] {0, 5, 10, 30}) {
            assertThat(slope("loam", slopePct).longestRunMin(0.35 * IN)).isEmpty();
        }
    }

    /** Worked out by hand: sandy loam, level, 0.55 in/h. */
    @Test
    void sandyLoamRunsForTwoHours() {
        assertThat(slope("sandy loam", 2).longestRunMin(0.55 * IN).orElseThrow())
                .isCloseTo(132, within(1e-9));
    }

    @Test
    void aWholeNumberOfCyclesStaysWhole() {
        LawnSoil watched = new LawnSoil(soil("loam"), 2000, 1, 0, OptionalDouble.of(0.1));
        double rate = 60;
        MonthRunTime run = RunTimes.of(july(0.3 / 31 / 0.8, 0), rate, EVEN, watched)
                .months()
                .get(0);
        assertThat(run.minutes()).isCloseTo(0.3, within(1e-12));
        assertThat(run.cycles()).isEqualTo(3);
    }

    @Test
    void minutesSeenUntilRunOffOverruleTheTexture() {
        LawnSoil watched = new LawnSoil(soil("sand"), 150, 0.5, 0, OptionalDouble.of(4));
        assertThat(watched.longestRunMin(10)).hasValue(4);
        assertThat(watched.soakMin(10, 4)).as("half an hour at least").isEqualTo(30);
    }

    @Test
    void slopesOnALimitBelongToTheGentlerClass() {
        SoilWater clay = soil("clay");
        double[] accumulationIn = DoubleStream.of(3, 3.1, 6, 6.1, 12, 12.1)
                .map(slope -> clay.accumulationMm(slope) / IN)
                .toArray();
        assertThat(accumulationIn).containsExactly(new double[] {0.20, 0.15, 0.15, 0.10, 0.10, 0.10}, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0", "-3", "1e-300", "NaN", "Infinity"})
    void aValveThatBringsNothingHasNoRunTime(double rateMmH) {
        RunTimes none = RunTimes.of(july(5, 0), rateMmH, EVEN, slope("loam", 0));
        assertThat(none.months()).isEmpty();
        assertThat(codes(none.problems())).isEqualTo("RUN_TIME_NO_RATE");
    }

    @Test
    void aMonthWithRainEnoughNeedsNoWatering() {
        MonthRunTime run =
                RunTimes.of(july(3, 120), 14, EVEN, slope("loam", 0)).months().get(0);
        assertThat(run.needMm()).isZero();
        assertThat(run.minutes()).isZero();
        assertThat(run.cycles()).isZero();
        assertThat(run.waterings()).isZero();
        assertThat(run.soakMin()).isZero();
    }

    @Test
    void rootsTooShallowForADayAreWateredDailyAndTold() {
        LawnSoil shallow = new LawnSoil(soil("sand"), 50, 0.5, 0, OptionalDouble.empty());
        RunTimes daily = RunTimes.of(july(7, 0), 14, EVEN, shallow);
        assertThat(daily.months().get(0).intervalDays()).isEqualTo(1);
        assertThat(daily.months().get(0).waterings()).isEqualTo(31);
        assertThat(codes(daily.problems())).contains("RUN_TIME_SHALLOW");
    }

    @Test
    void noWateringBringsMoreThanTheRootsMayUse() {
        for (double eto = 0.5; eto < 9; eto += 0.37) {
            for (String texture : List.of("sand", "loam", "clay loam")) {
                LawnSoil soil = slope(texture, 4);
                MonthRunTime run =
                        RunTimes.of(july(eto, 30), 14, EVEN, soil).months().get(0);
                if (soil.days(eto * 0.8) >= 1) {
                    assertThat(run.needMm()).isLessThanOrEqualTo(soil.allowedMm() + 1e-9);
                }
                assertThat(run.needMm() * run.waterings())
                        .isCloseTo(july(eto, 30).months().get(0).needMm(), within(1e-9));
            }
        }
    }

    @Test
    void waterAndMoneyFollowFromTheFlow() {
        RunTimes runTimes = RunTimes.of(july(5, 0), 14, EVEN, slope("loam", 0));
        WaterUse use = WaterUse.of(runTimes, 30, OptionalDouble.of(2.5)).get(0);
        double minutes = 60 * 5 * 0.8 * 31 / 14;
        assertThat(use.litres()).isCloseTo(30 * minutes, within(1e-6));
        assertThat(use.cost().orElseThrow()).isCloseTo(30 * minutes / 1000 * 2.5, within(1e-9));
        assertThat(WaterUse.of(runTimes, 30, OptionalDouble.empty()).get(0).cost())
                .isEmpty();
    }

    @Test
    void everyRunTimeSaysWhereItComesFrom() {
        MonthRunTime run =
                RunTimes.of(july(5, 0), 40, EVEN, slope("clay", 8)).months().get(0);
        assertThat(run.account().inputs()).containsKeys("etc_mm_day", "rate_mm_h", "M", "longest_min", "need_mm");
        assertThat(run.account().sources()).isNotEmpty();
        assertThat(run.account().inputs().values()).doesNotContain(Double.NaN);
    }
}
