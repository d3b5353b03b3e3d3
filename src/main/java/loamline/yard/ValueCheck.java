package loamline.yard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Polyline;

/** Values of single features that cannot be or do not fit together. */
final class ValueCheck {
    /** A gate may stand past the end of its fence by what a hand-drawn fence is off, m. */
    static final double GATE_SLACK_M = 0.1;

    private final Set<String> headIds = new HashSet<>();

    /** What is wrong with one feature's values; features are given in their order. */
    List<Problem> check(int index, Feature feature) {
        List<Problem> problems = new ArrayList<>(Limit.broken(index, feature));
        feature.shape().ifPresent(shape -> {
            if (shape instanceof Polyline line && !(feature instanceof KeepAway) && line.lengthM() == 0) {
                problems.add(Problem.error(
                        "LINE_TOO_SHORT",
                        Where.feature(index),
                        CheckWords.name(feature) + " has no length: draw it through two different points"));
            }
        });
        if (feature instanceof Barrier barrier && barrier.line().lengthM() > 0) {
            barrier.gates().forEach(gate -> problems.addAll(gate(index, barrier, gate)));
        }
        if (feature instanceof Tree tree
                && tree.baseM().orElse(0) > tree.heightM().orElse(Double.POSITIVE_INFINITY)) {
            problems.add(Problem.warning(
                    "TREE_BASE_ABOVE_TOP",
                    Where.feature(index),
                    "the crown of this tree begins above its top: correct “baseM” or “heightM”"));
        }
        if (feature instanceof Head head && !head.id().isBlank() && !headIds.add(head.id())) {
            problems.add(Problem.warning(
                    "HEAD_ID_TWICE",
                    Where.feature(index),
                    "another head is called “" + head.id() + "” too: results cannot tell them apart, so rename one"));
        }
        return problems;
    }

    private static List<Problem> gate(int index, Barrier barrier, Barrier.Opening gate) {
        double lengthM = barrier.line().lengthM();
        if (!(gate.widthM() > 0)) {
            return List.of(Problem.error(
                    "GATE_WIDTH",
                    Where.feature(index),
                    which(barrier, gate) + " has no width and stays shut: give its width"));
        }
        double pastM = Math.max(-gate.atM(), gate.atM() - lengthM);
        if (pastM > GATE_SLACK_M) {
            return List.of(Problem.error(
                    "GATE_BEYOND_FENCE",
                    Where.feature(index),
                    which(barrier, gate) + " lies off its line, which is " + CheckWords.length(lengthM)
                            + " long; nobody can pass: move it"));
        }
        if (pastM + gate.widthM() / 2 > GATE_SLACK_M) {
            return List.of(Problem.warning(
                    "GATE_BEYOND_FENCE",
                    Where.feature(index),
                    which(barrier, gate)
                            + " reaches past the end of its line; only the part on the line is open: move it"));
        }
        return List.of();
    }

    private static String which(Barrier barrier, Barrier.Opening gate) {
        return "the gate at " + CheckWords.length(gate.atM()) + " of this "
                + barrier.barrier().word();
    }
}
