package loamline.cli;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** The program's root command. */
@Command(
        name = "loamline",
        description = "Map a yard, plan where to take soil cores, print the walk, see where water misses, where the sun"
                + " shines, what the cores showed and what the soil needs.",
        subcommands = {
            CheckCommand.class,
            ConvertCommand.class,
            ZonesCommand.class,
            CoresCommand.class,
            WaterCommand.class,
            CupsCommand.class,
            SunCommand.class,
            LogCommand.class,
            SoilCommand.class,
            SeasonCommand.class,
            HandoutCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND")
public final class LoamlineCommand {
    /** Done. */
    static final int OK = 0;

    /** Done, but the input has errors. */
    static final int INPUT_HAS_ERRORS = 1;

    /** Could not be done; nothing was written. */
    static final int NOT_DONE = 2;

    private LoamlineCommand() {}

    /** The program and its version, for title bars and the foot of pages. */
    public static String program() {
        return PageOptions.program();
    }

    /** Runs a command line on the program's own streams and gives the exit code. */
    public static int run(String... args) {
        Charset charset = Charset.defaultCharset();
        return run(new PrintWriter(System.out, true, charset), new PrintWriter(System.err, true, charset), args);
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new LoamlineCommand())
                .setOut(out)
                .setErr(err)
                .registerConverter(Metres.class, Metres::parse)
                .registerConverter(Step.class, Step::parse)
                .registerConverter(LocalDate.class, Dates::parse)
                .registerConverter(Dose.class, Dose::parse)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(LoamlineCommand::explain)
                .setExecutionExceptionHandler((e, line, parsed) -> failed(e, line))
                .execute(args);
    }

    private static int explain(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        command.getErr().println("error " + command.getCommandSpec().qualifiedName() + " ARGUMENTS " + e.getMessage());
        command.getErr()
                .println("Run \"" + command.getCommandSpec().qualifiedName() + " --help\" to see what it takes.");
        return NOT_DONE;
    }

    private static int failed(Exception e, CommandLine command) {
        String what = e instanceof NotDone
                ? e.getMessage()
                : "INTERNAL " + e + ". This is a fault of ours; please report it.";
        command.getErr().println("error " + command.getCommandSpec().qualifiedName() + " " + what);
        return NOT_DONE;
    }
}
