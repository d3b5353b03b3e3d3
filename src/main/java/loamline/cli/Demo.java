package loamline.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.files.AtomicFiles;
import loamline.files.Read;
import loamline.files.YardFiles;
import loamline.yard.Backdrop;
import loamline.yard.Yard;

/** The demo yards, and without a window all that is computed from them, written to a folder. */
public final class Demo {
    private static final List<String> YARDS = List.of("plover-court", "tansy-hill");
    private static final Path FOLDER = Path.of("target", "demo");
    private static final String RESOURCES = "/loamline/maps/";
    private static final String PROJECT = ".loam.json";

    /** What is run on each yard, each into a folder of its name. */
    private static final List<List<String>> COMMANDS = List.of(
            List.of("zones"),
            List.of("cores"),
            List.of("water"),
            List.of("sun", "--dates", "2027-06-21"),
            List.of("handout"));

    private Demo() {}

    /** The first demo yard. */
    public static Yard yard() throws IOException {
        return read(YARDS.get(0));
    }

    /**
     * The first demo yard with its image on disk, where the window finds it.
     *
     * @param folder where to lay the image; made if it is not there
     */
    public static Yard laidOut(Path folder) throws IOException {
        Yard yard = yard();
        Files.createDirectories(folder);
        for (Backdrop backdrop : yard.backdrop().stream().toList()) {
            Path image = folder.resolve(backdrop.file()).toAbsolutePath();
            copy(backdrop.file(), image);
            return yard.withBackdrop(Optional.of(backdrop.withFile(image.toString())));
        }
        return yard;
    }

    /** Lays the demo yards out in {@code target/demo}, runs the commands on them and says where; gives the exit code. */
    public static int write(PrintWriter out, PrintWriter err) {
        try {
            for (String name : YARDS) {
                Path folder = FOLDER.resolve(name);
                Path yard = folder.resolve(name + PROJECT);
                Files.createDirectories(folder);
                copy(name + PROJECT, yard);
                for (Backdrop image : read(name).backdrop().stream().toList()) {
                    copy(image.file(), folder.resolve(image.file()));
                }
                for (List<String> words : COMMANDS) {
                    run(words, yard, folder.resolve(words.get(0)));
                }
            }
            Path plan = FOLDER.resolve(YARDS.get(0)).resolve("handout").resolve("walk-plan.pdf");
            out.println("The demo's yards, pages and files are in " + FOLDER.toAbsolutePath() + ".");
            out.println("Start with " + plan.toAbsolutePath() + ".");
            return LoamlineCommand.OK;
        } catch (IOException e) {
            err.println("error demo " + e.getMessage());
            return LoamlineCommand.NOT_DONE;
        }
    }

    private static void run(List<String> words, Path yard, Path folder) throws IOException {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(yard.toString(), "--out", folder.toString()));
        StringWriter said = new StringWriter();
        PrintWriter quiet = new PrintWriter(said, true);
        if (LoamlineCommand.run(quiet, quiet, all.toArray(String[]::new)) == LoamlineCommand.NOT_DONE) {
            throw new IOException(words.get(0) + " could not be done: " + said);
        }
    }

    private static void copy(String name, Path to) throws IOException {
        byte[] bytes = bytes(name);
        AtomicFiles.write(to, stream -> stream.write(bytes));
    }

    private static byte[] bytes(String name) throws IOException {
        try (InputStream in = Demo.class.getResourceAsStream(RESOURCES + name)) {
            if (in == null) {
                throw new IOException(RESOURCES + name + " is not in the program; build it again");
            }
            return in.readAllBytes();
        }
    }

    private static Yard read(String name) throws IOException {
        Read<Yard> read = YardFiles.read(new ByteArrayInputStream(bytes(name + PROJECT)));
        return read.value().orElseThrow(() -> new IOException(name + PROJECT + " cannot be read; build it again"));
    }
}
