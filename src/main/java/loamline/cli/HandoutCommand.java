package loamline.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.files.SeasonTables;
import loamline.sampling.CorePlan;
import loamline.season.Ground;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.sheets.ClientPlan;
import loamline.sheets.CupPlanSheet;
import loamline.sheets.PhonePage;
import loamline.sheets.SheetOptions;
import loamline.sheets.SoilSheet;
import loamline.sheets.SunMap;
import loamline.sheets.WalkPlan;
import loamline.sheets.WaterMap;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Concern;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.water.cups.CupTest;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code loamline handout}: every page that the yard's data allow. */
@Command(
        name = "handout",
        description =
                "Write every page for the visit that the yard's data allow: the walk plan, the log for a phone, the"
                        + " sheets of cup tests worth their time, maps of water and sun; from tables attached to it what"
                        + " the laboratory says and the season's plan for the client.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class HandoutCommand implements Callable<Integer> {
    /** Opening of usual cups, cm² (16.6 in²). */
    private static final double THROAT_CM2 = 107.1;

    private static final Problem NO_FIRST_DAY = Problem.warning(
            "SEASON_NO_START", Where.WHOLE, "no table has a date, so there is no season's plan: say --from or --date");

    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PlanningOptions planning;

    @Mixin
    private SeasonChoices choices;

    @Mixin
    private PageOptions pages;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        List<Zone> zones = Zones.of(yard);
        SheetOptions sheets = pages.sheets();
        Map<String, byte[]> files = new LinkedHashMap<>();
        walk(yard, zones, sheets, files);
        water(yard, zones, sheets, files);
        Growing.sun(yard).ifPresent(sun -> files.put("sun-map.png", new SunMap(yard, zones, sun, sheets).png()));
        season(yard, zones, sheets, files);
        if (files.isEmpty()) {
            throw new NotDone(
                    "HANDOUT_EMPTY",
                    "there is no turf and no head in this yard; nothing was written. Draw them first.");
        }
        files.forEach(output::add);
        output.write();
        input.say(String.join(", ", files.keySet()) + " written to " + output.folder() + ".");
        return input.exitCode();
    }

    private void walk(Yard yard, List<Zone> zones, SheetOptions sheets, Map<String, byte[]> files) {
        CorePlan plan = planning.plan(yard);
        input.report(plan.problems());
        if (!plan.cores().isEmpty()) {
            files.put("walk-plan.pdf", new WalkPlan(yard, zones, plan, sheets).pdf());
            files.put("phone-log.html", CoresOutput.utf8(new PhonePage(yard, zones, plan, sheets).html()));
        }
    }

    private void season(Yard yard, List<Zone> zones, SheetOptions sheets, Map<String, byte[]> files) throws NotDone {
        SeasonTables tables = SeasonTables.of(yard);
        tables.problems().forEach((name, problems) -> input.report(Path.of(name), problems));
        SoilOptions soil = choices.soil(input);
        if (!tables.lab().isEmpty()) {
            files.put("soil.pdf", new SoilSheet(SoilReport.of(tables.lab(), soil), sheets).pdf());
        }
        Optional<LocalDate> first = choices.first(tables.lab(), sheets);
        if (tables.products().isEmpty()) {
            return;
        }
        if (first.isEmpty()) {
            input.report(List.of(NO_FIRST_DAY));
            return;
        }
        SeasonOptions options = choices.options(input, first.get(), tables.meanC(), soil);
        Season season = SeasonChoices.planned(
                yard,
                new SeasonInputs(
                        Ground.of(yard, options.setbackM()),
                        tables.lab(),
                        tables.products(),
                        tables.visits(),
                        tables.targets(),
                        options));
        input.report(season.problems());
        files.put("client-plan.pdf", new ClientPlan(yard, zones, season, sheets).pdf());
    }

    private void water(Yard yard, List<Zone> zones, SheetOptions sheets, Map<String, byte[]> files) {
        Water water = Water.of(yard, WaterOptions.USUAL);
        input.report(water.problems());
        if (water.valves().isEmpty() || water.rateMmH().isEmpty()) {
            return;
        }
        files.put("water-map.png", new WaterMap(yard, zones, water, sheets).png());
        List<Concern> concerns = new ArrayList<>(Concern.holes(water.gaps()));
        concerns.addAll(Concern.troubles(yard));
        for (String valve : CupTest.valves(yard)) {
            CupPlan plan = CupPlanner.of(yard, valve, concerns, THROAT_CM2);
            if (!plan.reasons().isEmpty()) {
                files.put(
                        "cup-plan-valve-" + valve.replaceAll("[^\\p{Alnum}-]", "_") + ".pdf",
                        new CupPlanSheet(yard, zones, plan, sheets).pdf());
            }
        }
    }
}
