package loamline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import loamline.files.CupFiles;
import loamline.files.CupPlanFiles;
import loamline.files.Read;
import loamline.files.ReadingsFile;
import loamline.sheets.CupPlanSheet;
import loamline.sheets.CupSheet;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Concern;
import loamline.water.cups.Cup;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.water.cups.CupTest;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loamline cups}. */
@Command(
        name = "cups",
        description = "Read a cup test: how even a valve waters, which head is at fault, how long to run."
                + " Without readings: lay the test and print the sheet for it.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CupsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private YardInput input;

    @Parameters(
            index = "1",
            paramLabel = "READINGS.csv",
            arity = "0..1",
            description = "A row a cup: cup, x_m, y_m (or lon, lat), ml, throat_cm2, minutes.")
    private @Nullable Path readings;

    @Option(names = "--valve", paramLabel = "V", required = true, description = "The valve that ran.")
    private String valve;

    @Mixin
    private OutputFolder output;

    @Mixin
    private WateringOptions watering;

    @Option(
            names = "--throat",
            paramLabel = "CM2",
            description = "Opening of the cups of a test to be laid, square centimetres; default 107.1 (16.6 in²).")
    private double throatCm2 = Cup.USUAL_THROAT_CM2;

    @Mixin
    private PageOptions pages;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        List<String> valves = CupTest.valves(yard);
        if (!valves.contains(valve)) {
            throw new NotDone(
                    "VALVE_UNKNOWN",
                    "there is no valve “" + valve + "” in this yard; "
                            + (valves.isEmpty()
                                    ? "give its heads a “valve” first."
                                    : "it has " + String.join(", ", valves) + "."));
        }
        if (readings == null) {
            plan(yard);
        } else {
            test(yard, readings);
        }
        return input.exitCode();
    }

    private void plan(Yard yard) throws NotDone {
        if (!(throatCm2 > 0 && Double.isFinite(throatCm2))) {
            throw new ParameterException(spec.commandLine(), "--throat must be above 0");
        }
        List<Concern> concerns = Concern.of(yard, Water.of(yard, WaterOptions.USUAL));
        CupPlan plan = CupPlanner.of(yard, valve, concerns, throatCm2);
        input.report(plan.problems());
        CupPlanFiles.of(plan, yard.frame()).forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("cup-plan.pdf", new CupPlanSheet(yard, Zones.of(yard), plan, pages.sheets()).pdf());
        output.write();
        input.say(plan.cups().size() + " cups laid for valve " + valve + ", written to " + output.folder() + ".");
    }

    private void test(Yard yard, Path file) throws NotDone {
        Read<List<Cup>> read = ReadingsFile.read(file, yard.frame());
        input.report(file, read.problems());
        List<Cup> cups = read.value()
                .orElseThrow(() -> new NotDone("READINGS_NOT_READ", file + " holds no reading; nothing was written."));
        CupTest test = CupTest.of(yard, valve, cups, watering.of(yard, input));
        input.report(test.yardProblems());
        input.report(file, test.problems());
        CupFiles.of(test).forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("cup-sheet.pdf", new CupSheet(yard, Zones.of(yard), test, pages.sheets()).pdf());
        output.write();
        input.say(
                cups.size() + " cups of valve " + valve + " read, written to " + output.folder() + ". " + heads(test));
    }

    private static String heads(CupTest test) {
        return test.findings().faults().stream()
                .map(head -> "Head " + head.head() + ": " + head.words())
                .reduce((a, b) -> a + " " + b)
                .orElse("No head stands out.");
    }
}
