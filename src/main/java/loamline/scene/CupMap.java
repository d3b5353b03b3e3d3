package loamline.scene;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.geometry.Point;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.cups.Verdict;
import loamline.yard.Head;
import loamline.yard.Yard;

/**
 * What a cup test adds to the map of a yard.
 *
 * @param valve whose throws are shown
 * @param cups where cups stand
 * @param heads heads that somebody should look at
 */
public record CupMap(String valve, List<Cup> cups, List<Suspect> heads) {
    public CupMap {
        cups = List.copyOf(cups);
        heads = List.copyOf(heads);
    }

    /** A test that is to be made: its cups by number. */
    public static CupMap of(CupPlan plan) {
        List<Cup> cups = IntStream.range(0, plan.cups().size())
                .mapToObj(i -> new Cup(Integer.toString(i + 1), "", plan.cups().get(i), false))
                .toList();
        return new CupMap(plan.valve(), cups, List.of());
    }

    /** A test that was made: its cups with their catch in ml, and the heads at fault. */
    public static CupMap of(Yard yard, CupTest test) {
        Set<String> telling = test.findings().faults().stream()
                .flatMap(head -> head.cups().stream())
                .collect(Collectors.toSet());
        List<Cup> cups = test.cups().stream()
                .map(cup -> new Cup(cup.name(), reading(cup.ml()), cup.at(), telling.contains(cup.name())))
                .toList();
        List<Suspect> suspects = test.findings().faults().stream()
                .flatMap(fault -> yard.all(Head.class)
                        .filter(head ->
                                head.valve().equals(test.valve()) && head.id().equals(fault.head()))
                        .limit(1)
                        .map(head -> new Suspect(head.at(), words(fault))))
                .toList();
        return new CupMap(test.valve(), cups, suspects);
    }

    private static String reading(double ml) {
        return String.format(Locale.ROOT, ml < 10 && ml > 0 ? "%.1f" : "%.0f", ml);
    }

    /** A head and its verdict, in a few words. */
    public static String words(HeadFinding head) {
        if (head.verdict() == Verdict.TURNED) {
            return head.turnedDeg().isPresent()
                    ? String.format(
                            Locale.ROOT,
                            "%s turned %.0f°",
                            head.head(),
                            head.turnedDeg().getAsDouble())
                    : head.head() + " arc short";
        }
        return String.format(
                Locale.ROOT, "%s %s, %.0f %%", head.head(), head.verdict().word(), 100 * head.factor());
    }

    /**
     * A cup.
     *
     * @param name stands in its sign
     * @param reading stands under it; may be empty
     * @param telling whether it speaks against a head
     */
    public record Cup(String name, String reading, Point at, boolean telling) {}

    /** A head and what is wrong with it, in a word or two. */
    public record Suspect(Point at, String words) {}
}
