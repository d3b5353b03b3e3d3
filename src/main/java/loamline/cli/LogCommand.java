package loamline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import loamline.files.FindingFiles;
import loamline.files.LabFile;
import loamline.files.LogFile;
import loamline.files.Read;
import loamline.files.ReadingsFile;
import loamline.findings.CoreLog;
import loamline.findings.Findings;
import loamline.findings.LogRow;
import loamline.findings.Surroundings;
import loamline.sampling.CorePlan;
import loamline.sheets.FindingsSheet;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamline log}. */
@Command(
        name = "log",
        description = "Read what the cores showed, keep the bags balanced, and rank why parts of the lawn struggle. The"
                + " cores are the yard's own where it holds some, else those that loamline cores plans with the same"
                + " options.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class LogCommand implements Callable<Integer> {
    @Mixin
    private YardInput input;

    @Parameters(
            index = "1",
            paramLabel = "LOG.csv",
            description = "A row a core: core, time, depth_cm, refusal, root_cm, thatch_mm, topsoil_cm, moisture,"
                    + " vwc_pct, psi, wdpt_s, colour, quality, layers, note. Blanks are allowed, and inches (root_in).")
    private Path file;

    @Mixin
    private OutputFolder output;

    @Option(names = "--lab", paramLabel = "LAB.csv", description = "The laboratory's values, to set beside the cores.")
    private @Nullable Path lab;

    @Option(
            names = "--cups",
            paramLabel = "VALVE=READINGS.csv",
            description = "What cups of a valve caught, as loamline cups reads it; measured water beats modelled.")
    private Map<String, Path> cups = new LinkedHashMap<>();

    @Mixin
    private PlanningOptions planning;

    @Mixin
    private PageOptions pages;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        CorePlan plan = planning.plan(yard);
        CoreLog log = log(plan);
        Findings findings = Findings.of(yard, log, known(yard));
        FindingFiles.of(findings, pages.sheets().units())
                .forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("log.csv", CoresOutput.utf8(LogFile.text(log.visit().rows())));
        output.add("findings.pdf", new FindingsSheet(yard, Zones.of(yard), plan, findings, pages.sheets()).pdf());
        output.write();
        input.say(log.logged() + " of " + plan.mainCores().size() + " cores logged, written to " + output.folder() + "."
                + said(findings));
        return input.exitCode();
    }

    private CoreLog log(CorePlan plan) throws NotDone {
        Read<List<LogRow>> read = LogFile.read(file);
        input.report(file, read.problems());
        List<LogRow> rows = read.value()
                .orElseThrow(() -> new NotDone("LOG_NOT_READ", file + " holds no row; nothing was written."));
        CoreLog.Answer answer = CoreLog.of(plan, rows);
        input.report(file, answer.problems());
        return answer.log()
                .orElseThrow(() ->
                        new NotDone("LOG_NOT_USED", file + " is no log of this yard's cores; nothing was written."));
    }

    private Surroundings known(Yard yard) throws NotDone {
        return new Surroundings(
                Optional.of(Water.of(yard, WaterOptions.USUAL)),
                tests(yard),
                Growing.sun(yard),
                lab == null ? Optional.empty() : Optional.of(report(lab)));
    }

    private List<CupTest> tests(Yard yard) throws NotDone {
        List<CupTest> tests = new ArrayList<>();
        for (Map.Entry<String, Path> readings : cups.entrySet()) {
            String valve = readings.getKey();
            if (!CupTest.valves(yard).contains(valve)) {
                throw new NotDone("VALVE_UNKNOWN", "there is no valve “" + valve + "” in this yard.");
            }
            Read<List<Cup>> read = ReadingsFile.read(readings.getValue(), yard.frame());
            input.report(readings.getValue(), read.problems());
            read.value().ifPresent(caught -> tests.add(CupTest.of(yard, valve, caught, Optional.empty())));
        }
        return tests;
    }

    private SoilReport report(Path values) throws NotDone {
        LabFile read = LabFile.read(values);
        input.report(values, read.problems());
        if (read.values().isEmpty()) {
            throw new NotDone("LAB_NOT_READ", values + " holds no value that can be used; nothing was written.");
        }
        SoilReport report = SoilReport.of(read.values(), SoilOptions.USUAL);
        input.report(values, report.problems());
        return report;
    }

    private static String said(Findings findings) {
        return findings.areas().stream()
                .map(area -> " " + area.name() + ": " + area.title() + ".")
                .collect(Collectors.joining());
    }
}
