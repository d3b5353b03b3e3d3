package loamline.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.reference.TurfTables;
import loamline.reference.TurfTables.Grass;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When published calendars let a grass have nitrogen. */
class CalendarTest {
    private static final double LB = Factors.G_M2_PER_LB_1000FT2;
    private static final SeasonOptions YEAR = SeasonOptions.from(LocalDate.of(2027, 1, 1));

    private static Calendar calendar(SeasonOptions options) {
        return new Calendar(options, Law.of(options));
    }

    private static Grass grass(String name) {
        return TurfTables.published().grass(name).orElseThrow();
    }

    private static List<Month> months(String grass, String region, double needLb) {
        return calendar(YEAR).days(grass(grass), region, needLb * LB).stream()
                .map(day -> day.date().getMonth())
                .toList();
    }

    /** Months by need, in lb on 1,000 ft² a year. */
    @ParameterizedTest
    @CsvSource({
        // University of Illinois 1995 (second-hand): 1 lb early September; 2: and early May; 3: and late fall; 4: and
        // June
        "Kentucky bluegrass, illinois, 1, SEPTEMBER",
        "Kentucky bluegrass, illinois, 2, MAY SEPTEMBER",
        "Kentucky bluegrass, illinois, 3, MAY SEPTEMBER NOVEMBER",
        "Kentucky bluegrass, illinois, 4, MAY JUNE SEPTEMBER NOVEMBER",
        // Kansas State University (second-hand): 1 in September; 2: and November; 3: and May
        "tall fescue, kansas, 1, SEPTEMBER",
        "tall fescue, kansas, 2, SEPTEMBER NOVEMBER",
        "tall fescue, kansas, 3, MAY SEPTEMBER NOVEMBER",
        // the same, warm-season: every four weeks from early May; zoysia June and July; buffalograss June
        "bermudagrass, kansas, 2, MAY JUNE",
        "bermudagrass, kansas, 4, MAY JUNE JULY JULY",
        "zoysia, kansas, 2, JUNE JULY",
        "buffalograss, kansas, 1, JUNE",
        // Virginia DCR: cool-season September to early November, May optional; warm-season May, July or August
        "tall fescue, virginia, 2, SEPTEMBER OCTOBER NOVEMBER",
        "tall fescue, virginia, 3.5, MAY SEPTEMBER OCTOBER NOVEMBER",
        "bermudagrass, virginia, 2, MAY JULY",
        "bermudagrass, virginia, 4, APRIL MAY JUNE JULY",
        // North Carolina Cooperative Extension: Labor Day, Thanksgiving, Valentine's Day
        "tall fescue, north carolina, 3, FEBRUARY SEPTEMBER NOVEMBER",
        // Purdue University: September, November, May
        "Kentucky bluegrass, indiana, 3, MAY SEPTEMBER NOVEMBER",
        // University of Georgia: spring, June, July, September; centipede after green-up and in mid-summer
        "St. Augustine, georgia, 4, APRIL JUNE JULY SEPTEMBER",
        "centipede, georgia, 2, MAY JULY",
        // University of Florida (second-hand): high March, May, July, September; low after green-up and late summer
        "St. Augustine, florida, 4, MARCH MAY JULY SEPTEMBER",
        "St. Augustine, florida, 2, MAY SEPTEMBER",
        // Mugaas, Horgan & Rosen 2010: Labor Day to mid September, none later
        "Kentucky bluegrass, minnesota, 3, MAY SEPTEMBER",
    })
    void theMonthsOfTheTableAreThoseOfItsSource(String grass, String region, double needLb, String months) {
        assertThat(months(grass, region, needLb)).extracting(Month::name).containsExactly(months.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        // Kansas State University (second-hand): the last on bermuda by August 15
        "bermudagrass, kansas, 2027-08-15, false",
        "bermudagrass, kansas, 2027-08-20, true",
        // Mugaas, Horgan & Rosen 2010: late nitrogen is discouraged in Minnesota; Purdue University gives it in
        // November
        "Kentucky bluegrass, minnesota, 2027-11-01, true",
        "Kentucky bluegrass, minnesota, 2027-09-15, false",
        "Kentucky bluegrass, indiana, 2027-11-01, false",
        // North Carolina Cooperative Extension: none on tall fescue after March 15
        "tall fescue, north carolina, 2027-03-15, false",
        "tall fescue, north carolina, 2027-03-16, true",
        "Kentucky bluegrass, north carolina, 2027-03-16, false",
        // Virginia DCR: none in April and from June to August
        "tall fescue, virginia, 2027-04-15, true",
        "tall fescue, virginia, 2027-05-15, false",
        "tall fescue, virginia, 2027-07-01, true",
        "tall fescue, virginia, 2027-09-10, false",
    })
    void aPauseOfTheCalendarIsToldWithItsSource(String grass, String region, LocalDate day, boolean paused) {
        assertThat(calendar(YEAR).pause(grass(grass), region, day).isPresent()).isEqualTo(paused);
    }

    @Test
    void noWindowOfATableLiesInAPauseOfTheSameTable() {
        for (String region : TurfTables.published().regions()) {
            for (String name : List.of("Kentucky bluegrass", "tall fescue", "bermudagrass", "St. Augustine")) {
                TurfTables.published()
                        .rows("turf-windows.csv", grass(name), region)
                        .forEach(row -> {
                            LocalDate day =
                                    MonthDay.parse("--" + row.text("day")).atYear(2027);
                            assertThat(calendar(YEAR).pause(grass(name), region, day))
                                    .as(name + " " + region + " " + day)
                                    .isEmpty();
                        });
            }
        }
    }

    @Test
    void aMonthBeforeTheFirstFrostWarmSeasonGrassGetsTheLast() {
        // University of Georgia: at least a month before the first killing frost; October 25, so by September 25
        Calendar calendar = calendar(YEAR.withFrost(MonthDay.of(10, 25)));
        Grass augustine = grass("St. Augustine");
        assertThat(calendar.pause(augustine, "georgia", LocalDate.of(2027, 9, 25)))
                .isEmpty();
        assertThat(calendar.pause(augustine, "georgia", LocalDate.of(2027, 9, 26)))
                .hasValueSatisfying(words -> assertThat(words).contains("2027-09-25"));
        assertThat(calendar.pause(grass("tall fescue"), "georgia", LocalDate.of(2027, 9, 26)))
                .isEmpty();
        Calendar early = calendar(YEAR.withFrost(MonthDay.of(10, 1)));
        assertThat(early.days(augustine, "georgia", 4 * LB))
                .noneMatch(day -> day.date().getMonth() == Month.SEPTEMBER);
    }

    @Test
    void aServiceThatComesOutOfSeasonIsToldOnceForAllParts() {
        Visit late = new Visit(
                Optional.of(LocalDate.of(2027, 8, 20)),
                "theirs",
                List.of(),
                new Visit.Percents(OptionalDouble.of(20), OptionalDouble.of(0), OptionalDouble.of(0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.5 * LB),
                7);
        List<Ground> grounds =
                List.of(new Ground("Front", "bermudagrass", 200, 200), new Ground("Back", "bermudagrass", 200, 200));
        Season season = Season.of(new SeasonInputs(
                grounds,
                List.of(),
                List.of(Products.of("urea 46-0-0", 46, 0, 0)),
                List.of(late),
                List.of(),
                YEAR.inRegion("kansas")));
        assertThat(season.problems())
                .filteredOn(problem -> problem.code().equals("SERVICE_OFF_SEASON"))
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("Front, Back", "August 15", "Kansas"));
    }
}
