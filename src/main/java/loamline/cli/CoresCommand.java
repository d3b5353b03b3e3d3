package loamline.cli;

import java.util.concurrent.Callable;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code loamline cores}. */
@Command(
        name = "cores",
        description = "Plan where to take soil cores and the shortest walk to them; print the walk plan."
                + " What a yard's file says of its planning stands in the place of the defaults.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CoresCommand implements Callable<Integer> {
    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PageOptions pages;

    @Mixin
    private PlanningOptions planning;

    @Option(names = "--keep", description = "Leave the yard's own cores where they are and plan the walk only.")
    private boolean keep;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        PlanOptions options = planning.over(yard);
        CorePlan plan = keep ? CorePlanner.keep(yard, options) : CorePlanner.plan(yard, options);
        input.report(plan.problems());
        CoresOutput.files(yard, plan, pages.sheets()).forEach(output::add);
        output.write();
        input.say(plan.mainCores().size() + " cores in " + plan.composites().size() + " composites written to "
                + output.folder() + ".");
        return input.exitCode();
    }
}
