package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import loamline.water.HeadPattern;
import org.junit.jupiter.api.Test;

class HeadFindingsTest {
    /** Of a factor fitted to readings without noise: the natural spread draws a little. */
    private static final double FACTOR = 0.02;

    private static HeadFindings of(List<Cup> cups) {
        return HeadFindings.of(FourHeads.heads(), cups);
    }

    private static HeadFinding first(UnaryOperator<HeadPattern> what) {
        return of(FourHeads.readings(what)).heads().get(0);
    }

    @Test
    void nothingIsSaidAgainstHeadsThatGiveTheirShare() {
        HeadFindings findings = of(FourHeads.readings(head -> head));
        assertThat(findings.heads()).extracting(HeadFinding::verdict).containsOnly(Verdict.OK);
        assertThat(findings.heads())
                .allSatisfy(head -> assertThat(head.factor()).isCloseTo(1, within(FACTOR)));
        assertThat(findings.scale()).isCloseTo(1, within(1e-6));
    }

    @Test
    void lowPressureOnAllHeadsIsTheFaultOfNone() {
        HeadFindings findings = of(FourHeads.readings(head -> head.withOutput(0.6)));
        assertThat(findings.faults()).isEmpty();
        assertThat(findings.scale()).isCloseTo(0.6, within(1e-6));
    }

    @Test
    void aHeadThatGivesLessIsWeak() {
        HeadFinding weak = first(FourHeads.only("h3", head -> head.withOutput(0.4)));
        assertThat(weak.head()).isEqualTo("h3");
        assertThat(weak.verdict()).isEqualTo(Verdict.WEAK);
        assertThat(weak.factor()).isCloseTo(0.4, within(FACTOR));
        assertThat(weak.low()).isLessThan(0.4).isNotNegative();
        assertThat(weak.high()).isGreaterThan(0.4);
        assertThat(weak.sure()).isGreaterThan(0.99);
        assertThat(weak.cups()).contains("24").doesNotContain("1");
    }

    @Test
    void aDeadHeadGivesNothing() {
        HeadFinding dead = first(FourHeads.only("h1", head -> head.withOutput(0)));
        assertThat(dead.head()).isEqualTo("h1");
        assertThat(dead.factor()).isCloseTo(0, within(FACTOR));
        assertThat(dead.low()).isZero();
    }

    @Test
    void aHeadThatGivesMoreIsStrong() {
        HeadFinding strong = first(FourHeads.only("h2", head -> head.withOutput(1.7)));
        assertThat(strong.head()).isEqualTo("h2");
        assertThat(strong.verdict()).isEqualTo(Verdict.STRONG);
        assertThat(strong.factor()).isCloseTo(1.7, within(3 * FACTOR));
    }

    @Test
    void aTurnedHeadIsToldWithItsSide() {
        HeadFinding turned = first(FourHeads.only("h4", head -> head.turnedBy(-30)));
        assertThat(turned.head()).isEqualTo("h4");
        assertThat(turned.verdict()).isEqualTo(Verdict.TURNED);
        assertThat(turned.turnedDeg()).hasValueCloseTo(-30.0, within(10.0));
        assertThat(turned.words()).contains("anticlockwise");
    }

    @Test
    void anArcThatEndsShortIsToldAsTurnedFromTheMap() {
        HeadFinding part =
                first(FourHeads.only("h1", head -> head.narrowedTo(45).withOutput(0.5)));
        assertThat(part.head()).isEqualTo("h1");
        assertThat(part.verdict()).isEqualTo(Verdict.TURNED);
    }

    @Test
    void twoHeadsAtFaultAreBothNamed() {
        UnaryOperator<HeadPattern> both = FourHeads.only("h1", head -> head.withOutput(0.3));
        UnaryOperator<HeadPattern> other = FourHeads.only("h3", head -> head.withOutput(0.3));
        HeadFindings findings = of(FourHeads.readings(head -> other.apply(both.apply(head))));
        assertThat(findings.faults()).extracting(HeadFinding::head).containsExactlyInAnyOrder("h1", "h3");
        assertThat(findings.faults())
                .allSatisfy(head -> assertThat(head.factor()).isCloseTo(0.3, within(2 * FACTOR)));
    }

    @Test
    void aSingleCupThatWasFilledFromElsewhereNamesNobodyAndIsFlagged() {
        List<Cup> cups = new ArrayList<>(FourHeads.readings(head -> head));
        Cup cup = cups.get(7);
        cups.set(7, FourHeads.cup(7, cup.at(), 4 * cup.ml()));
        HeadFindings findings = of(cups);
        assertThat(findings.faults()).isEmpty();
        assertThat(findings.misfits().get(7)).isGreaterThan(HeadFindings.ODD);
    }

    @Test
    void aHeadWithTooFewCupsIsNotJudged() {
        List<Cup> south = FourHeads.readings(FourHeads.only("h1", head -> head.withOutput(0))).stream()
                .filter(cup -> cup.at().distanceTo(FourHeads.heads().get("h1").at()) > 9.6)
                .toList();
        HeadFinding h1 = of(south).heads().stream()
                .filter(head -> head.head().equals("h1"))
                .findFirst()
                .orElseThrow();
        assertThat(h1.reachedCups()).isLessThan(HeadFindings.LEAST_CUPS_A_HEAD);
        assertThat(h1.verdict()).isEqualTo(Verdict.UNSURE);
        assertThat(h1.words()).contains("too few");
    }

    @Test
    void aDryTestSaysNothingOfAnyHead() {
        assertThat(of(FourHeads.caught(0, 0, 0, 0, 0)).heads()).isEmpty();
        assertThat(of(List.of()).heads()).isEmpty();
    }
}
