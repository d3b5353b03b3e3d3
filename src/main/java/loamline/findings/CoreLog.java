package loamline.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.PlannedCore;

/**
 * A log beside the plan it was made for.
 *
 * @param visit the newest visit
 * @param cores every core and spare of which that visit speaks, in the plan's order
 * @param bags in the plan's order
 * @param earlier visits before it, the oldest first, with their cores
 */
public record CoreLog(Visit visit, List<LoggedCore> cores, List<BagBalance> bags, List<Earlier> earlier) {
    /** A core that stands farther from its place in the plan is another core, m: GPS of a phone is that good. */
    static final double SAME_PLACE_M = 5;

    public CoreLog {
        cores = List.copyOf(cores);
        bags = List.copyOf(bags);
        earlier = List.copyOf(earlier);
    }

    /** A visit before the newest. */
    public record Earlier(Visit visit, List<LoggedCore> cores) {
        public Earlier {
            cores = List.copyOf(cores);
        }
    }

    /**
     * What came of it.
     *
     * @param log empty if the log does not belong to the plan; the problems say why
     */
    public record Answer(Optional<CoreLog> log, List<Problem> problems) {
        public Answer {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Sets rows beside a plan. A row for a core that the plan does not have, or has elsewhere, is left out and reported;
     * if that is so for half of them or more, the whole log is refused: it is another yard's, or another plan's.
     */
    public static Answer of(CorePlan plan, List<LogRow> rows) {
        Map<String, PlannedCore> planned = new LinkedHashMap<>();
        plan.cores().forEach(core -> planned.put(key(core.id()), core));
        List<Problem> problems = new ArrayList<>();
        List<LogRow> sound = new ArrayList<>();
        for (LogRow row : rows) {
            Optional<Problem> doubt = doubt(row, planned);
            doubt.ifPresentOrElse(problems::add, () -> sound.add(row));
        }
        if (rows.isEmpty() || 2 * sound.size() <= rows.size()) {
            problems.add(Problem.error("LOG_OTHER_YARD", Where.WHOLE, otherYard(rows.size(), sound.size(), plan)));
            return new Answer(Optional.empty(), problems);
        }
        List<Visit> visits = Visit.of(sound);
        Visit newest = visits.get(visits.size() - 1);
        List<LoggedCore> cores = cores(newest, planned);
        List<BagBalance> bags = bags(plan, cores);
        bags.forEach(bag -> problems.addAll(BagDoubts.of(bag)));
        List<Earlier> earlier = visits.subList(0, visits.size() - 1).stream()
                .map(visit -> new Earlier(visit, cores(visit, planned)))
                .toList();
        return new Answer(Optional.of(new CoreLog(newest, cores, bags, earlier)), problems);
    }

    private static Optional<Problem> doubt(LogRow row, Map<String, PlannedCore> planned) {
        Where where = row.line().isPresent() ? Where.line(row.line().getAsInt()) : Where.WHOLE;
        PlannedCore core = planned.get(key(row.core()));
        if (core == null) {
            return Optional.of(Problem.error(
                    "LOG_CORE_UNKNOWN", where, "there is no core “" + row.core() + "” in the plan: correct its id"));
        }
        return row.at()
                .map(at -> at.distanceTo(core.at()))
                .filter(off -> off > SAME_PLACE_M)
                .map(off -> Problem.error(
                        "LOG_CORE_ELSEWHERE",
                        where,
                        String.format(
                                Locale.ROOT,
                                "%s stood %.1f m from where the plan has it: the row belongs to another plan",
                                row.core(),
                                off)));
    }

    private static String otherYard(int rows, int sound, CorePlan plan) {
        String known = plan.mainCores().stream().map(PlannedCore::id).limit(3).collect(Collectors.joining(", "));
        if (rows == 0) {
            return "holds no row: add a line for each core";
        }
        return "only " + sound + " of " + rows + " rows fit the cores of this yard"
                + (known.isEmpty() ? ", which has none" : ", which begin " + known)
                + ": choose the log of this yard, or the plan the cores were taken by";
    }

    /** Ids are compared without case and blanks. */
    private static String key(String id) {
        return id.strip().toUpperCase(Locale.ROOT);
    }

    private static List<LoggedCore> cores(Visit visit, Map<String, PlannedCore> planned) {
        Map<String, List<LogRow>> byCore = visit.rows().stream().collect(Collectors.groupingBy(row -> key(row.core())));
        return planned.entrySet().stream()
                .filter(core -> byCore.containsKey(core.getKey()))
                .map(core -> LoggedCore.of(core.getValue(), byCore.getOrDefault(core.getKey(), List.of())))
                .toList();
    }

    private static List<BagBalance> bags(CorePlan plan, List<LoggedCore> cores) {
        Map<String, LoggedCore> logged = cores.stream().collect(Collectors.toMap(LoggedCore::id, core -> core));
        return plan.composites().stream()
                .map(bag -> BagBalance.of(
                        bag.name(),
                        plan.cores().stream()
                                .filter(core -> core.composite().equals(bag.name()))
                                .toList(),
                        logged))
                .toList();
    }

    /** How many of the plan's cores, spares not counted, the newest visit speaks of. */
    public int logged() {
        return (int)
                cores.stream().filter(core -> core.core().spareOf().isEmpty()).count();
    }
}
