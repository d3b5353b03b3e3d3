package loamline.cli;

import java.util.OptionalInt;
import java.util.concurrent.Callable;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code loamline cores}. */
@Command(
        name = "cores",
        description = "Plan where to take soil cores and the shortest walk to them; print the walk plan."
                + " What a yard's file says of its planning stands in the place of the defaults.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CoresCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PageOptions pages;

    @Option(
            names = "--kits",
            paramLabel = "K",
            description = "Lab samples that may be sent; default: the zones' own bags, else 2.")
    private @Nullable Integer kits;

    @Option(names = "--cores", paramLabel = "N", description = "Cores a composite, 1 to 200; default 12.")
    private @Nullable Integer cores;

    @Option(
            names = "--edge-buffer",
            paramLabel = "LENGTH",
            description = "Distance from edges, such as 3ft or 0.9m; default 3ft. A bare number is metres.")
    private @Nullable Metres edgeBuffer;

    @Option(
            names = "--place",
            paramLabel = "centre|random",
            description = "Where in its stratum a core goes; default centre.")
    private PlanOptions.@Nullable Place place;

    @Option(names = "--seed", paramLabel = "S", description = "The same seed gives the same plan; default 1.")
    private @Nullable Long seed;

    @Option(names = "--bags", paramLabel = "one|all", description = "One walk a bag, or one for all bags; default one.")
    private PlanOptions.@Nullable Rounds bags;

    @Option(names = "--keep", description = "Leave the yard's own cores where they are and plan the walk only.")
    private boolean keep;

    @Option(names = "--probe-depth", paramLabel = "LENGTH", description = "How deep the probe goes; default 4in.")
    private @Nullable Metres probeDepth;

    @Option(
            names = "--probe-diameter",
            paramLabel = "LENGTH",
            description = "Inner diameter of the probe; default 0.75in.")
    private @Nullable Metres probeDiameter;

    @Override
    public Integer call() throws NotDone {
        requireSense();
        Yard yard = input.read();
        PlanOptions options = over(yard.planning().orElse(PlanOptions.USUAL));
        CorePlan plan = keep ? CorePlanner.keep(yard, options) : CorePlanner.plan(yard, options);
        input.report(plan.problems());
        CoresOutput.files(yard, plan, pages.sheets()).forEach(output::add);
        output.write();
        input.say(plan.mainCores().size() + " cores in " + plan.composites().size() + " composites written to "
                + output.folder() + ".");
        return input.exitCode();
    }

    private void requireSense() {
        require(kits == null || kits >= 1, "--kits must be 1 or more");
        require(
                cores == null || (cores >= 1 && cores <= PlanOptions.MOST_CORES),
                "--cores must be 1 to " + PlanOptions.MOST_CORES);
        require(
                (probeDepth == null || probeDepth.value() > 0) && (probeDiameter == null || probeDiameter.value() > 0),
                "--probe-depth and --probe-diameter must be above 0");
    }

    /** What was said on the command line, and else what the yard's file says. */
    private PlanOptions over(PlanOptions file) {
        return new PlanOptions(
                kits == null ? file.kits() : OptionalInt.of(kits),
                cores == null ? file.coresPerComposite() : cores,
                metres(edgeBuffer, file.edgeBufferM()),
                file.trunkBufferM(),
                file.headBufferM(),
                place == null ? file.place() : place,
                file.sparesPerStratum(),
                seed == null ? file.seed() : seed,
                bags == null ? file.walk() : bags,
                new Probe(
                        metres(probeDiameter, file.probe().diameterM()),
                        metres(probeDepth, file.probe().depthM())),
                file.extras());
    }

    private static double metres(@Nullable Metres said, double otherwiseM) {
        return said == null ? otherwiseM : said.value();
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
