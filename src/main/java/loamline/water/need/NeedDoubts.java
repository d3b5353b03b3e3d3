package loamline.water.need;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.water.need.ReferenceEt.Method;

/** What a reader of watering needs should know about the climate they rest on. */
final class NeedDoubts {
    private NeedDoubts() {}

    /**
     * @param year what is known, each month once at most
     * @param needs what came of it
     */
    static List<Problem> of(List<MonthClimate> year, List<MonthNeed> needs, Optional<Site> site) {
        List<Problem> problems = new ArrayList<>();
        Predicate<Month> lost = month -> needs.stream().noneMatch(need -> need.month() == month);
        Predicate<Month> lostForPlace = lost.and(
                month -> site.isEmpty() && any(year, month, c -> c.temperature().isPresent()));
        add(
                problems,
                lostForPlace,
                months -> Problem.error(
                        "NEED_PLACE_MISSING",
                        Where.WHOLE,
                        "water use in " + months
                                + " follows from temperature and place, and the place is not known: tie the"
                                + " yard to the earth, or give eto_mm_day"));
        add(
                problems,
                lost.and(lostForPlace.negate()),
                months -> Problem.warning(
                        "NEED_CLIMATE_MISSING",
                        Where.WHOLE,
                        "nothing is said about water use in " + months + ": give eto_mm_day, or tmin_c and tmax_c"));
        add(
                problems,
                lost.negate().and(month -> any(year, month, c -> c.rainMm().isEmpty())),
                months -> Problem.warning(
                        "NEED_RAIN_MISSING",
                        Where.WHOLE,
                        "rain in " + months + " is not known and counts as none: give rain_mm"));
        if (site.filter(s -> Math.abs(s.latitudeDeg()) > Site.WEAK_BEYOND_DEG).isPresent()
                && needs.stream().anyMatch(need -> need.eto().method() != Method.TYPED)) {
            problems.add(Problem.warning(
                    "NEED_FAR_NORTH",
                    Where.WHOLE,
                    "the equations for sunshine are weak beyond 55° of latitude: prefer a published eto_mm_day"));
        }
        return problems;
    }

    private static boolean any(List<MonthClimate> year, Month month, Predicate<MonthClimate> is) {
        return year.stream().anyMatch(climate -> climate.month() == month && is.test(climate));
    }

    private static void add(List<Problem> problems, Predicate<Month> concerned, Function<String, Problem> problem) {
        List<Month> months = Arrays.stream(Month.values()).filter(concerned).toList();
        if (!months.isEmpty()) {
            problems.add(problem.apply(months.stream()
                    .map(month -> month.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                    .collect(Collectors.joining(", "))));
        }
    }
}
