package loamline.water.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.reference.TurfCoefficients;
import loamline.water.need.MonthClimate.Temperature;
import loamline.water.need.ReferenceEt.Method;
import org.junit.jupiter.api.Test;

class WateringNeedTest {
    private static final TurfCoefficients COOL =
            TurfCoefficients.of("Cool season").orElseThrow();
    private static final Optional<Site> LYON = Optional.of(new Site(45 + 43 / 60.0, 200));

    private static MonthClimate month(
            Month month, double minC, double maxC, Optional<Humidity> humidity, OptionalDouble windMS) {
        return new MonthClimate(
                month,
                Optional.of(new Temperature(minC, maxC)),
                humidity,
                windMS,
                Optional.empty(),
                OptionalDouble.of(50),
                OptionalDouble.empty());
    }

    private static MonthClimate mild(Month month) {
        return month(month, 14.8, 26.6, Optional.empty(), OptionalDouble.empty());
    }

    private static WateringNeed need(List<MonthClimate> climate, Optional<Site> site) {
        return WateringNeed.of(climate, site, COOL, EffectiveRain.USDA_SCS);
    }

    private static Stream<String> codes(WateringNeed need) {
        return need.problems().stream().map(Problem::code);
    }

    @Test
    void aTypedValueIsTakenAsItIs() {
        WateringNeed need = need(List.of(MonthClimate.typed(Month.JULY, 5, 100)), Optional.empty());
        MonthNeed july = need.months().get(0);
        assertThat(july.eto().method()).isEqualTo(Method.TYPED);
        assertThat(july.turfMmDay()).isCloseTo(5 * 0.94, within(1e-12));
        // By hand: 5 · 0.94 · 31 − 84 mm of effective rain.
        assertThat(july.needMm()).isCloseTo(145.7 - 84, within(1e-9));
        assertThat(july.account().sources()).hasSize(2);
    }

    @Test
    void temperaturesAloneGoByHargreaves() {
        MonthNeed july = need(List.of(mild(Month.JULY)), LYON).months().get(0);
        assertThat(july.eto().method()).isEqualTo(Method.HARGREAVES);
        // Worked out from the equation with Ra 40.55 MJ/m² a day.
        assertThat(july.eto().mmDay()).isCloseTo(5.03, within(0.01));
    }

    @Test
    void humidityAndWindGoByPenmanMonteith() {
        MonthClimate july =
                month(Month.JULY, 14.8, 26.6, Optional.of(new Humidity.Greatest(100)), OptionalDouble.of(2));
        ReferenceEt eto = need(List.of(july), LYON).months().get(0).eto();
        assertThat(eto.method()).isEqualTo(Method.PENMAN_MONTEITH);
        assertThat(eto.account().note()).contains("estimated from the temperatures");
        // FAO-56, example 20 (from memory): the same data.
        assertThat(eto.mmDay()).isCloseTo(4.56, within(0.02));
    }

    @Test
    void aWarmingMonthHeatsTheGround() {
        Temperature april = new Temperature(25.6, 34.8);
        MonthClimate march = month(Month.MARCH, 24, 34.4, Optional.empty(), OptionalDouble.empty());
        MonthClimate may = month(Month.MAY, 26, 36.4, Optional.empty(), OptionalDouble.empty());
        assertThat(ReferenceEt.groundHeat(Month.APRIL, april, List.of())).isZero();
        // FAO-56, example 17: March 29.2 °C, April 30.2 °C.
        assertThat(ReferenceEt.groundHeat(Month.APRIL, april, List.of(march))).isCloseTo(0.14, within(1e-9));
        assertThat(ReferenceEt.groundHeat(Month.APRIL, april, List.of(march, may)))
                .isCloseTo(0.14, within(1e-9));
        assertThat(ReferenceEt.groundHeat(Month.JANUARY, april, List.of(mild(Month.DECEMBER))))
                .isCloseTo(0.14 * (30.2 - 20.7), within(1e-9));
    }

    @Test
    void monthsStandInTheOrderOfTheYearAndTheFirstOfTwoCounts() {
        WateringNeed need = need(
                List.of(
                        MonthClimate.typed(Month.AUGUST, 4, 0),
                        MonthClimate.typed(Month.MAY, 3, 0),
                        MonthClimate.typed(Month.MAY, 9, 0)),
                Optional.empty());
        assertThat(need.months()).extracting(MonthNeed::month).containsExactly(Month.MAY, Month.AUGUST);
        assertThat(need.months().get(0).eto().mmDay()).isEqualTo(3);
    }

    @Test
    void whatIsMissingIsToldOnceForAllMonths() {
        MonthClimate noRain = new MonthClimate(
                Month.MAY,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(4));
        WateringNeed need = need(List.of(noRain, mild(Month.JUNE), mild(Month.JULY)), Optional.empty());
        assertThat(codes(need)).containsExactly("NEED_PLACE_MISSING", "NEED_CLIMATE_MISSING", "NEED_RAIN_MISSING");
        assertThat(need.problems().get(0).message()).contains("June, July");
        assertThat(need.problems().get(1).message()).contains("January").doesNotContain("June");
        assertThat(need.months()).extracting(MonthNeed::month).containsExactly(Month.MAY);
    }

    @Test
    void aFullYearNearThePoleIsFiniteAndDoubted() {
        List<MonthClimate> year = Arrays.stream(Month.values())
                .map(m -> month(m, -5, 3, Optional.of(new Humidity.Mean(80)), OptionalDouble.of(3)))
                .toList();
        WateringNeed need = need(year, Optional.of(new Site(78, 10)));
        assertThat(need.months()).hasSize(12).allMatch(m -> m.needMm() >= 0 && Double.isFinite(m.needMm()));
        assertThat(codes(need)).containsExactly("NEED_FAR_NORTH");
    }

    @Test
    void impossibleWeatherIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Temperature(20, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> new Humidity.Mean(101));
        assertThatIllegalArgumentException().isThrownBy(() -> new Humidity.Range(80, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sunshine.Hours(25));
        assertThatIllegalArgumentException().isThrownBy(() -> new Site(91, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> MonthClimate.typed(Month.MAY, Double.NaN, 0));
    }
}
