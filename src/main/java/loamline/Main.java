package loamline;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import loamline.cli.Demo;
import loamline.cli.LoamlineCommand;
import loamline.desk.DeskApp;
import loamline.files.YardFiles;
import loamline.yard.Yard;

/** Where the program starts: a command, or the window on a yard or on the demo. */
public final class Main {
    private static final int OK = 0;
    private static final int NOT_DONE = 2;

    private final PrintWriter out = new PrintWriter(System.out, true, Charset.defaultCharset());
    private final PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());

    private Main() {}

    /** Runs a command; opens the window on a yard file; without an argument, opens the demo yard. */
    public static void main(String[] args) {
        System.exit(new Main().run(args));
    }

    private int run(String... args) {
        if (args.length == 0) {
            return demo();
        }
        boolean yardFile = args.length == 1 && Files.isRegularFile(Path.of(args[0]));
        return yardFile ? open(Path.of(args[0])) : LoamlineCommand.run(args);
    }

    private int demo() {
        try {
            Optional<String> trouble = window(Demo.yard(), Optional.empty());
            trouble.ifPresent(why -> out.println(why + " The demo is written to files."));
            return trouble.isPresent() ? Demo.write(out, err) : OK;
        } catch (IOException e) {
            err.println("error demo " + e.getMessage());
            return NOT_DONE;
        }
    }

    private int open(Path file) {
        YardFiles.Opened opened = YardFiles.read(file);
        opened.problems().forEach(problem -> err.println(problem.line(file.toString())));
        if (opened.yard().isEmpty()) {
            return NOT_DONE;
        }
        Optional<String> trouble = window(opened.yard().get(), Optional.of(file));
        trouble.ifPresent(why -> err.println("error " + file + " NO_WINDOW " + why
                + " Without a window, run \"loamline cores " + file + " --out DIR\"."));
        return trouble.isPresent() ? NOT_DONE : OK;
    }

    /** Opens the window and waits until it is closed; says why if there can be none. */
    private static Optional<String> window(Yard yard, Optional<Path> file) {
        if (GraphicsEnvironment.isHeadless()) {
            return Optional.of("There is no display here.");
        }
        try {
            DeskApp.open(yard, file, LoamlineCommand.program());
            return Optional.empty();
        } catch (UnsupportedOperationException e) {
            return Optional.of("The window cannot be opened (" + e.getMessage() + ").");
        }
    }
}
