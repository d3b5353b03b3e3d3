package loamline.findings;

import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.account.Where;

/** What keeps a bag from holding every stratum once, and what to do about it. */
final class BagDoubts {
    private BagDoubts() {}

    static List<Problem> of(BagBalance bag) {
        List<Problem> problems = new ArrayList<>();
        String name = "bag " + bag.composite() + ": ";
        if (!bag.next().isEmpty()) {
            problems.add(Problem.warning(
                    "BAG_SPARE_DUE",
                    Where.WHOLE,
                    name + "take " + and(bag.next()) + ", so that every part counts once"));
        }
        if (!bag.missing().isEmpty()) {
            problems.add(Problem.warning(
                    "BAG_CORE_MISSING",
                    Where.WHOLE,
                    name + "nothing stands for " + and(bag.missing())
                            + "; the mix says less about that part: take a core close by, or note it"));
        }
        if (!bag.surplus().isEmpty()) {
            problems.add(Problem.warning(
                    "BAG_SURPLUS",
                    Where.WHOLE,
                    name + "keep " + and(bag.surplus()) + " out of the bag: the core it stands by is in already"));
        }
        if (!bag.notLogged().isEmpty()) {
            problems.add(Problem.info(
                    "BAG_NOT_LOGGED", Where.WHOLE, name + "nothing is logged for " + and(bag.notLogged())));
        }
        return problems;
    }

    private static String and(List<String> ids) {
        return String.join(", ", ids);
    }
}
