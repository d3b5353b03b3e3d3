package loamline.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.account.Where;

/** Problems while they are being met, in order. What is likely to repeat is told once, with a count. */
final class ProblemLog {
    /** Nobody reads on after this many, and a hostile file could fill the memory with them. */
    static final int MAX_LISTED = 10_000;

    private final List<Problem> listed = new ArrayList<>();
    private final Map<String, Repeated> repeated = new LinkedHashMap<>();
    private int unlisted;
    private Severity worstUnlisted = Severity.INFO;

    private static final class Repeated {
        private final Problem first;
        private int count;

        private Repeated(Problem first) {
            this.first = first;
        }

        private Problem told() {
            return count == 1
                    ? first
                    : new Problem(
                            first.severity(),
                            first.code(),
                            first.where(),
                            first.message() + " (" + count + " times; this is the first)");
        }
    }

    void error(String code, String pointer, String message) {
        add(Problem.error(code, Where.pointer(pointer), message));
    }

    void warning(String code, String pointer, String message) {
        add(Problem.warning(code, Where.pointer(pointer), message));
    }

    void info(String code, String pointer, String message) {
        add(Problem.info(code, Where.pointer(pointer), message));
    }

    /** Tells an info once for each code and subject, at the first place, with the number of places. */
    void infoOnce(String code, String subject, String pointer, String message) {
        String key = code + " " + subject;
        if (repeated.size() < MAX_LISTED || repeated.containsKey(key)) {
            repeated.computeIfAbsent(key, k -> new Repeated(Problem.info(code, Where.pointer(pointer), message)))
                    .count++;
        } else {
            unlisted++;
        }
    }

    void add(Problem problem) {
        if (listed.size() < MAX_LISTED) {
            listed.add(problem);
            return;
        }
        unlisted++;
        if (problem.severity().compareTo(worstUnlisted) > 0) {
            worstUnlisted = problem.severity();
        }
    }

    /** Everything so far; past {@link #MAX_LISTED} one last problem says how many more there are, and how bad. */
    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(listed);
        repeated.values().forEach(r -> all.add(r.told()));
        if (unlisted > 0) {
            all.add(new Problem(
                    worstUnlisted,
                    "MORE_PROBLEMS",
                    Where.WHOLE,
                    unlisted + " more are not listed; mend these first, then check again"));
        }
        return List.copyOf(all);
    }
}
