package loamline.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.reference.NamedRow;
import loamline.reference.SoilTables;
import loamline.units.Factors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoilMassTest {
    private static final double G_M2_PER_LB_M = Factors.G_M2_PER_LB_1000FT2;
    private static final Concentrations CONVERTED = new Concentrations(SoilTables.published());

    /** Derived from the furrow slice: lb on 1,000 ft² for each ppm. */
    @ParameterizedTest
    @CsvSource({"2, 0.01377", "3, 0.02066", "4, 0.02755", "6, 0.04132", "6.6667, 0.04591", "8, 0.05510"})
    void theFurrowSliceIsTakenToTheDepthThatWasSampled(double inches, double lbM) {
        double perPpm = SoilMass.gM2PerPpm(inches * Factors.M_PER_IN, SoilMass.FURROW_SLICE_G_CM3) / G_M2_PER_LB_M;
        assertThat(perPpm).isCloseTo(lbM, within(5e-6));
    }

    /** Derived: 0.0052023 · BD · depth. */
    @ParameterizedTest
    @CsvSource({"1.2, 0.02497", "1.3, 0.02705", "1.4, 0.02913", "1.5, 0.03121"})
    void aBulkDensityOfItsOwnIsUsedWhereItIsKnown(double density, double lbM) {
        assertThat(SoilMass.gM2PerPpm(4 * Factors.M_PER_IN, density) / G_M2_PER_LB_M)
                .isCloseTo(lbM, within(5e-6));
    }

    @Test
    void theFurrowSliceStandsForADensity() {
        assertThat(SoilMass.FURROW_SLICE_G_CM3).isCloseTo(1.324, within(5e-4)); // derived
        // UC Davis Analytical Laboratory, method 450: 2,400,000 lb in 8 in
        double eightInches = SoilMass.FURROW_SLICE_LB_ACRE * 8 * Factors.M_PER_IN / SoilMass.FURROW_SLICE_M;
        assertThat(eightInches).isCloseTo(2_400_000, within(1e-6));
        // derived: an acre-foot of furrow slices is 3,600,000 lb, not the 4,000,000 lb of 6-in slices
        assertThat(SoilMass.FURROW_SLICE_LB_ACRE * 12 * Factors.M_PER_IN / SoilMass.FURROW_SLICE_M)
                .isCloseTo(3_600_000, within(1e-6));
    }

    /** Derived; what a program that keeps grams on a square metre must agree with. */
    @ParameterizedTest
    @CsvSource({
        "1, lb/acre, 0.022957", "2000, lb/acre, 45.914", "1, kg/ha, 0.020482", "1, g/m2, 0.204816",
        "43.56, lb/acre, 1", "48.824, kg/ha, 1", "4.8824, g/m2, 1", "1, lb/1000 ft2, 1"
    })
    void ratesBecomePoundsOnAThousandSquareFeet(double value, String unit, double lbM) {
        Recommended told =
                Recommended.of(SampleTest.of(List.of(Values.of("recK2O", value, unit, "")), SoilTables.published())
                        .get(0));
        assertThat(told.k2oGM2().orElseThrow() / G_M2_PER_LB_M).isCloseTo(lbM, within(2e-5 * lbM));
    }

    /** Derived: kg/ha to lb/acre × 0.89218 and back × 1.121; a furrow slice of 1 ppm is 2 lb/acre. */
    @Test
    void kilogramsOnAHectareArePoundsOnAnAcre() {
        double lbAcre = 1 / (10_000 * SoilMass.KG_M2_PER_LB_ACRE);
        assertThat(lbAcre).isCloseTo(0.89218, within(5e-6));
        assertThat(1 / lbAcre).isCloseTo(1.121, within(5e-4));
    }

    /** Derived: lb on an acre for each ppm, by depth. */
    @ParameterizedTest
    @CsvSource({"2, 0.60", "3, 0.90", "4, 1.20", "6, 1.80", "6.6666667, 2.00", "8, 2.40"})
    void poundsOnAnAcreForEachPpm(double inches, double lbAcre) {
        double gM2 = SoilMass.gM2PerPpm(inches * Factors.M_PER_IN, SoilMass.FURROW_SLICE_G_CM3);
        assertThat(gM2 / 1000 / SoilMass.KG_M2_PER_LB_ACRE).isCloseTo(lbAcre, within(1e-7));
    }

    /** Derived: a 4-in sample converted as a furrow slice would come out 1.667 times too high; 10 cm at 1.5 is 0.15. */
    @Test
    void theDepthSampledMatters() {
        assertThat(SoilMass.FURROW_SLICE_M / (4 * Factors.M_PER_IN)).isCloseTo(1.667, within(5e-4));
        assertThat(SoilMass.gM2PerPpm(0.10, 1.5)).isCloseTo(0.15, within(1e-12));
    }

    /** Woods, 16 July 2015, lecture slides: 1 g/m² in 10 cm at 1.5 g/cm³ is 6.7 ppm. */
    @Test
    void aGramOnASquareMetreIsSomePpm() {
        assertThat(1 / SoilMass.gM2PerPpm(0.1, 1.5)).isCloseTo(6.667, within(5e-4));
    }

    /** Derived: 30 ppm P in a 4-in sample are 36 lb/acre, 0.826 lb P and 1.894 lb P2O5 on 1,000 ft². */
    @Test
    void phosphorusOfAFourInchSample() {
        double gM2 = 30 * SoilMass.gM2PerPpm(4 * Factors.M_PER_IN, SoilMass.FURROW_SLICE_G_CM3);
        assertThat(gM2 / G_M2_PER_LB_M).isCloseTo(0.826, within(5e-4));
        assertThat(gM2 / G_M2_PER_LB_M * 43.56).isCloseTo(36, within(5e-3));
        assertThat(gM2 / G_M2_PER_LB_M * Oxides.P2O5_PER_P).isCloseTo(1.894, within(1e-3));
    }

    /** Texas A&M turf publication (printed 0.5), derived 0.46: 10 ppm in 6.67 in. */
    @Test
    void tenPpmInAFurrowSlice() {
        double gM2 = 10 * SoilMass.gM2PerPpm(SoilMass.FURROW_SLICE_M, SoilMass.FURROW_SLICE_G_CM3);
        assertThat(gM2 / G_M2_PER_LB_M).isCloseTo(0.459, within(5e-4));
    }

    @Test
    void soilWithoutDepthIsNoSoil() {
        assertThatThrownBy(() -> SoilMass.gM2PerPpm(0, 1.3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SoilMass.gM2PerPpm(0.1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "Ca, 4, meq/100 g, 800", // university teaching notes
        "Ca, 4, cmol(+)/kg, 800",
        "Al, 2, cmol/kg, 180", // university teaching notes
        "P, 30, ppm, 30",
        "P, 30, mg/kg, 30",
        "P, 60, lb/A, 30", // 2,000,000 lb of soil
        "P, 67.2511, kg/ha, 30", // derived: 60 lb/acre × 1.12085
        "K, 0.025, %, 250",
        "K, 25, mg/100g, 250",
        "K, 0.5, me/100g, 195",
        "P, 50, index OKLAHOMA, 25" // Oklahoma's index is lb/acre (county educator's column)
    })
    void unitsBecomePpm(String element, double value, String unit, double ppm) {
        assertThat(CONVERTED.ppm(Values.of(element, value, unit, "Mehlich-3")).value())
                .hasValueSatisfying(found -> assertThat(found).isCloseTo(ppm, within(1e-4 * ppm)));
    }

    /** Rounded and exact weights of 1 meq/100 g, ppm; in lb/acre twice that. Clemson, CEC calculations; atomic weights. */
    @ParameterizedTest
    @CsvSource({"Ca, 200, 200.4", "Mg, 120, 121.5", "K, 390, 391.0", "Na, 230, 229.9", "Al, 90, 89.9"})
    void weightsThatCarryACharge(String element, double ppm, double exactPpm) {
        NamedRow row = SoilTables.published().rows("soil-equivalents.csv").stream()
                .filter(r -> r.text("element").equals(element))
                .findFirst()
                .orElseThrow();
        assertThat(row.number("ppm_per_meq")).isEqualTo(ppm);
        assertThat(row.number("exact_ppm_per_meq")).isEqualTo(exactPpm);
        assertThat(CONVERTED
                        .ppm(Values.of(element, 2 * ppm, "lb/acre", "Mehlich-1"))
                        .value())
                .contains(ppm);
    }

    @Test
    void aVolumeIsNotAWeightUntilItsDensityIsKnown() {
        LabValue byVolume = Values.of("P", 49, "mg/dm3", "Mehlich-3");
        assertThat(CONVERTED.ppm(byVolume).reason()).contains("scoop_density_g_cm3");
        assertThat(CONVERTED.ppm(Values.withScoop(byVolume, 0.98)).value()).contains(50.0);
    }

    @Test
    void anIndexOfNobodyIsAskedFor() {
        assertThat(CONVERTED.ppm(Values.of("P", 50, "index", "Mehlich-3")).reason())
                .contains("write whose");
        // NCDA&CS, from memory: index 50 is 60 mg/dm3
        assertThat(CONVERTED
                        .in(LabUnit.MG_DM3, Values.of("P", 50, "index NC", "Mehlich-3"))
                        .value())
                .contains(60.0);
        assertThat(CONVERTED
                        .in(LabUnit.MG_DM3, Values.of("K", 50, "index NC", "Mehlich-3"))
                        .value())
                .contains(97.75);
        assertThat(CONVERTED
                        .ph(Values.of("bufferPH", 66, "lime index", ""))
                        .value()
                        .orElseThrow())
                .isCloseTo(6.6, within(1e-9)); // lime test index = 10 × buffer pH
    }

    @Test
    void oxidesFollowFromAtomicWeights() {
        assertThat(Oxides.P2O5_PER_P).isCloseTo(2.2914, within(1e-3)); // 141.945 / 61.948
        assertThat(Oxides.K2O_PER_K).isCloseTo(1.2046, within(1e-4)); // 94.196 / 78.197
        assertThat(1 / Oxides.P2O5_PER_P).isCloseTo(0.4364, within(5e-5)); // derived
        assertThat(1 / Oxides.K2O_PER_K).isCloseTo(0.8302, within(5e-5)); // derived
    }
}
