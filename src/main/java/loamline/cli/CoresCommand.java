package loamline.cli;

import java.util.OptionalInt;
import java.util.concurrent.Callable;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sampling.PlanOptions;
import loamline.sampling.Probe;
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
        description = "Plan where to take soil cores and the shortest walk to them; print the walk plan.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CoresCommand implements Callable<Integer> {
    private static final int MOST_CORES = 200;

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

    @Option(
            names = "--cores",
            paramLabel = "N",
            description = "Cores a composite, 1 to " + MOST_CORES + "; default 12.")
    private int cores = PlanOptions.USUAL.coresPerComposite();

    @Option(
            names = "--edge-buffer",
            paramLabel = "LENGTH",
            description = "Distance from edges, such as 3ft or 0.9m; default 3ft. A bare number is metres.")
    private Metres edgeBuffer = new Metres(PlanOptions.USUAL.edgeBufferM());

    @Option(
            names = "--place",
            paramLabel = "centre|random",
            description = "Where in its stratum a core goes; default centre.")
    private PlanOptions.Place place = PlanOptions.Place.CENTRE;

    @Option(names = "--seed", paramLabel = "S", description = "The same seed gives the same plan; default 1.")
    private long seed = PlanOptions.USUAL.seed();

    @Option(names = "--bags", paramLabel = "one|all", description = "One walk a bag, or one for all bags; default one.")
    private PlanOptions.Rounds bags = PlanOptions.Rounds.ONE;

    @Option(names = "--keep", description = "Leave the yard's own cores where they are and plan the walk only.")
    private boolean keep;

    @Option(names = "--probe-depth", paramLabel = "LENGTH", description = "How deep the probe goes; default 4in.")
    private Metres probeDepth = new Metres(Probe.USUAL.depthM());

    @Option(
            names = "--probe-diameter",
            paramLabel = "LENGTH",
            description = "Inner diameter of the probe; default 0.75in.")
    private Metres probeDiameter = new Metres(Probe.USUAL.diameterM());

    @Override
    public Integer call() throws NotDone {
        PlanOptions options = options();
        Yard yard = input.read();
        CorePlan plan = CorePlanner.plan(yard, options);
        input.report(plan.problems());
        CoresOutput.files(yard, plan, pages.sheets()).forEach(output::add);
        output.write();
        input.say(plan.mainCores().size() + " cores in " + plan.composites().size() + " composites written to "
                + output.folder() + ".");
        return input.exitCode();
    }

    private PlanOptions options() {
        require(kits == null || kits >= 1, "--kits must be 1 or more");
        require(cores >= 1 && cores <= MOST_CORES, "--cores must be 1 to " + MOST_CORES);
        require(
                probeDepth.value() > 0 && probeDiameter.value() > 0,
                "--probe-depth and --probe-diameter must be above 0");
        PlanOptions usual = PlanOptions.USUAL;
        return new PlanOptions(
                kits == null ? OptionalInt.empty() : OptionalInt.of(kits),
                cores,
                edgeBuffer.value(),
                usual.trunkBufferM(),
                usual.headBufferM(),
                place,
                usual.sparesPerStratum(),
                seed,
                bags,
                keep,
                new Probe(probeDiameter.value(), probeDepth.value()));
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
