package loamline.sampling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Source;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.sampling.CorePlan.Merge;

/**
 * Which zones share a composite.
 *
 * <p>Zones that their owner bound to one bag start together. Then, while there are more groups than kits, the
 * two that are least unlike are joined (Ward's criterion, weighted by area); among equals, the two that lie
 * nearest to each other. Groups bound to different bags are never joined.
 *
 * @param groups names of the zones by bag, in order of their first zone
 * @param merges the joins in order, each with its cost
 * @param problems where the budget could not be kept
 */
record Grouping(List<Bag> groups, List<Merge> merges, List<Problem> problems) {
    /** Kits where nobody named a number and no zone is bound to a bag. */
    static final int USUAL_KITS = 2;

    static final Source WARD = new Source(
            "ward-1963", "Ward 1963, Hierarchical grouping to optimize an objective function, JASA 58:236-244");

    /** Zones that share a bag. */
    record Bag(Optional<String> bound, List<String> zones) {}

    static Grouping of(List<ZoneTraits> zones, OptionalInt kits) {
        Work work = new Work(zones);
        long bags = zones.stream().flatMap(z -> z.bag().stream()).distinct().count();
        int target = kits.orElse((int) Math.max(bags, USUAL_KITS));
        List<Merge> merges = new ArrayList<>();
        while (work.groups.size() > target) {
            Optional<Merge> merge = work.mergeTheLeastUnlike();
            if (merge.isEmpty()) {
                break;
            }
            merges.add(merge.get());
        }
        List<Problem> problems = work.groups.size() <= target
                ? List.of()
                : List.of(Problem.warning(
                        "KITS_TOO_FEW",
                        Where.WHOLE,
                        "The zones are bound to " + work.groups.size() + " bags, more than the " + target
                                + " kits allowed; all bags are planned. Free a zone of its bag or send more samples."));
        return new Grouping(
                work.groups.stream()
                        .map(group -> new Bag(
                                group.bound,
                                group.members.stream()
                                        .map(i -> zones.get(i).name())
                                        .toList()))
                        .toList(),
                merges,
                problems);
    }

    private static final class Group {
        final List<Integer> members;
        final Optional<String> bound;

        Group(List<Integer> members, Optional<String> bound) {
            this.members = members;
            this.bound = bound;
        }
    }

    /** A pair of groups and what joining them would lose. */
    private record Pair(Group a, Group b, double cost, double apartM) {}

    private static final class Work {
        private final List<ZoneTraits> zones;
        private final TraitTable table;
        private final double totalM2;
        private final List<Group> groups = new ArrayList<>();

        Work(List<ZoneTraits> zones) {
            this.zones = zones;
            this.table = TraitTable.of(zones);
            this.totalM2 = zones.stream().mapToDouble(ZoneTraits::areaM2).sum();
            Map<String, List<Integer>> start = new LinkedHashMap<>();
            for (int i = 0; i < zones.size(); i++) {
                int zone = i;
                String key = zones.get(i).bag().map(bag -> "bag " + bag).orElse("zone " + zone);
                start.computeIfAbsent(key, k -> new ArrayList<>()).add(zone);
            }
            start.values()
                    .forEach(members -> groups.add(
                            new Group(members, zones.get(members.get(0)).bag())));
        }

        Optional<Merge> mergeTheLeastUnlike() {
            List<Pair> pairs = new ArrayList<>();
            for (int i = 0; i < groups.size(); i++) {
                for (int j = i + 1; j < groups.size(); j++) {
                    Group a = groups.get(i);
                    Group b = groups.get(j);
                    if (a.bound.isEmpty() || b.bound.isEmpty()) {
                        pairs.add(new Pair(a, b, cost(a, b), centre(a).distanceTo(centre(b))));
                    }
                }
            }
            return pairs.stream()
                    .min(Comparator.comparingDouble((Pair p) -> Math.rint(p.cost() * 1e9))
                            .thenComparingDouble(Pair::apartM))
                    .map(this::join);
        }

        private Merge join(Pair pair) {
            Merge merge = new Merge(names(pair.a), names(pair.b), pair.cost, why(pair));
            List<Integer> members = new ArrayList<>(pair.a.members);
            members.addAll(pair.b.members);
            members.sort(Comparator.naturalOrder());
            groups.set(groups.indexOf(pair.a), new Group(members, pair.a.bound.or(() -> pair.b.bound)));
            groups.remove(pair.b);
            return merge;
        }

        /** Ward's loss as a share of all differences: wA wB / (wA + wB) · |cA − cB|² / (traits · W). */
        private double cost(Group a, Group b) {
            double sum = 0;
            for (int trait = 0; trait < table.traits().size(); trait++) {
                sum += table.squaredDistance(trait, shares(a), shares(b));
            }
            double wa = areaM2(a);
            double wb = areaM2(b);
            return sum == 0 ? 0 : wa * wb / (wa + wb) * sum / (table.traits().size() * totalM2);
        }

        private String why(Pair pair) {
            int most = -1;
            double far = 0;
            for (int trait = 0; trait < table.traits().size(); trait++) {
                double d = table.squaredDistance(trait, shares(pair.a), shares(pair.b));
                if (d > far) {
                    most = trait;
                    far = d;
                }
            }
            if (most < 0) {
                return "Nothing on record tells them apart; they lie nearest to each other.";
            }
            return "They differ most in " + table.traits().get(most) + " (" + said(pair.a, most) + " against "
                    + said(pair.b, most) + ").";
        }

        private String said(Group group, int trait) {
            String words = group.members.stream()
                    .map(i -> table.words().get(trait)[i])
                    .filter(word -> !word.isEmpty())
                    .distinct()
                    .collect(Collectors.joining(", "));
            return words.isEmpty() ? "not known" : words;
        }

        private double[] shares(Group group) {
            double[] shares = new double[zones.size()];
            double areaM2 = areaM2(group);
            group.members.forEach(i -> shares[i] = zones.get(i).areaM2() / areaM2);
            return shares;
        }

        private double areaM2(Group group) {
            return group.members.stream()
                    .mapToDouble(i -> zones.get(i).areaM2())
                    .sum();
        }

        private Point centre(Group group) {
            double[] shares = shares(group);
            double x = 0;
            double y = 0;
            for (int i : group.members) {
                x += shares[i] * zones.get(i).centre().x();
                y += shares[i] * zones.get(i).centre().y();
            }
            return new Point(x, y);
        }

        private List<String> names(Group group) {
            return group.members.stream().map(i -> zones.get(i).name()).toList();
        }
    }
}
