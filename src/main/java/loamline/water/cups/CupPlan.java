package loamline.water.cups;

import java.util.List;
import loamline.account.Problem;
import loamline.geometry.Point;

/**
 * Where the cups of a test go and how long the valve runs.
 *
 * @param valve its name
 * @param reasons why the test is worth its time, in words; empty where nothing asks for one
 * @param cups places in the order in which they are walked, numbered from 1
 * @param spacingM between rows, and between cups in a row
 * @param minutes run time for a catch that can be read, whole minutes
 * @param throatCm2 the opening of the cups that this holds for
 * @param modelMmH mean rate over the cups as mapped, mm/h
 * @param problems what keeps it from being a good test
 */
public record CupPlan(
        String valve,
        List<String> reasons,
        List<Point> cups,
        double spacingM,
        int minutes,
        double throatCm2,
        double modelMmH,
        List<Problem> problems) {
    /** What must be right for a test to count, in the order of the work. */
    public static final List<String> RULES = List.of(
            "Mend what is plainly broken first; run the valve as it always runs, at its usual hour.",
            "Test in still air: wind at most 5 mph (2.2 m/s). Note the wind every 5 minutes.",
            "Set every cup upright on level ground at its place on the map; beside a head 1 to 2 ft off it.",
            "Note the pressure at a head while the valve runs. Rotors turn at least five full sweeps.",
            "Run neighbouring valves that reach this ground one after the other, each with its own list.",
            "Read each cup at once, at eye level, in millilitres; an empty cup is a reading of 0.");

    public CupPlan {
        reasons = List.copyOf(reasons);
        cups = List.copyOf(cups);
        problems = List.copyOf(problems);
    }
}
