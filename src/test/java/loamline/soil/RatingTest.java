package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loamline.account.Problem;
import loamline.reference.SoilTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatingTest {
    private static SampleResult report(String guideline, LabValue... values) {
        SoilOptions options = guideline.isEmpty() ? SoilOptions.USUAL : SoilOptions.USUAL.withGuideline(guideline);
        return SoilReport.of(List.of(values), options).samples().get(0);
    }

    private static Rating first(String guideline, LabValue... values) {
        return report(guideline, values).ratings().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        // Rutgers NJAES, relative levels of nutrients
        "rutgers, P, 40, lb/acre, Mehlich-3, low",
        "rutgers, P, 72, lb/acre, Mehlich-3, high (optimum)",
        "rutgers, P, 138, lb/acre, Mehlich-3, very high",
        "rutgers, P, 36, ppm, Mehlich-3, high (optimum)", // the same table in ppm: halved
        "rutgers, P, 45.5, lb/acre, Mehlich-3, medium", // between classes: rounded first, halves up
        // University of Massachusetts sample report
        "umass, P, 6.3, ppm, modified Morgan, optimum",
        "umass, K, 107, ppm, modified Morgan, optimum",
        "umass, Mg, 162, ppm, modified Morgan, above optimum",
        // Landschoot & Wolf 2011
        "penn-state, P, 44, ppm, Mehlich-3, phosphorus recommended",
        "penn-state, P, 46, ppm, Mehlich-3, no phosphorus needed",
        "penn-state, P, 201, ppm, Mehlich-3, above the environmental threshold",
        // Soldat, Petrovic & Rao 2005
        "cornell, P, 4.4, mg/kg, Morgan, medium or low: phosphorus recommended",
        "cornell, P, 4.5, mg/kg, Morgan, above medium",
        "cornell, P, 20.1, mg/kg, Morgan, very high",
        // Woods, Stowell & Gelernter 2016
        "mlsn, K, 36.9, ppm, Mehlich-3, below the minimum",
        "mlsn, K, 37, ppm, Mehlich-3, minimum met",
        // University of Georgia: a limit printed in two classes belongs to the lower one
        "georgia-coastal, P, 100, lb/acre, Mehlich-1, high",
        "georgia-piedmont, K, 351, lb/acre, Mehlich-1, very high",
        // Carrow et al. 2004
        "slan, P, 15, ppm, Bray P1, sufficient",
        "slan, P, 11.4, ppm, Olsen, low",
        // from memory of VCE 452-701 and BU-01731
        "virginia, P, 12, lb/acre, Mehlich-1, medium",
        "minnesota, P, 8, ppm, Bray P1, low"
    })
    void aValueStandsInItsClass(
            String guideline, String element, double value, String unit, String extractant, String expected) {
        assertThat(first(guideline, Values.of(element, value, unit, extractant)).name())
                .contains(expected);
    }

    /** Rutgers: MnAI = 101.7 + 3.75 Mn − 15.2 pH. */
    @ParameterizedTest
    @CsvSource({"10, 6.5, 40.4", "8, 6.8, 28.34", "20, 7.5, 62.70"})
    void manganeseIsRatedByItsIndex(double ppm, double ph, double index) {
        assertThat(Rater.manganeseIndex(ppm, ph)).isCloseTo(index, within(1e-9));
        Rating rating = first("rutgers", Values.of("Mn", ppm, "ppm", "Mehlich-3"), Values.of("pH", ph, "", "water"));
        assertThat(rating.name()).contains("adequate");
    }

    @Test
    void manganeseWithoutPhIsAskedFor() {
        assertThat(first("rutgers", Values.of("Mn", 10, "ppm", "Mehlich-3"))
                        .standing()
                        .reason())
                .contains("pH in water");
    }

    @Test
    void aGuidelineMadeForAnotherExtractantIsRefused() {
        Rating rating = first("umass", Values.of("P", 30, "ppm", "Mehlich-3"));
        assertThat(rating.name()).isEmpty();
        assertThat(rating.standing().reason()).contains("modified Morgan", "Mehlich-3", "no conversion");
    }

    @Test
    void withoutAGuidelineEachValueIsRatedByOneMadeForIt() {
        SampleResult sample = report(
                "",
                Values.of("P", 30, "ppm", "Mehlich-3"),
                Values.of("P", 6, "ppm", "Morgan"),
                Values.of("K", 120, "ppm", "modified Morgan"),
                Values.of("P", 20, "ppm", "Bray P1"),
                Values.of("Zn", 2, "ppm", "Mehlich-3"),
                Values.of("K", 50, "ppm", "resin"),
                Values.of("pH", 5.9, "", "water"));
        assertThat(sample.ratings())
                .extracting(Rating::guideline)
                .containsExactly("mlsn", "cornell", "umass", "slan", "rutgers", "", "penn-state");
        assertThat(sample.ratings().get(5).standing().reason()).contains("no range is held for K by resin");
        assertThat(sample.ratings().get(6).name()).contains("acid");
    }

    @Test
    void resultsFromMemoryOfLowConfidenceAreInNoTable() {
        SoilTables tables = SoilTables.published();
        for (String name : SoilTables.names()) {
            assertThat(tables.rows(name)).isNotEmpty();
            if (!name.equals("soil-sources.csv") && !name.equals("soil-guidelines.csv")) {
                assertThat(tables.rows(name))
                        .as(name)
                        .allMatch(row -> List.of(
                                        "published",
                                        "published, second-hand",
                                        "author's article",
                                        "derived",
                                        "from memory, high",
                                        "from memory, medium",
                                        "common practice, no source")
                                .contains(row.text("status")))
                        .allMatch(row ->
                                !tables.source(row.text("source_id")).citation().startsWith("your own"));
            }
        }
    }

    @Test
    void saltPhIsNotRatedAsWaterPh() {
        Rating rating = first("", Values.of("pH", 5.6, "", "CaCl2"));
        assertThat(rating.name()).isEmpty();
        assertThat(rating.standing().reason()).contains("0.5 below pH in water");
    }

    @ParameterizedTest
    @CsvSource({
        // Rutgers NJAES, organic matter levels: 2.2 %
        "82, 12, 6, very high",
        "65, 25, 10, high",
        "40, 40, 20, medium",
        "20, 65, 15, low"
    })
    void organicMatterIsRatedByTexture(double sand, double silt, double clay, String expected) {
        assertThat(first(
                                "",
                                Values.of("OM", 2.2, "%", ""),
                                Values.of("sand", sand, "%", ""),
                                Values.of("silt", silt, "%", ""),
                                Values.of("clay", clay, "%", ""))
                        .name())
                .contains(expected);
        assertThat(first("", Values.of("OM", 2.2, "%", "")).standing().reason()).contains("sand, silt and clay");
    }

    @Test
    void conductivityIsRatedByItsOwnMethodOnly() {
        assertThat(first("", Values.of("EC", 5, "dS/m", "paste")).name()).contains("high"); // Ali, chapter 8
        assertThat(first("", Values.of("EC", 0.5, "dS/m", "1:2")).name()).contains("optimum"); // UMass report
        assertThat(first("", Values.of("EC", 0.5, "dS/m", "1:1")).standing().reason())
                .contains("no range is held");
    }

    @Test
    void whatIsMissingIsAskedForWithItsLine() {
        List<Problem> problems = SoilReport.of(
                        List.of(
                                Values.of("P", 30, "", "Mehlich-3"),
                                Values.of("K", 90, "ppm", ""),
                                Values.of("Ca", 900, "ppm", "Mehlich-9"),
                                Values.of("pH", 5.6, "", ""),
                                Values.of("pH", 14.5, "", "water"),
                                Values.withoutDepth(Values.of("K", 90, "ppm", "Olsen")),
                                Values.of("Mg", 90, "furlongs", "Olsen"),
                                Values.of("OM", 3, "ppm", ""),
                                Values.of("P", 3130, "ppm", "Mehlich-3")),
                        SoilOptions.USUAL)
                .problems();
        assertThat(problems)
                .extracting(Problem::code)
                .contains(
                        "LAB_UNIT_MISSING",
                        "LAB_EXTRACTANT_MISSING",
                        "LAB_EXTRACTANT_UNKNOWN",
                        "LAB_METHOD_MISSING",
                        "LAB_VALUE_RANGE",
                        "LAB_DEPTH_MISSING",
                        "LAB_UNIT_UNKNOWN",
                        "LAB_UNIT_UNFIT");
        assertThat(problems).allMatch(p -> p.where().line().isPresent());
    }

    /** Woods: 4 to 313 ppm on 1,773 greens; ten times that asks for the unit. */
    @Test
    void aValueThatSoilsDoNotHoldAsksForItsUnit() {
        assertThat(first("", Values.of("P", 313, "ppm", "Mehlich-3")).name()).isPresent();
        Rating doubtful = first("", Values.of("P", 3130, "ppm", "Mehlich-3"));
        assertThat(doubtful.standing().reason()).contains("check the unit");
    }

    @Test
    void aChangeIsToldAgainstTheLastTestMadeAlike() {
        LabValue now = Values.of("K", 100, "ppm", "Mehlich-3");
        LabValue before = Values.on(Values.of("K", 120, "lb/acre", "Mehlich-3"), LocalDate.of(2024, 4, 1));
        LabValue other = Values.on(Values.of("K", 60, "ppm", "Olsen"), LocalDate.of(2025, 4, 1));
        Change change = first("", now, before, other).change().orElseThrow();
        assertThat(change.before()).isEqualTo(60);
        assertThat(change.difference()).isEqualTo(40);
        // Ferrari & Vermeulen: 10 % each; 1.96 · hypot(6, 10) = 22.9
        assertThat(change.beyondError()).contains(true);
        assertThat(Change.of(Element.K, LocalDate.EPOCH, 60, 78).beyondError()).contains(false);
        assertThat(Change.of(Element.PH, LocalDate.EPOCH, 6.0, 6.2).beyondError())
                .contains(false);
        assertThat(Change.of(Element.PH, LocalDate.EPOCH, 6.0, 6.3).beyondError())
                .contains(true);
    }

    @Test
    void anotherDepthIsNotCompared() {
        LabValue now = Values.of("K", 100, "ppm", "Mehlich-3");
        LabValue before = Values.deep(Values.on(now, LocalDate.of(2024, 4, 1)), 0.15);
        assertThat(first("", now, before).change()).isEmpty();
    }

    @Test
    void partsThatDoNotSumAreListedAndLeaveTheTextureOpen() {
        SoilReport report = SoilReport.of(
                List.of(Values.of("sand", 60, "%", ""), Values.of("silt", 30, "%", ""), Values.of("clay", 20, "%", "")),
                SoilOptions.USUAL);
        assertThat(report.samples().get(0).texture()).isEmpty();
        assertThat(report.problems()).extracting(Problem::code).contains("LAB_TEXTURE_SUM");
    }

    /** Clemson's capacity of 3.83 called clay, and 12 called loam (Ohio State ANR-81: loams 10 to 15). */
    @Test
    void anUnlikelyCapacityIsDoubted() {
        assertThat(doubts(3.83, 20, 20, 60)).contains("LAB_CEC_TEXTURE");
        assertThat(doubts(12, 40, 40, 20)).doesNotContain("LAB_CEC_TEXTURE");
    }

    private static List<String> doubts(double cec, double sand, double silt, double clay) {
        List<LabValue> values = new ArrayList<>(Arrays.asList(
                Values.of("CEC", cec, "meq/100 g", ""),
                Values.of("sand", sand, "%", ""),
                Values.of("silt", silt, "%", ""),
                Values.of("clay", clay, "%", "")));
        return SoilReport.of(values, SoilOptions.USUAL).problems().stream()
                .map(Problem::code)
                .toList();
    }
}
