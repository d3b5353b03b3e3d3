package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.reference.TurfCoefficients;
import loamline.water.need.EffectiveRain;
import loamline.water.need.Humidity;
import loamline.water.need.MonthClimate;
import loamline.water.need.MonthClimate.Temperature;
import loamline.water.need.ReferenceEt.Method;
import loamline.water.need.Site;
import loamline.water.need.Sunshine;
import loamline.water.need.WateringNeed;
import org.junit.jupiter.api.Test;

class ClimateFileTest {
    private static Read<List<MonthClimate>> parse(String... lines) {
        return ClimateFile.parse(String.join("\n", lines));
    }

    private static MonthClimate only(String... lines) {
        Read<List<MonthClimate>> read = parse(lines);
        assertThat(read.problems()).isEmpty();
        return read.value().orElseThrow().get(0);
    }

    @Test
    void aFullRowIsRead() {
        MonthClimate july = only(
                "month,tmin_c,tmax_c,rhmin,rhmax,rh_mean,wind_m_s,wind_height_m,sun_hours,rs_mj,rain_mm,eto_mm_day",
                "July,15,27,45,90,60,3.2,10,9,24,80,5.1");
        assertThat(july.month()).isEqualTo(Month.JULY);
        assertThat(july.temperature()).hasValue(new Temperature(15, 27));
        assertThat(july.humidity()).hasValue(new Humidity.Range(45, 90));
        // FAO-56, example 14.
        assertThat(july.windMS().orElseThrow()).isCloseTo(2.4, within(0.05));
        assertThat(july.sunshine()).hasValue(new Sunshine.Measured(24));
        assertThat(july.rainMm()).hasValue(80);
        assertThat(july.etoMmDay()).hasValue(5.1);
    }

    @Test
    void onlyTheMonthMustBeThere() {
        MonthClimate march = only("month;tmin_c;tmax_c;rhmax;rh_mean;sun_hours;wind_m_s", "mar;1,5;;88;;6;2");
        assertThat(march.temperature()).as("one end only").isEmpty();
        assertThat(march.humidity()).hasValue(new Humidity.Greatest(88));
        assertThat(march.sunshine()).hasValue(new Sunshine.Hours(6));
        assertThat(march.windMS()).hasValue(2);
        assertThat(march.rainMm()).isEmpty();
        assertThat(only("month,rh_mean", "3,70").humidity()).hasValue(new Humidity.Mean(70));
    }

    @Test
    void badRowsAreToldWithTheirLineAndTheOthersRead() {
        Read<List<MonthClimate>> read = parse(
                "month,tmin_c,tmax_c,rhmin,rhmax,eto_mm_day",
                "5,,,,,3",
                "13,,,,,3",
                "6,20,10,,,",
                "7,,,90,80,",
                "may,,,,,4",
                "8,,,,,-1");
        assertThat(read.problems())
                .extracting(Problem::code)
                .containsExactlyInAnyOrder(
                        "CSV_CELL_BAD", "CSV_CELL_BAD", "CLIMATE_RANGE", "CLIMATE_RANGE", "CLIMATE_MONTH_TWICE");
        assertThat(read.problems()).allMatch(problem -> problem.where().line().isPresent());
        assertThat(read.value().orElseThrow()).extracting(MonthClimate::month).containsExactly(Month.MAY);
    }

    @Test
    void aFileWithoutASoundMonthGivesNothing() {
        assertThat(parse("month,eto_mm_day", "x,3").value()).isEmpty();
        assertThat(ClimateFile.read(Path.of("no-such-climate.csv")).problems())
                .extracting(Problem::code)
                .containsExactly("FILE_NOT_FOUND");
    }

    /** The range is that of the US Midwest in published maps, from memory; the file is invented. */
    @Test
    void theDemoClimateGivesAPlausibleYear() {
        Read<List<MonthClimate>> read = ClimateFile.read(Path.of("demo-data/climate.csv"));
        assertThat(read.problems()).isEmpty();
        WateringNeed need = WateringNeed.of(
                read.value().orElseThrow(),
                Optional.of(new Site(40.35, 220)),
                TurfCoefficients.of("cool season").orElseThrow(),
                EffectiveRain.USDA_SCS);
        assertThat(need.problems()).isEmpty();
        assertThat(need.months()).hasSize(12).allMatch(month -> month.eto().method() == Method.PENMAN_MONTEITH);
        assertThat(need.months().get(6).eto().mmDay()).isBetween(4.5, 7.0);
        assertThat(need.months().get(0).needMm()).isZero();
    }
}
