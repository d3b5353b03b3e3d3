package loamline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.yard.Extras;
import loamline.yard.Head;
import loamline.yard.Profile;
import loamline.yard.Profile.Measured;
import loamline.yard.Profile.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadPatternTest {
    private static final Point MIDDLE = new Point(3, 4);

    private static HeadPattern pattern(Profile profile, double startDeg, double sweepDeg) {
        return new HeadPattern(MIDDLE, 5, Arc.of(startDeg, sweepDeg), RadialProfile.of(profile), 6);
    }

    /** Means over a full circle by integration; 0.58133 is the ring's, 0.52 that of flat to 0.4, then straight to 0. */
    @ParameterizedTest
    @CsvSource({"CONE, 0.3333333333", "UNIFORM, 1", "PARABOLA, 0.5", "ELLIPSE, 0.6666666667", "RING, 0.5813333333"})
    void volumeFactorsFollowFromTheShapes(Named shape, double meanOverPeak) {
        assertThat(RadialProfile.of(shape).meanOverPeak()).isCloseTo(meanOverPeak, within(1e-9));
    }

    @Test
    void aMeasuredLegIsStraightBetweenItsDepths() {
        RadialProfile flat = RadialProfile.of(new Measured(List.of(3.0, 3.0, 3.0, 2.0, 1.0, 0.0)));
        assertThat(flat.meanOverPeak()).isCloseTo(3 * 0.52, within(1e-12));
        assertThat(flat.at(0.3)).isEqualTo(3);
        assertThat(flat.at(0.7)).isCloseTo(1.5, within(1e-12));
        assertThat(flat.at(1)).isZero();
    }

    /** 3 Q / (π R²): 6 L/min over 5 m are 13.75 mm/h at the head. */
    @Test
    void aConeRainsThreeTimesItsMeanAtTheHead() {
        HeadPattern cone = pattern(Named.CONE, 0, 360);
        assertThat(cone.rateMmH(3, 4)).isCloseTo(3 * 6 * 60 / (Math.PI * 25), within(1e-9));
        assertThat(cone.rateMmH(3, 9)).isZero();
        assertThat(cone.rateMmH(3, 6.5)).isCloseTo(cone.rateMmH(3, 4) / 2, within(1e-9));
    }

    /** Polar midpoint rule: fine in the radius, one bearing, for all are alike. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 17.3, 45, 90, 135, 180, 203.7, 270, 359, 360})
    void theFlowIsTheIntegralOverTheArcForEveryProfile(double sweepDeg) {
        for (Named shape : Named.values()) {
            HeadPattern p = pattern(shape, 31, sweepDeg);
            double sum = 0;
            int rings = 20_000;
            double middle = Math.toRadians(p.arc().middleDeg());
            for (int i = 0; i < rings; i++) {
                double r = 5 * (i + 0.5) / rings;
                double rate = p.rateMmH(3 + r * Math.sin(middle), 4 + r * Math.cos(middle));
                sum += rate * r * 5 / rings * Math.toRadians(sweepDeg) / 60;
            }
            assertThat(sum).as(shape.toString()).isCloseTo(6, within(1e-5));
        }
    }

    @Test
    void anArcRunsClockwiseFromItsFirstEdgeWhichIsIn() {
        HeadPattern east = pattern(Named.UNIFORM, 0, 90);
        assertThat(east.reaches(4, 5)).isTrue();
        assertThat(east.reaches(2, 5)).isFalse();
        assertThat(east.reaches(4, 3)).isFalse();
        assertThat(east.reaches(3, 6)).as("first edge").isTrue();
        assertThat(east.reaches(5, 4)).as("second edge").isFalse();
        HeadPattern rest = pattern(Named.UNIFORM, 90, 270);
        assertThat(rest.reaches(5, 4)).isTrue();
        assertThat(rest.reaches(3, 6)).isFalse();
        assertThat(rest.reaches(2, 3)).isTrue();
    }

    /** Every point belongs to exactly one of two arcs that share their edges, on the edges too. */
    @ParameterizedTest
    @ValueSource(doubles = {7.5, 90, 127.5, 180, 202.5, 270})
    void arcsThatShareTheirEdgesShareNoPointAndLeaveNone(double sweepDeg) {
        for (double deg = 0; deg < 360; deg += 7.5) {
            Arc one = Arc.of(deg, sweepDeg);
            Arc other = Arc.of(deg + sweepDeg, 360 - sweepDeg);
            for (double at = 0; at < 360; at += 7.5) {
                double dx = 4 * Arc.sinDeg(at);
                double dy = 4 * Arc.sinDeg(at + 90);
                assertThat(one.holds(dx, dy)).as(one + " at " + at).isNotEqualTo(other.holds(dx, dy));
            }
        }
    }

    @Test
    void turningNarrowingAndChokingKeepWhatTheyShould() {
        HeadPattern p = pattern(Named.CONE, 350, 90);
        assertThat(p.turnedBy(20).arc().startDeg()).isCloseTo(10, within(1e-9));
        assertThat(p.turnedBy(-360).arc()).isEqualTo(p.arc());
        assertThat(p.narrowedTo(45).scaleMmH()).isCloseTo(2 * p.scaleMmH(), within(1e-9));
        assertThat(p.narrowedTo(45).arc().startDeg()).isEqualTo(350);
        assertThat(p.withOutput(0.5).rateMmH(3.5, 5)).isCloseTo(p.rateMmH(3.5, 5) / 2, within(1e-12));
        assertThat(p.withOutput(0).rateMmH(3.5, 5)).isZero();
        assertThat(p.movedTo(new Point(0, 0)).rateMmH(0.5, 1)).isEqualTo(p.rateMmH(3.5, 5));
        assertThatThrownBy(() -> p.withOutput(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> p.narrowedTo(0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Head head(OptionalDouble radiusM, double sweepDeg, OptionalDouble flowLpm) {
        return new Head(
                "f1", "h1", "1", Optional.empty(), radiusM, 0, sweepDeg, flowLpm, Named.CONE, 0, MIDDLE, Extras.NONE);
    }

    private static List<String> problems(double radiusM, double sweepDeg, double flowLpm) {
        HeadPattern.Read read = HeadPattern.of(
                head(OptionalDouble.of(radiusM), sweepDeg, OptionalDouble.of(flowLpm)), Where.feature(3));
        assertThat(read.pattern().isPresent()).isEqualTo(read.problems().isEmpty());
        assertThat(read.problems())
                .allMatch(Problem::isError)
                .allMatch(p -> p.where().equals(Where.feature(3)));
        return read.problems().stream().map(Problem::message).toList();
    }

    @Test
    void aHeadThatCannotBeIsLeftOutWithEveryReason() {
        assertThat(problems(5, 90, 2)).isEmpty();
        assertThat(problems(5, 90, -2))
                .containsExactly("head h1 is left out of the water; its flow is -2.0: correct “flowLpm” to above 0");
        assertThat(problems(0, 90, 0)).hasSize(2);
        assertThat(problems(Double.NaN, 90, Double.POSITIVE_INFINITY)).hasSize(2);
        assertThat(problems(5, 0, 2)).singleElement().asString().contains("its arc of 0.0° is none");
        assertThat(problems(5, 720, 2)).singleElement().asString().contains("720.0°");
        assertThat(problems(5, Double.NaN, 2)).hasSize(1);
        HeadPattern.Read bare =
                HeadPattern.of(head(OptionalDouble.empty(), 90, OptionalDouble.empty()), Where.feature(0));
        assertThat(bare.problems())
                .extracting(Problem::message)
                .anyMatch(m -> m.contains("its radius of throw is not known"))
                .anyMatch(m -> m.contains("its flow is not known"));
    }
}
