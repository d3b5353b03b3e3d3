package loamline;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import loamline.cli.Demo;
import loamline.cli.LoamlineCommand;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs a command; without one, writes the demo. */
    public static void main(String[] args) {
        System.exit(args.length == 0 ? demo() : LoamlineCommand.run(args));
    }

    private static int demo() {
        PrintWriter out = new PrintWriter(System.out, true, Charset.defaultCharset());
        PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());
        return Demo.write(out, err);
    }
}
