package loamline.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import loamline.files.ClimateFile;
import loamline.files.LabFile;
import loamline.files.ProductFile;
import loamline.files.SeasonFiles;
import loamline.files.ServiceFile;
import loamline.files.TargetFile;
import loamline.reference.TurfTables;
import loamline.season.Ground;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.season.Target;
import loamline.season.Visit;
import loamline.sheets.ClientPlan;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.water.need.MonthClimate;
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

    @Option(
            names = "--from",
            paramLabel = "YYYY-MM-DD",
            description =
                    "First day on which anything may be done; default: the --date of the pages, else the newest day in"
                            + " the laboratory's table.")
    private @Nullable LocalDate from;

    @Option(names = "--region", paramLabel = "NAME", description = "Whose calendar counts, such as illinois or kansas.")
    private @Nullable String region;

    @Option(names = "--state", paramLabel = "XX", description = "State whose law is kept.")
    private @Nullable String state;

    @Option(names = "--professional", description = "Somebody is paid for spreading.")
    private boolean professional;

    @Option(names = "--drop-spreader", description = "A drop spreader or a guard keeps fertilizer in its swath.")
    private boolean dropSpreader;

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
        SeasonOptions options = options(values.values());
        SeasonInputs inputs = new SeasonInputs(
                Ground.of(yard, options.setbackM()),
                values.values(),
                list.products(),
                service == null ? List.of() : visits(service),
                targets == null ? List.of() : targets(targets),
                options);
        Season season = Season.of(inputs.asksForSun() ? inputs.withSun(Growing.hours(yard)) : inputs);
        input.report(season.problems());
        SeasonFiles.of(yard.name(), season, PageOptions.program())
                .forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("client-plan.pdf", new ClientPlan(yard, Zones.of(yard), season, pages.sheets()).pdf());
        output.write();
        input.say(summary(season) + " written to " + output.folder() + ".");
        season.blocking().forEach(words -> spec.commandLine().getErr().println("Blocked: " + words));
        return input.exitCode();
    }

    private static String summary(Season season) {
        int bags = season.purchases().stream().mapToInt(p -> p.bags()).sum();
        return season.isOptimal()
                ? String.format(
                        Locale.ROOT, "%d tasks, %d bags, %.2f", season.tasks().size(), bags, season.cost())
                : "A season without products";
    }

    private SeasonOptions options(List<LabValue> values) {
        try {
            return new SeasonOptions(
                    first(values),
                    Optional.ofNullable(region),
                    Optional.ofNullable(state),
                    professional,
                    dropSpreader,
                    climate == null ? Map.of() : months(climate),
                    state == null ? SoilOptions.USUAL : SoilOptions.USUAL.inState(state),
                    TurfTables.published());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private LocalDate first(List<LabValue> values) {
        return Optional.ofNullable(from)
                .or(() -> pages.sheets().date())
                .or(() -> values.stream().flatMap(v -> v.date().stream()).max(Comparator.naturalOrder()))
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "The laboratory's table has no date: say --from, such as --from 2027-04-15."));
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
        Map<Month, Double> means = new EnumMap<>(Month.class);
        for (MonthClimate month : read.value().orElse(List.of())) {
            month.temperature().ifPresent(t -> means.put(month.month(), (t.minC() + t.maxC()) / 2));
        }
        return means;
    }
}
