package loamline.cli;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.reference.TurfTables;
import loamline.season.Season;
import loamline.season.SeasonInputs;
import loamline.season.SeasonOptions;
import loamline.sheets.SheetOptions;
import loamline.soil.LabValue;
import loamline.soil.SoilOptions;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What a person decides for a season. */
final class SeasonChoices {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

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

    /** The season's first day; empty if nothing tells it. */
    Optional<LocalDate> first(List<LabValue> values, SheetOptions pages) {
        return Optional.ofNullable(from)
                .or(pages::date)
                .or(() -> values.stream().flatMap(v -> v.date().stream()).max(Comparator.naturalOrder()));
    }

    SeasonOptions options(LocalDate first, Map<Month, Double> meanC) {
        try {
            return new SeasonOptions(
                    first,
                    Optional.ofNullable(region),
                    Optional.ofNullable(state),
                    professional,
                    dropSpreader,
                    meanC,
                    soil(),
                    TurfTables.published());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    SoilOptions soil() {
        return state == null ? SoilOptions.USUAL : SoilOptions.USUAL.inState(state);
    }

    /** Plans it, with a look at the sun where that has a say. */
    static Season planned(Yard yard, SeasonInputs inputs) {
        return Season.of(inputs.asksForSun() ? inputs.withSun(Growing.hours(yard)) : inputs);
    }
}
