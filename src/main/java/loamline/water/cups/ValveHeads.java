package loamline.water.cups;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.water.HeadPattern;
import loamline.yard.Head;
import loamline.yard.Yard;

/**
 * The heads of one valve.
 *
 * @param byId what each throws, in the order of the yard; a second head of the same id has {@code (2)} behind it
 * @param all how many heads the yard gives the valve, those that cannot be understood included
 * @param problems why some are left out, with their places in the yard
 */
record ValveHeads(Map<String, HeadPattern> byId, int all, List<Problem> problems) {
    static ValveHeads of(Yard yard, String valve) {
        Map<String, HeadPattern> byId = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        List<Head> heads =
                yard.all(Head.class).filter(head -> head.valve().equals(valve)).toList();
        for (Head head : heads) {
            HeadPattern.Read read = HeadPattern.of(head, Where.feature(yard.indexOf(head)));
            problems.addAll(read.problems());
            read.pattern().ifPresent(pattern -> byId.put(free(head.id(), byId), pattern));
        }
        return new ValveHeads(byId, heads.size(), problems);
    }

    private static String free(String id, Map<String, HeadPattern> taken) {
        String name = id;
        for (int i = 2; taken.containsKey(name); i++) {
            name = id + " (" + i + ")";
        }
        return name;
    }

    /** The valves of a yard, in the order in which their heads stand; heads without one belong to none. */
    static List<String> valves(Yard yard) {
        return yard.all(Head.class)
                .map(Head::valve)
                .filter(valve -> !valve.isBlank())
                .distinct()
                .toList();
    }
}
