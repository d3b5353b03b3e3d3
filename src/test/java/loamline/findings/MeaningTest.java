package loamline.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import loamline.reference.ReadingClass;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published thresholds of readings, in the units they are printed in. */
class MeaningTest {
    private static ZoneSummary mean(Quantity quantity, double mean) {
        return new ZoneSummary("Lawn", quantity, 1, mean, OptionalDouble.empty(), mean, mean, mean);
    }

    private static String of(Quantity quantity, double mean, ZoneSummary... others) {
        return Meaning.of(mean(quantity, mean), List.of(others))
                .map(ReadingClass::name)
                .orElse("");
    }

    /** Cornell CCA soil compaction module: ideal 100 to 200 psi, roots slowed above 200, stopped at 300. */
    @ParameterizedTest
    @CsvSource({
        "90, too loose for seed to touch the soil",
        "100.001, good for roots",
        "150, good for roots",
        "199.999, good for roots",
        "250, slows roots",
        "299.999, slows roots",
        "300.001, stops roots",
        "310, stops roots",
    })
    void thePenetrometerSaysWhatRootsCanDo(double psi, String words) {
        assertThat(of(Quantity.HARDNESS, psi * Factors.KPA_PER_PSI)).isEqualTo(words);
    }

    @Test
    void poundsToTheSquareInchAreMegapascals() {
        // derived: 200 and 300 psi
        assertThat(200 * Factors.KPA_PER_PSI / 1000).isCloseTo(1.379, within(0.0005));
        assertThat(300 * Factors.KPA_PER_PSI / 1000).isCloseTo(2.068, within(0.0005));
    }

    @Test
    void aPenetrometerInDrySoilSaysNothing() {
        // the same module: a high reading in dry soil is no compaction; read again one or two days after a soaking
        double kpa = 310 * Factors.KPA_PER_PSI;
        assertThat(of(Quantity.HARDNESS, kpa, mean(Quantity.MOISTURE, 1.2))).startsWith("no verdict");
        assertThat(of(Quantity.HARDNESS, kpa, mean(Quantity.MOISTURE, 3))).isEqualTo("stops roots");
        ZoneSummary elsewhere = new ZoneSummary("Other", Quantity.MOISTURE, 1, 1, OptionalDouble.empty(), 1, 1, 1);
        assertThat(of(Quantity.HARDNESS, kpa, elsewhere)).isEqualTo("stops roots");
    }

    /** Dethatch above 1/2 in: Missouri Botanical Garden, FAQ 334; the steps above are from memory. */
    @ParameterizedTest
    @CsvSource({
        "0.3, does no harm, ''",
        "0.5, does no harm, ''",
        "0.6, too thick, core in two passes",
        "0.75, too thick, core in two passes",
        "0.8, much too thick, 'dethatch, then core'",
        "1.0, much too thick, 'dethatch, then core'",
        "1.1, excessive, renovate",
    })
    void thatchIsLeftCoredTakenOffOrRenovated(double inches, String words, String action) {
        ReadingClass found = Meaning.of(mean(Quantity.THATCH, inches * Factors.M_PER_IN), List.of())
                .orElseThrow();
        assertThat(found.name()).isEqualTo(words);
        assertThat(found.action()).startsWith(action);
    }

    /** Over 10 s repellency is likely (second-hand); classes from 5, 60, 600 and 3,600 s from memory. */
    @ParameterizedTest
    @CsvSource({
        "3, takes water",
        "7, slightly repellent",
        "10, slightly repellent",
        "12, repellency likely",
        "400, strongly repellent",
        "700, severely repellent",
        "3600, severely repellent",
        "4000, extremely repellent",
    })
    void aDropThatStaysMeansRepellentSoil(double seconds, String words) {
        assertThat(of(Quantity.DROP, seconds)).isEqualTo(words);
    }

    @Test
    void rootsInTheTopTwoInchesAskForCoring() {
        // Virginia, regional agency: roots only in the top 1 to 2 in of a 6-in slice
        ReadingClass confined = Meaning.of(mean(Quantity.ROOT, 1.5 * Factors.M_PER_IN), List.of())
                .orElseThrow();
        assertThat(confined.action()).isEqualTo("core aerate");
        assertThat(of(Quantity.ROOT, 2.5 * Factors.M_PER_IN)).isEqualTo("deeper than the top 2 in");
    }

    @Test
    void otherReadingsHaveNoClassAndAValueThatIsNoneHasNone() {
        assertThat(Meaning.of(mean(Quantity.QUALITY, 5), List.of())).isEmpty();
        assertThat(ReadingClass.of("thatchM", Double.NaN)).isEmpty();
        assertThat(ReadingClass.of("thatchM", -1)).isEmpty();
    }

    @Test
    void theClassesOfAReadingRise() {
        List<ReadingClass> all = ReadingClass.published();
        for (int i = 1; i < all.size(); i++) {
            ReadingClass before = all.get(i - 1);
            ReadingClass here = all.get(i);
            assertThat(!here.reading().equals(before.reading()) || here.bound() > before.bound())
                    .as(here.toString())
                    .isTrue();
        }
    }
}
