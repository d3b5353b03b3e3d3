package loamline;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Starts the command line. */
    public static void main(String[] args) {
        System.exit(args.length == 0 ? 0 : 2);
    }
}
