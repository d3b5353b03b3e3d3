package loamline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loamline.account.Problem;
import loamline.files.YardFiles;
import loamline.yard.Yard;
import loamline.yard.YardCheck;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The yard a command works on, and the report of what is wrong with it. */
final class YardInput {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "YARD", description = "A yard: *.loam.json or *.geojson.")
    private Path file;

    private final List<Problem> problems = new ArrayList<>();

    /**
     * Reads the yard.
     *
     * @throws NotDone if it cannot be used at all; its problems have been reported
     */
    Yard read() throws NotDone {
        YardFiles.Opened opened = YardFiles.read(file);
        report(opened.problems());
        Yard yard = opened.yard()
                .orElseThrow(
                        () -> new NotDone("YARD_NOT_READ", file + " cannot be used as a yard; nothing was written."));
        report(YardCheck.of(yard));
        return yard;
    }

    /** Lists problems, one a line. */
    void report(List<Problem> more) {
        report(file, more);
    }

    /** Lists problems of another file that the command reads. */
    void report(Path other, List<Problem> more) {
        more.forEach(problem -> spec.commandLine().getErr().println(problem.line(other.toString())));
        problems.addAll(more);
    }

    /** 0, or 1 if a problem of severity error was reported. */
    int exitCode() {
        return problems.stream().anyMatch(Problem::isError) ? LoamlineCommand.INPUT_HAS_ERRORS : LoamlineCommand.OK;
    }

    /** Says something on standard output. */
    void say(String line) {
        spec.commandLine().getOut().println(line);
    }
}
