package loamline.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.season.blend.Plot;
import loamline.season.blend.Range;
import loamline.soil.SoilReport;

/** Everything that is open or was assumed in a season. */
record SeasonDoubts(SeasonInputs inputs, PlotPlanner planner) {
    List<Problem> problems(List<ZoneSeason> zones) {
        List<Problem> problems = new ArrayList<>();
        if (!inputs.lab().isEmpty()) {
            problems.addAll(SoilReport.of(inputs.lab(), inputs.options().soil()).problems());
        }
        for (ZoneSeason zone : zones) {
            zone.questions().forEach(words -> problems.add(Season.question(zone.name(), words)));
            planner.unplanned(zone)
                    .ifPresent(words -> problems.add(Problem.warning(
                            "SEASON_NO_DATE", Where.WHOLE, zone.name() + " gets no product: " + words)));
            phosphorus(zone, problems);
            planner.plot(zone).ifPresent(plot -> rest(zone, plot, problems));
        }
        inputs.targets().stream()
                .filter(target -> zones.stream().noneMatch(zone -> zone.name().equalsIgnoreCase(target.zone())))
                .forEach(target -> problems.add(Problem.warning(
                        "TARGET_NO_ZONE",
                        Where.line(target.line()),
                        "there is no zone “" + target.zone() + "” in the yard: correct its name")));
        inputs.visits().stream()
                .filter(visit -> visit.date().isEmpty())
                .forEach(visit -> problems.add(Problem.warning(
                        "SERVICE_NO_DATE",
                        Where.line(visit.line()),
                        "without a date the visit counts for the year, and for no dose's cap: fill in date")));
        return problems;
    }

    /** What caps and dates leave for another season. */
    private static void rest(ZoneSeason zone, Plot plot, List<Problem> problems) {
        for (Nutrient nutrient : List.of(Nutrient.P2O5, Nutrient.LIME, Nutrient.SULFUR)) {
            double now = plot.season()
                    .getOrDefault(nutrient.quantity(), Range.atMost(0))
                    .most();
            double needed = zone.remaining(nutrient).orElse(0);
            if (now > 0 && now < needed) {
                problems.add(Problem.warning(
                        "SEASON_REST_WAITS",
                        Where.WHOLE,
                        String.format(
                                Locale.ROOT,
                                "%s gets %.0f %% of its %s: caps and dates allow no more; test again before the rest",
                                zone.name(),
                                100 * now / needed,
                                nutrient.word())));
            }
        }
    }

    private void phosphorus(ZoneSeason zone, List<Problem> problems) {
        boolean barred = zone.remaining(Nutrient.P2O5).orElse(0) > 0
                && planner.days(zone).stream().noneMatch(day -> planner.phosphorus(zone, day.date()));
        if (barred && !planner.days(zone).isEmpty()) {
            problems.add(Problem.warning(
                    "SEASON_PHOSPHORUS_BARRED",
                    Where.WHOLE,
                    zone.name() + " needs phosphate, and the law allows none without a dated test that is young enough:"
                            + " test again or fill in its date"));
        }
    }
}
