package loamline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loamline.account.Problem;
import loamline.files.LabFile;
import loamline.files.Read;
import loamline.files.SoilFiles;
import loamline.files.TableFolder;
import loamline.reference.SoilTables;
import loamline.sheets.SoilSheet;
import loamline.soil.SoilOptions;
import loamline.soil.SoilReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loamline soil}. */
@Command(
        name = "soil",
        description =
                "Say what laboratory reports mean: ratings, lime, sulfur, gypsum, phosphorus and potassium, and what"
                        + " has to be asked first.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SoilCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "LAB.csv", description = "Laboratory values, a value a row.")
    private Path file;

    @Mixin
    private OutputFolder output;

    @Option(
            names = "--guideline",
            paramLabel = "NAME",
            description =
                    "Rate nutrients by this guideline only, such as mlsn, penn-state, slan, umass, cornell, rutgers;"
                            + " default: for each value the usual one that is made for its extractant.")
    private @Nullable String guideline;

    @Option(
            names = "--nitrogen",
            paramLabel = "RATE",
            description = "Nitrogen of the season, from which the use of P and K follows; default 3lb/1000ft2.")
    private Dose nitrogen = new Dose(SoilOptions.USUAL.nitrogenGM2());

    @Mixin
    private LimeOptions lime;

    @Option(
            names = "--new-lawn",
            description = "Seeded or sodded: lime is worked in whole, and rates are those for it.")
    private boolean newLawn;

    @Option(names = "--state", paramLabel = "XX", description = "State whose phosphorus law is shown.")
    private @Nullable String state;

    @Option(
            names = "--tables",
            paramLabel = "DIR",
            description = "Folder with your own tables, named and built like the published ones.")
    private @Nullable Path tables;

    @Mixin
    private PageOptions pages;

    private boolean errors;

    @Override
    public Integer call() throws NotDone {
        SoilOptions options = options(tables == null ? SoilTables.published() : ownTables(tables));
        LabFile lab = LabFile.read(file);
        report(lab.problems(), file);
        if (lab.values().isEmpty()) {
            throw new NotDone("LAB_NOT_READ", file + " holds no value that can be used; nothing was written.");
        }
        SoilReport report = SoilReport.of(lab.values(), options);
        report(report.problems(), file);
        SoilFiles.of(report).forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add("soil.pdf", new SoilSheet(report, pages.sheets()).pdf());
        output.write();
        int samples = report.samples().size();
        spec.commandLine()
                .getOut()
                .println(samples + (samples == 1 ? " sample" : " samples") + " written to " + output.folder() + ".");
        return errors ? LoamlineCommand.INPUT_HAS_ERRORS : LoamlineCommand.OK;
    }

    private SoilTables ownTables(Path folder) throws NotDone {
        Read<SoilTables> read = TableFolder.read(folder);
        report(read.problems(), folder);
        return read.value()
                .orElseThrow(() -> new NotDone("TABLES_NOT_READ", folder + " cannot be read; nothing was written."));
    }

    private SoilOptions options(SoilTables chosen) {
        try {
            return new SoilOptions(
                    Optional.ofNullable(guideline),
                    nitrogen.gM2(),
                    newLawn,
                    Optional.ofNullable(state),
                    lime.chosen(chosen),
                    chosen);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private void report(List<Problem> problems, Path about) {
        problems.forEach(p -> spec.commandLine().getErr().println(p.line(about.toString())));
        errors |= problems.stream().anyMatch(Problem::isError);
    }
}
