package loamline.cli;

import java.util.OptionalInt;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.Core;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How cores are planned. */
final class PlanningOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

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

    @Option(names = "--probe-depth", paramLabel = "LENGTH", description = "How deep the probe goes; default 4in.")
    private @Nullable Metres probeDepth;

    @Option(
            names = "--probe-diameter",
            paramLabel = "LENGTH",
            description = "Inner diameter of the probe; default 0.75in.")
    private @Nullable Metres probeDiameter;

    /** The cores that a walk takes: the yard's own where it holds some, else planned. */
    CorePlan plan(Yard yard) {
        PlanOptions options = over(yard);
        boolean own = yard.all(Core.class).findAny().isPresent();
        return own ? CorePlanner.keep(yard, options) : CorePlanner.plan(yard, options);
    }

    /** What was said on the command line, and else what the yard's file says. */
    PlanOptions over(Yard yard) {
        requireSense();
        PlanOptions file = yard.planning().orElse(PlanOptions.USUAL);
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

    private void requireSense() {
        require(kits == null || kits >= 1, "--kits must be 1 or more");
        require(
                cores == null || (cores >= 1 && cores <= PlanOptions.MOST_CORES),
                "--cores must be 1 to " + PlanOptions.MOST_CORES);
        require(
                (probeDepth == null || probeDepth.value() > 0) && (probeDiameter == null || probeDiameter.value() > 0),
                "--probe-depth and --probe-diameter must be above 0");
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
