package loamline.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import loamline.files.ClimateFile;
import loamline.files.LabFile;
import loamline.files.ProductFile;
import loamline.files.SeasonFiles;
import loamline.files.SeasonTables;
import loamline.files.ServiceFile;
import loamline.files.TargetFile;
import loamline.season.Ground;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.season.Target;
import loamline.season.Visit;
import loamline.sheets.ClientPlan;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code loamline season}. */
@Command(
        name = "season",
        description =
                "Plan a season: what each zone needs, less what another company applies, in whole bags, legal doses and"
                        + " dates; print the plan for the client.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SeasonCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private YardInput input;

    @Option(names = "--lab", required = true, paramLabel = "LAB.csv", description = "Laboratory values.")
    private Path lab;

    @Option(names = "--products", required = true, paramLabel = "PRODUCTS.csv", description = "The price list.")
    private Path products;

    @Option(names = "--service", paramLabel = "SERVICE.csv", description = "What another company applies.")
    private @Nullable Path service;

    @Option(names = "--targets", paramLabel = "TARGETS.csv", description = "Grass, region, use and seed by zone.")
    private @Nullable Path targets;

    @Option(names = "--climate", paramLabel = "CLIMATE.csv", description = "Usual weather, for growth by month.")
    private @Nullable Path climate;

    @Mixin
    private SeasonChoices choices;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PageOptions pages;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        LabFile values = LabFile.read(lab);
        input.report(lab, values.problems());
        ProductFile list = ProductFile.read(products);
        input.report(products, list.problems());
        if (list.products().isEmpty()) {
            throw new NotDone(
                    "PRODUCTS_NOT_READ", products + " holds no product that can be used; nothing was written.");
        }
        LocalDate first = choices.first(values.values(), pages.sheets())
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "The laboratory's table has no date: say --from, such as --from 2027-04-15."));
        SeasonOptions options =
                choices.options(input, first, climate == null ? Map.of() : months(climate), choices.soil(input));
        SeasonInputs inputs = new SeasonInputs(
                Ground.of(yard, options.setbackM()),
                values.values(),
                list.products(),
                service == null ? List.of() : visits(service),
                targets == null ? List.of() : targets(targets),
                options);
        Season season = SeasonChoices.planned(yard, inputs);
        input.report(season.problems());
        SeasonFiles.of(yard.name(), season, PageOptions.program())
                .forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("client-plan.pdf", new ClientPlan(yard, Zones.of(yard), season, pages.sheets()).pdf());
        output.write();
        input.say(summary(season) + " written to " + output.folder() + ".");
        return input.exitCode();
    }

    private static String summary(Season season) {
        int bags = season.purchases().stream().mapToInt(p -> p.bags()).sum();
        return season.isOptimal()
                ? String.format(
                        Locale.ROOT, "%d tasks, %d bags, %.2f", season.tasks().size(), bags, season.cost())
                : "No plan of products, as the warnings say; the rest of the season";
    }

    private List<Visit> visits(Path file) {
        ServiceFile read = ServiceFile.read(file);
        input.report(file, read.problems());
        return read.visits();
    }

    private List<Target> targets(Path file) {
        TargetFile read = TargetFile.read(file);
        input.report(file, read.problems());
        return read.targets();
    }

    private Map<Month, Double> months(Path file) {
        var read = ClimateFile.read(file);
        input.report(file, read.problems());
        return SeasonTables.meanC(read.value().orElse(List.of()));
    }
}
