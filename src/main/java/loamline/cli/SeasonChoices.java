package loamline.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.files.Read;
import loamline.files.TableFolder;
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

    @Option(
            names = "--frost",
            paramLabel = "MM-DD",
            description =
                    "Usual day of the first killing frost: warm-season grass gets no nitrogen in the month before.")
    private @Nullable String frost;

    @Option(
            names = "--tables",
            paramLabel = "DIR",
            description = "Folder with your own tables about turf and soil, named and built like the published ones.")
    private @Nullable Path tables;

    /** The season's first day; empty if nothing tells it. */
    Optional<LocalDate> first(List<LabValue> values, SheetOptions pages) {
        return Optional.ofNullable(from)
                .or(pages::date)
                .or(() -> values.stream().flatMap(v -> v.date().stream()).max(Comparator.naturalOrder()));
    }

    /** @param soil by which the laboratory's values are read */
    SeasonOptions options(YardInput input, LocalDate first, Map<Month, Double> meanC, SoilOptions soil) throws NotDone {
        TurfTables turf = tables == null ? TurfTables.published() : own(input, tables, TableFolder.turf(tables));
        try {
            return new SeasonOptions(
                    first,
                    Optional.ofNullable(region),
                    Optional.ofNullable(state),
                    professional,
                    dropSpreader,
                    meanC,
                    Optional.ofNullable(frost).map(this::day),
                    soil,
                    turf);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    /** How laboratory values are read: by the state's law and the tables of the folder. */
    SoilOptions soil(YardInput input) throws NotDone {
        SoilOptions usual = tables == null
                ? SoilOptions.USUAL
                : SoilOptions.USUAL.with(own(input, tables, TableFolder.read(tables)));
        return state == null ? usual : usual.inState(state);
    }

    private static <T> T own(YardInput input, Path folder, Read<T> read) throws NotDone {
        input.report(folder, read.problems());
        return read.value()
                .orElseThrow(() -> new NotDone("TABLES_NOT_READ", folder + " cannot be read; nothing was written."));
    }

    private MonthDay day(String text) {
        try {
            return MonthDay.parse("--" + text);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(), "--frost should be a month and a day such as 10-25, not “" + text + "”", e);
        }
    }

    /** Plans it, with a look at the sun where that has a say. */
    static Season planned(Yard yard, SeasonInputs inputs) {
        return Season.of(inputs.asksForSun() ? inputs.withSun(Growing.hours(yard)) : inputs);
    }
}
