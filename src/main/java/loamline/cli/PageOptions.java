package loamline.cli;

import java.time.LocalDate;
import java.util.Optional;
import loamline.sheets.Paper;
import loamline.sheets.SheetOptions;
import loamline.units.UnitSystem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How pages are printed. */
final class PageOptions {
    @Option(names = "--paper", paramLabel = "letter|a4", description = "Paper of the pages; default letter.")
    private Paper paper = Paper.LETTER;

    @Option(names = "--units", paramLabel = "us|metric", description = "Units on the pages; default us.")
    private UnitSystem units = UnitSystem.US;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "Date of the visit, printed on the pages; left blank to fill in if not given.")
    private @Nullable LocalDate date;

    SheetOptions sheets() {
        SheetOptions options = SheetOptions.usual(paper, units, program());
        return Optional.ofNullable(date).map(options::with).orElse(options);
    }

    /** The program and its version, for the foot of a page. */
    static String program() {
        return "Loamline " + Version.number();
    }
}
