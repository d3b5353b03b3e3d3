package loamline.yard;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import org.junit.jupiter.api.Test;

class RepairsTest {
    private static final double EXACT_M2 = 1e-9;

    /** Mends the first problem of a code, which must be there and be gone afterwards. */
    private static Yard mended(String code, Yard yard) {
        Problem problem = YardCheck.of(yard).stream()
                .filter(p -> p.code().equals(code))
                .findFirst()
                .orElseThrow();
        Yard after = Repairs.of(problem, yard).orElseThrow().after();
        assertThat(YardCheck.of(after)).extracting(Problem::code).doesNotContain(code);
        return after;
    }

    private static double turfM2(Yard yard) {
        return Zones.of(yard).stream().mapToDouble(Zone::netAreaM2).sum();
    }

    @Test
    void anOutlineThatCrossesItselfBecomesTheGroundThatIsCounted() {
        Yard bowTie = yard(turf("front", 0, 0, 2, 2, 2, 0, 0, 2));
        Yard after = mended("OUTLINE_SELF_CROSSING", bowTie);
        assertThat(turfM2(after)).isCloseTo(turfM2(bowTie), within(EXACT_M2));
        assertThat(turfM2(after)).isCloseTo(2, within(EXACT_M2));
    }

    @Test
    void aPointGivenTwiceIsGivenOnce() {
        Yard twice = yard(turf("front", 0, 0, 4, 0, 4, 0, 4, 4, 0, 4));
        Turf after = mended("OUTLINE_POINT_REPEATED", twice)
                .all(Turf.class)
                .findFirst()
                .orElseThrow();
        assertThat(after.outline().vertices()).hasSize(4);
    }

    @Test
    void anOutlineThatEnclosesNothingIsTakenOut() {
        Yard line = yard(turf("front", box(0, 0, 5, 5)), turf("side", 0, 0, 1, 1));
        assertThat(mended("OUTLINE_TOO_FEW_POINTS", line).all(Turf.class)).hasSize(1);
    }

    @Test
    void overlappingTurfIsCutFromTheZoneListedLater() {
        Yard overlap = yard(turf("front", box(0, 0, 10, 10)), turf("side", box(8, 0, 20, 10)));
        Yard after = mended("ZONES_OVERLAP", overlap);
        assertThat(Zones.of(after)).extracting(Zone::grossM2).containsExactly(100.0, 100.0);
        assertThat(Zones.of(overlap)).extracting(Zone::grossM2).containsExactly(100.0, 100.0);
    }

    @Test
    void anOutlineDrawnLaterKeepsWhatCountsToItsZone() {
        Yard overlap = yard(
                turf("front", box(100, 0, 110, 10)), turf("side", box(0, 0, 10, 10)), turf("front", box(8, 0, 20, 10)));
        Yard after = mended("ZONES_OVERLAP", overlap);
        assertThat(Zones.of(overlap)).extracting(Zone::grossM2).containsExactly(220.0, 80.0);
        assertThat(Zones.of(after)).extracting(Zone::grossM2).containsExactly(220.0, 80.0);
    }

    @Test
    void turfThatIsCoveredWholeIsLeftToAPerson() {
        Yard covered = yard(turf("front", box(0, 0, 10, 10)), turf("side", box(2, 2, 5, 5)));
        Problem problem = YardCheck.of(covered).stream()
                .filter(p -> p.code().equals("ZONES_OVERLAP"))
                .findFirst()
                .orElseThrow();
        assertThat(Repairs.of(problem, covered)).isEmpty();
    }

    @Test
    void aGateBeyondItsFenceIsMovedOntoIt() {
        Polyline line = new Polyline(List.of(new Point(0, 0), new Point(10, 0)));
        Barrier fence = new Barrier("f", Kind.FENCE, 1.8, List.of(new Barrier.Opening(12, 2)), true, line, Extras.NONE);
        Yard after = mended("GATE_BEYOND_FENCE", yard(turf("front", box(0, 0, 9, 9)), fence));
        Barrier.Opening gate =
                after.all(Barrier.class).findFirst().orElseThrow().gates().get(0);
        assertThat(gate.atM()).isEqualTo(9);
        assertThat(gate.widthM()).isEqualTo(2);
    }

    @Test
    void aHeadThatSharesItsNameGetsAFreeOne() {
        Yard twins = yard(turf("front", box(0, 0, 9, 9)), head("a", "h1"), head("b", "h1"), head("c", "h2"));
        assertThat(mended("HEAD_ID_TWICE", twins).all(Head.class).map(Head::id)).containsExactly("h1", "h3", "h2");
    }

    @Test
    void whatOnlyAPersonKnowsIsNotMended() {
        Yard far = yard(turf("front", box(0, 0, 9, 9)), head("a", "h1").withShape(new Point(30, 30)));
        assertThat(YardCheck.of(far)).extracting(Problem::code).contains("HEAD_OFF_TURF");
        assertThat(YardCheck.of(far))
                .allSatisfy(p -> assertThat(Repairs.of(p, far)).isEmpty());
    }

    @Test
    void aProblemOfAFeatureThatIsGoneIsNotMended() {
        Problem old = Problem.warning("OUTLINE_SELF_CROSSING", Where.feature(7), "x");
        assertThat(Repairs.of(old, yard())).isEmpty();
        assertThat(Where.feature(7).featureIndex()).hasValue(7);
        assertThat(Where.WHOLE.featureIndex()).isEmpty();
        assertThat(Where.pointer("/features/7/name").featureIndex()).isEmpty();
    }

    private static Head head(String key, String id) {
        return new Head(
                key,
                id,
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                0,
                360,
                OptionalDouble.empty(),
                Head.DEFAULT_PROFILE,
                0,
                new Point(1, 1),
                Extras.NONE);
    }
}
