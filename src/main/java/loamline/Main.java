package loamline;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import loamline.cli.Demo;
import loamline.cli.LoamlineCommand;
import loamline.desk.DeskApp;
import loamline.desk.store.Home;
import loamline.files.YardFiles;
import loamline.place.Frame;
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
        CompletableFuture<Optional<Yard>> first = CompletableFuture.supplyAsync(this::demoYard);
        Optional<String> trouble = window(first, Optional.empty());
        if (first.join().isEmpty()) {
            return NOT_DONE;
        }
        trouble.ifPresent(why -> out.println(why + " The demo is written to files."));
        return trouble.isPresent() ? Demo.write(out, err) : OK;
    }

    private Optional<Yard> demoYard() {
        try {
            return Optional.of(Demo.laidOut(Home.ofUser().state().resolve("demo")));
        } catch (IOException e) {
            err.println("error demo " + e.getMessage());
            return Optional.empty();
        }
    }

    /** The window reads the file and says what is wrong with it; without a window this does. */
    private int open(Path file) {
        Yard nothing = Yard.empty("", Frame.local());
        Optional<String> trouble = window(CompletableFuture.completedFuture(Optional.of(nothing)), Optional.of(file));
        trouble.ifPresent(why -> {
            YardFiles.read(file).problems().forEach(problem -> err.println(problem.line(file.toString())));
            err.println("error " + file + " NO_WINDOW " + why + " Without a window, run \"loamline cores " + file
                    + " --out DIR\".");
        });
        return trouble.isPresent() ? NOT_DONE : OK;
    }

    /** Opens the window, the yard being read meanwhile, and waits until it is closed; says why if there can be none. */
    private static Optional<String> window(CompletableFuture<Optional<Yard>> first, Optional<Path> file) {
        if (GraphicsEnvironment.isHeadless()) {
            return Optional.of("There is no display here.");
        }
        try {
            DeskApp.open(first, file, LoamlineCommand.program());
            return Optional.empty();
        } catch (UnsupportedOperationException e) {
            return Optional.of("The window cannot be opened (" + e.getMessage() + ").");
        }
    }
}
