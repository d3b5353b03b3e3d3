package loamline.water.cups;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.water.HeadPattern;
import loamline.water.Uniformity;

/** What a reader of a cup test should know about its readings. */
final class CupDoubts {
    /** A lowest quarter needs at least so many. */
    static final int LEAST_CUPS = 4;

    /** Cups for a test: University of Maryland, irrigation course 969638, unit 4.3 (20 to 24, more are better). */
    static final int ENOUGH_CUPS = 20;

    /**
     * A mean catch that can be read well, ml: from memory of the Irrigation Association, Recommended Audit Guidelines,
     * 2009.
     */
    static final double READABLE_ML = 25;

    /** Two cups nearer to each other than this stand in one place, m. */
    private static final double SAME_PLACE_M = 0.05;

    private final List<Cup> cups;
    private final Map<String, HeadPattern> heads;
    private final List<Problem> problems = new ArrayList<>();

    private CupDoubts(List<Cup> cups, Map<String, HeadPattern> heads) {
        this.cups = cups;
        this.heads = heads;
    }

    static List<Problem> of(List<Cup> cups, Map<String, HeadPattern> heads, HeadFindings findings) {
        CupDoubts doubts = new CupDoubts(cups, heads);
        doubts.count();
        doubts.twice();
        doubts.catches();
        doubts.places();
        doubts.odd(findings);
        doubts.few(findings);
        return List.copyOf(doubts.problems);
    }

    private void count() {
        int n = cups.size();
        if (n < LEAST_CUPS) {
            problems.add(Problem.error(
                    "CUPS_TOO_FEW",
                    Where.WHOLE,
                    (n == 0 ? "no cup" : n == 1 ? "only 1 cup" : "only " + n + " cups")
                            + " can be used: uniformity needs at least " + LEAST_CUPS
                            + ", and a test 20 to 24 or more"));
        } else if (n < ENOUGH_CUPS) {
            problems.add(Problem.warning(
                    "CUPS_FEW",
                    Where.WHOLE,
                    n + " cups are few: the numbers may be far off; a test takes 20 to 24 or more"));
        }
        if (n >= LEAST_CUPS && n % 4 != 0) {
            problems.add(Problem.info(
                    "CUPS_NOT_BY_FOUR", Where.WHOLE, n + " cups do not part into quarters; " + Uniformity.RULE));
        }
    }

    private void twice() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < cups.size(); i++) {
            Cup cup = cups.get(i);
            if (!names.add(cup.name())) {
                warn(
                        cup,
                        "CUP_NAME_TWICE",
                        "there is another cup " + cup.name() + "; both count: give each its own name");
            }
            for (int j = 0; j < i; j++) {
                if (cups.get(j).at().distanceTo(cup.at()) < SAME_PLACE_M) {
                    warn(
                            cup,
                            "CUP_PLACE_TWICE",
                            "cup " + cup.name() + " stands where cup "
                                    + cups.get(j).name() + " stands; both count: correct one of the places");
                }
            }
        }
    }

    private void warn(Cup cup, String code, String message) {
        problems.add(Problem.warning(
                code, cup.line().isPresent() ? Where.line(cup.line().getAsInt()) : Where.WHOLE, message));
    }

    private void catches() {
        double meanMl = cups.stream().mapToDouble(Cup::ml).average().orElse(0);
        if (!cups.isEmpty() && meanMl == 0) {
            problems.add(Problem.error(
                    "CUPS_ALL_DRY",
                    Where.WHOLE,
                    "every cup is dry: see whether the valve ran, and whether these are its cups"));
        } else if (meanMl > 0 && meanMl < READABLE_ML) {
            double longest = cups.stream().mapToDouble(Cup::minutes).max().orElse(0);
            problems.add(Problem.warning(
                    "CUPS_LITTLE_CATCH",
                    Where.WHOLE,
                    String.format(
                            Locale.ROOT,
                            "the mean catch of %.1f ml is hard to read: run the valve about %.0f minutes for %.0f ml",
                            meanMl,
                            Math.ceil(longest * READABLE_ML / meanMl),
                            READABLE_ML)));
        }
    }

    /** Cups that no head could reach, however it were turned, nor lie in a hole between heads. */
    private void places() {
        List<Cup> outside = cups.stream().filter(this::isOutside).toList();
        if (heads.isEmpty() || outside.isEmpty()) {
            return;
        }
        if (outside.size() == cups.size()) {
            problems.add(Problem.error(
                    "CUPS_ELSEWHERE",
                    Where.WHOLE,
                    "no cup stands in the throw of this valve: check the valve, and that x_m and y_m are metres of this"
                            + " yard"));
            return;
        }
        outside.forEach(cup -> warn(
                cup,
                "CUP_OUT_OF_THROW",
                String.format(
                        Locale.ROOT,
                        "cup %s stands %.1f m beyond what this valve reaches; it counts: correct its place, or take it"
                                + " out if it belongs to another valve",
                        cup.name(),
                        beyondM(cup))));
    }

    private boolean isOutside(Cup cup) {
        return heads.values().stream()
                .allMatch(head -> head.at().distanceTo(cup.at()) > CupPlanner.BEYOND * head.radiusM());
    }

    private double beyondM(Cup cup) {
        return heads.values().stream()
                .mapToDouble(head -> head.at().distanceTo(cup.at()) - head.radiusM())
                .min()
                .orElse(0);
    }

    private void odd(HeadFindings findings) {
        IntStream.range(0, findings.misfits().size())
                .filter(i -> Math.abs(findings.misfits().get(i)) > HeadFindings.ODD)
                .forEach(i -> warn(
                        cups.get(i),
                        "CUP_ODD",
                        String.format(
                                Locale.ROOT,
                                "cup %s with %.1f ml caught much %s than heads and other cups let expect; it counts: see"
                                        + " whether it stood straight, away from drips and splash",
                                cups.get(i).name(),
                                cups.get(i).ml(),
                                findings.misfits().get(i) > 0 ? "more" : "less")));
    }

    private void few(HeadFindings findings) {
        String few = findings.heads().stream()
                .filter(head -> head.reachedCups() < HeadFindings.LEAST_CUPS_A_HEAD)
                .map(head -> head.head() + " (" + head.reachedCups() + ")")
                .collect(Collectors.joining(", "));
        if (!few.isEmpty()) {
            problems.add(Problem.warning(
                    "HEAD_FEW_CUPS",
                    Where.WHOLE,
                    "fewer than " + HeadFindings.LEAST_CUPS_A_HEAD + " cups stand in the throw of " + few
                            + ": too few to judge; set more there"));
        }
    }
}
