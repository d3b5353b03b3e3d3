package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import loamline.water.HeadPattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the right head is named on made-up valves: {@link SimulatedValve}, 10 % noise, one head at 40 % or turned
 * by 30°, or nothing wrong. The aims are our own.
 */
class FaultFindingTest {
    private static final double NOISE = 0.10;
    private static final double FIRST_WEAK = 0.97;
    private static final double FIRST_TURNED = 0.92;
    private static final double FALSE_ALARMS = 0.05;

    /** What came of many valves. */
    private record Tally(int valves, int first, int named, int verdict, int held, int otherNamed) {
        double share(int count) {
            return count / (double) valves;
        }
    }

    private enum Case {
        SOUND(null) {
            @Override
            UnaryOperator<HeadPattern> what(SimulatedValve valve) {
                return head -> head;
            }
        },
        WEAK(Verdict.WEAK) {
            @Override
            UnaryOperator<HeadPattern> what(SimulatedValve valve) {
                return head -> head.withOutput(0.4);
            }
        },
        TURNED(Verdict.TURNED) {
            @Override
            UnaryOperator<HeadPattern> what(SimulatedValve valve) {
                double deg = valve.turnDeg();
                return head -> head.turnedBy(deg);
            }
        };

        private final Verdict verdict;

        Case(Verdict verdict) {
            this.verdict = verdict;
        }

        abstract UnaryOperator<HeadPattern> what(SimulatedValve valve);

        Tally run(long seed, int valves, double noise, double spread) {
            SplittableRandom random = new SplittableRandom(seed + 31L * ordinal());
            int first = 0;
            int named = 0;
            int right = 0;
            int held = 0;
            int other = 0;
            for (int i = 0; i < valves; i++) {
                SimulatedValve valve = new SimulatedValve(random);
                int bad = valve.drawn(this == TURNED);
                List<Cup> cups = valve.readings(bad, what(valve), noise, spread);
                List<HeadFinding> heads = HeadFindings.of(valve.mapped(), cups).heads();
                String id = "h" + (bad + 1);
                HeadFinding badHead = heads.stream()
                        .filter(h -> h.head().equals(id))
                        .findFirst()
                        .orElseThrow();
                first += heads.get(0).head().equals(id) ? 1 : 0;
                named += heads.stream().anyMatch(h -> h.verdict().isFault()) ? 1 : 0;
                right += badHead.verdict() == verdict ? 1 : 0;
                double truth = this == WEAK ? 0.4 : 1;
                held += badHead.low() <= truth && truth <= badHead.high() ? 1 : 0;
                other += heads.stream()
                                .anyMatch(
                                        h -> h.verdict().isFault() && !h.head().equals(id))
                        ? 1
                        : 0;
            }
            return new Tally(valves, first, named, right, held, other);
        }
    }

    private static String line(String what, Tally tally) {
        return String.format(
                Locale.ROOT,
                "%-22s %5d %8.1f %8.1f %8.1f %8.1f %8.1f%n",
                what,
                tally.valves,
                100 * tally.share(tally.first),
                100 * tally.share(tally.named),
                100 * tally.share(tally.verdict),
                100 * tally.share(tally.held),
                100 * tally.share(tally.otherNamed));
    }

    private static final String HEAD = String.format(
            "%-22s %5s %8s %8s %8s %8s %8s%n", "per cent of valves", "n", "first", "alarm", "verdict", "ci95", "other");

    @Test
    void namesTheHeadAtFaultFirstOnFiveHundredValves() {
        Tally sound = Case.SOUND.run(2027, 500, NOISE, 0);
        Tally weak = Case.WEAK.run(2027, 500, NOISE, 0);
        Tally turned = Case.TURNED.run(2027, 500, NOISE, 0);
        System.out.print(HEAD
                + line("nothing wrong", sound)
                + line("one head at 40 %", weak)
                + line("one head turned 30°", turned));
        assertThat(weak.share(weak.first)).isGreaterThanOrEqualTo(FIRST_WEAK);
        assertThat(turned.share(turned.first)).isGreaterThanOrEqualTo(FIRST_TURNED);
        assertThat(sound.share(sound.named)).isLessThanOrEqualTo(FALSE_ALARMS);
    }

    @Tag("slow")
    @Test
    void doesSoOnOtherSeedsToo() {
        System.out.print(HEAD);
        for (long seed = 1; seed <= 10; seed++) {
            for (Case each : Case.values()) {
                System.out.print(line(each + " seed " + seed, each.run(1_000_003 * seed, 500, NOISE, 0)));
            }
        }
        for (Case each : Case.values()) {
            System.out.print(line(each + " heads ±7 %", each.run(5, 500, NOISE, 0.07)));
            System.out.print(line(each + " noise 20 %", each.run(6, 500, 0.2, 0)));
        }
    }
}
