package loamline;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import loamline.cli.Demo;
import loamline.cli.LoamlineCommand;
import loamline.desk.DeskApp;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs a command; without one, opens the demo yard, or writes its pages where there is no display. */
    public static void main(String[] args) {
        System.exit(args.length == 0 ? demo() : LoamlineCommand.run(args));
    }

    private static int demo() {
        PrintWriter out = new PrintWriter(System.out, true, Charset.defaultCharset());
        PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());
        if (GraphicsEnvironment.isHeadless()) {
            out.println("There is no display here, so the demo is written to files.");
            return Demo.write(out, err);
        }
        try {
            DeskApp.open(Demo.yard(), LoamlineCommand.program());
            return 0;
        } catch (IOException e) {
            err.println("error demo " + e.getMessage());
            return 2;
        } catch (UnsupportedOperationException e) {
            out.println("The window cannot be opened (" + e.getMessage() + "), so the demo is written to files.");
            return Demo.write(out, err);
        }
    }
}
