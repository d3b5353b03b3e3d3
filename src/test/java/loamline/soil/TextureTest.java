package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextureTest {
    /** Conditions of USDA Handbook 18, 2017, p. 122, written as they are printed; counts derived from them. */
    @Test
    void theWholeTriangleHasItsClassesAndTheirCounts() {
        Map<Texture, Integer> counts = new EnumMap<>(Texture.class);
        for (int sand = 0; sand <= 100; sand++) {
            for (int clay = 0; clay <= 100 - sand; clay++) {
                int silt = 100 - sand - clay;
                Texture found = Texture.of(sand, silt, clay).orElseThrow();
                assertThat(found).as("%d/%d/%d", sand, silt, clay).isEqualTo(asPrinted(sand, silt, clay));
                counts.merge(found, 1, Integer::sum);
            }
        }
        Map<Texture, Integer> expected = new EnumMap<>(Texture.class);
        expected.put(Texture.CLAY, 1540);
        expected.put(Texture.SILT_LOAM, 840);
        expected.put(Texture.SANDY_LOAM, 565);
        expected.put(Texture.SANDY_CLAY_LOAM, 392);
        expected.put(Texture.LOAM, 349);
        expected.put(Texture.CLAY_LOAM, 325);
        expected.put(Texture.SILTY_CLAY_LOAM, 273);
        expected.put(Texture.SILTY_CLAY, 231);
        expected.put(Texture.SANDY_CLAY, 210);
        expected.put(Texture.SILT, 186);
        expected.put(Texture.LOAMY_SAND, 155);
        expected.put(Texture.SAND, 85);
        assertThat(counts).isEqualTo(expected);
        assertThat(counts.values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(5151);
    }

    /** The same conditions leave no gap and no overlap on tenths; sums like 45.1 + 27.9 + 27 must not slip over a line. */
    @Test
    void tenthsOnTheLinesBetweenClassesKeepTheirClass() {
        for (int sand : new int[] {200, 201, 449, 450, 451, 520, 521, 700, 701, 849, 850, 851, 900}) {
            for (int clay = 0; clay <= 1000 - sand; clay++) {
                assertTenths(sand, clay);
            }
        }
        for (int clay : new int[] {69, 70, 119, 120, 199, 200, 269, 270, 271, 349, 350, 399, 400}) {
            for (int sand = 0; sand <= 1000 - clay; sand++) {
                assertTenths(sand, clay);
            }
        }
        for (int clay = 0; clay <= 150; clay++) {
            assertTenths(700 + clay, clay); // silt + 2 clay = 30
        }
        for (int clay = 0; clay <= 100; clay += 2) {
            assertTenths(850 + clay / 2, clay); // silt + 1.5 clay = 15
        }
        for (int silt : new int[] {279, 280, 399, 400, 499, 500, 799, 800}) {
            for (int clay = 0; clay <= 1000 - silt; clay++) {
                assertTenths(1000 - silt - clay, clay);
            }
        }
    }

    private static void assertTenths(int sand, int clay) {
        double silt = (1000 - sand - clay) / 10.0;
        assertThat(Texture.of(sand / 10.0, silt, clay / 10.0))
                .as("%d/%d tenths of sand and clay", sand, clay)
                .contains(asPrinted(sand / 10.0, silt, clay / 10.0));
    }

    /** The slow twin: every class tried by its own conditions, exactly one may hold. */
    private static Texture asPrinted(double sand, double silt, double clay) {
        Map<Texture, Boolean> holds = new EnumMap<>(Texture.class);
        holds.put(Texture.SAND, sand > 85 && silt + 1.5 * clay < 15);
        holds.put(Texture.LOAMY_SAND, sand >= 70 && sand <= 90 && silt + 1.5 * clay >= 15 && silt + 2 * clay < 30);
        holds.put(
                Texture.SANDY_LOAM,
                (clay >= 7 && clay < 20 && sand > 52 && silt + 2 * clay >= 30)
                        || (clay < 7 && silt < 50 && silt + 2 * clay >= 30));
        holds.put(Texture.LOAM, clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52);
        holds.put(Texture.SILT_LOAM, (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12));
        holds.put(Texture.SILT, silt >= 80 && clay < 12);
        holds.put(Texture.SANDY_CLAY_LOAM, clay >= 20 && clay < 35 && silt < 28 && sand > 45);
        holds.put(Texture.CLAY_LOAM, clay >= 27 && clay < 40 && sand > 20 && sand <= 45);
        holds.put(Texture.SILTY_CLAY_LOAM, clay >= 27 && clay < 40 && sand <= 20);
        holds.put(Texture.SANDY_CLAY, clay >= 35 && sand > 45);
        holds.put(Texture.SILTY_CLAY, clay >= 40 && silt >= 40);
        holds.put(Texture.CLAY, clay >= 40 && sand <= 45 && silt < 40);
        holds.values().removeIf(held -> !held);
        assertThat(holds).as("%s/%s/%s", sand, silt, clay).hasSize(1);
        return holds.keySet().iterator().next();
    }

    @ParameterizedTest
    @CsvSource({
        // USDA National Cooperative Soil Survey laboratory data, pedon reports NDSU0667, 0668, 0670, 0672
        "29.0, 49.1, 21.9, loam",
        "27.2, 47.7, 25.1, loam",
        "13.2, 58.6, 28.2, silty clay loam",
        "79.1, 10.2, 10.7, sandy loam",
        // derived from the conditions: insides
        "92, 5, 3, sand",
        "82, 12, 6, loamy sand",
        "65, 25, 10, sandy loam",
        "40, 40, 20, loam",
        "20, 65, 15, silt loam",
        "5, 87, 8, silt",
        "60, 15, 25, sandy clay loam",
        "33, 33, 34, clay loam",
        // derived: points on a line
        "85, 10, 5, loamy sand",
        "52, 28, 20, loam",
        "53, 27, 20, sandy clay loam",
        "50, 43, 7, loam",
        "45, 27, 28, clay loam"
    })
    void soilsHaveTheirClass(double sand, double silt, double clay, String expected) {
        assertThat(Texture.of(sand, silt, clay))
                .hasValueSatisfying(t -> assertThat(t.label()).isEqualTo(expected));
    }

    @Test
    void partsThatDoNotMakeAWholeHaveNoClass() {
        assertThat(Texture.of(40, 40, 18.9)).isEmpty();
        assertThat(Texture.of(40.5, 40, 20.4)).isPresent();
        assertThat(Texture.of(-1, 81, 20)).isEmpty();
        assertThat(Texture.of(Double.NaN, 40, 20)).isEmpty();
    }
}
