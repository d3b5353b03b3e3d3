package loamline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class RangeTest {
    private static final Range FROM_3_FT_TO_5_M = new Range(Measure.LENGTH, 3 * Factors.M_PER_FT, 5);

    @Test
    void acceptsItsBoundsAsTyped() {
        assertThat(complaintAbout("3 ft")).isEmpty();
        assertThat(complaintAbout("36 in")).isEmpty();
        assertThat(complaintAbout("5 m")).isEmpty();
    }

    @Test
    void saysWhatWouldBeAcceptedWithBoundsRoundedInward() {
        String inFeet = "Write a length from 3 ft to 16.4 ft.";

        assertThat(complaintAbout("2.999 ft")).isEqualTo(inFeet);
        assertThat(complaintAbout("5.001 m")).isEqualTo(inFeet);
        assertThat(complaintAbout("16.4 ft")).isEmpty();
        assertThat(FROM_3_FT_TO_5_M.complaint(0, UnitSystem.METRIC)).hasValue("Write a length from 0.9144 m to 5 m.");
    }

    @Test
    void mayBeOpenAtEitherEnd() {
        Range positive = Range.atLeast(Measure.MASS, 0);
        Range frost = new Range(Measure.ANGLE, Double.NEGATIVE_INFINITY, 90);

        assertThat(positive.contains(Double.MAX_VALUE)).isTrue();
        assertThat(positive.complaint(-1, UnitSystem.US)).hasValue("Write a weight of 0 lb or more.");
        assertThat(frost.contains(-1e300)).isTrue();
        assertThat(frost.complaint(91, UnitSystem.US)).hasValue("Write an angle of 90° or less.");
    }

    @Test
    void containsNoNaN() {
        assertThat(FROM_3_FT_TO_5_M.contains(Double.NaN)).isFalse();
        assertThat(new Range(Measure.LENGTH, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY).contains(Double.NaN))
                .isFalse();
    }

    @Test
    void refusesBoundsThatAreNoneOrCrossed() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Range(Measure.LENGTH, 2, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Range(Measure.LENGTH, Double.NaN, 1));
    }

    private static String complaintAbout(String text) {
        double stored =
                Parsing.parse(Measure.LENGTH, text, UnitSystem.US).value().orElseThrow();
        return FROM_3_FT_TO_5_M.complaint(stored, UnitSystem.US).orElse("");
    }
}
