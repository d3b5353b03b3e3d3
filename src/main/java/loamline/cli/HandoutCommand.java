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
import loamline.files.CupTable;
import loamline.files.LogFile;
import loamline.files.Read;
import loamline.files.SeasonTables;
import loamline.findings.CoreLog;
import loamline.findings.Findings;
import loamline.findings.LogRow;
import loamline.findings.Surroundings;
import loamline.sampling.CorePlan;
import loamline.season.Ground;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.sheets.ClientPlan;
import loamline.sheets.CupPlanSheet;
import loamline.sheets.CupSheet;
import loamline.sheets.FindingsSheet;
import loamline.sheets.PhonePage;
import loamline.sheets.SheetOptions;
import loamline.sheets.SoilSheet;
import loamline.sheets.SunMap;
import loamline.sheets.WalkPlan;
import loamline.sheets.WaterMap;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.sun.SunStudy;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Concern;
import loamline.water.cups.Cup;
import loamline.water.cups.CupPlanner;
import loamline.water.cups.CupTest;
import loamline.yard.Attachment;
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
                        + " cups, cores and the laboratory say and the season's plan for the client.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class HandoutCommand implements Callable<Integer> {
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
        CorePlan plan = planning.plan(yard);
        input.report(plan.problems());
        Water water = Water.of(yard, WaterOptions.USUAL);
        input.report(water.problems());
        Optional<SunStudy> sun = Growing.sun(yard);
        SeasonTables tables = SeasonTables.of(yard);
        tables.problems().forEach((name, problems) -> input.report(Path.of(name), problems));
        SoilOptions soil = choices.soil(input);
        Optional<SoilReport> report =
                Optional.of(tables.lab()).filter(lab -> !lab.isEmpty()).map(lab -> SoilReport.of(lab, soil));

        Pages made = new Pages(yard, Zones.of(yard), pages.sheets(), new LinkedHashMap<>());
        made.walk(plan);
        made.water(water);
        sun.ifPresent(made::sun);
        findings(made, plan, new Surroundings(Optional.of(water), cups(made), sun, report));
        report.ifPresent(made::soil);
        season(yard, tables, soil).ifPresent(made::clientPlan);
        if (made.files().isEmpty()) {
            throw new NotDone(
                    "HANDOUT_EMPTY",
                    "there is no turf and no head in this yard; nothing was written. Draw them first.");
        }
        made.files().forEach(output::add);
        output.write();
        input.say(String.join(", ", made.files().keySet()) + " written to " + output.folder() + ".");
        return input.exitCode();
    }

    /** The cup tests that the yard carries, each with its sheet. */
    private List<CupTest> cups(Pages made) {
        List<CupTest> tests = new ArrayList<>();
        for (CupTable table : CupTable.all(made.yard())) {
            input.report(Path.of(table.table().name()), table.problems());
            table.test().ifPresent(tests::add);
        }
        tests.forEach(made::cupTest);
        return tests;
    }

    private void findings(Pages made, CorePlan plan, Surroundings known) {
        List<LogRow> rows = new ArrayList<>();
        for (Attachment table : made.yard().attached(Attachment.Sort.LOG)) {
            Read<List<LogRow>> read = LogFile.parse(table.text());
            input.report(Path.of(table.name()), read.problems());
            read.value().ifPresent(rows::addAll);
        }
        if (!rows.isEmpty()) {
            CoreLog.Answer answer = CoreLog.of(plan, rows);
            input.report(answer.problems());
            answer.log().ifPresent(log -> made.findings(plan, Findings.of(made.yard(), log, known)));
        }
    }

    private Optional<Season> season(Yard yard, SeasonTables tables, SoilOptions soil) throws NotDone {
        Optional<LocalDate> first = choices.first(tables.lab(), pages.sheets());
        if (tables.products().isEmpty()) {
            return Optional.empty();
        }
        if (first.isEmpty()) {
            input.report(List.of(NO_FIRST_DAY));
            return Optional.empty();
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
        return Optional.of(season);
    }

    /**
     * The pages by their files.
     *
     * @param files in the order in which they are told
     */
    private record Pages(Yard yard, List<Zone> zones, SheetOptions sheets, Map<String, byte[]> files) {
        void walk(CorePlan plan) {
            if (!plan.cores().isEmpty()) {
                files.put("walk-plan.pdf", new WalkPlan(yard, zones, plan, sheets).pdf());
                files.put("phone-log.html", CoresOutput.utf8(new PhonePage(yard, zones, plan, sheets).html()));
            }
        }

        /** The map of water, and the tests that it makes worth their time. */
        void water(Water water) {
            if (water.valves().isEmpty() || water.rateMmH().isEmpty()) {
                return;
            }
            files.put("water-map.png", new WaterMap(yard, zones, water, sheets).png());
            CupPlanner.worthwhile(yard, Concern.of(yard, water), Cup.USUAL_THROAT_CM2)
                    .forEach(plan -> files.put(
                            "cup-plan-valve-" + named(plan.valve()),
                            new CupPlanSheet(yard, zones, plan, sheets).pdf()));
        }

        void cupTest(CupTest test) {
            files.put("cup-sheet-valve-" + named(test.valve()), new CupSheet(yard, zones, test, sheets).pdf());
        }

        void sun(SunStudy sun) {
            files.put("sun-map.png", new SunMap(yard, zones, sun, sheets).png());
        }

        void findings(CorePlan plan, Findings findings) {
            files.put("findings.pdf", new FindingsSheet(yard, zones, plan, findings, sheets).pdf());
        }

        void soil(SoilReport report) {
            files.put("soil.pdf", new SoilSheet(report, sheets).pdf());
        }

        void clientPlan(Season season) {
            files.put("client-plan.pdf", new ClientPlan(yard, zones, season, sheets).pdf());
        }

        private static String named(String valve) {
            return valve.replaceAll("[^\\p{Alnum}-]", "_") + ".pdf";
        }
    }
}
