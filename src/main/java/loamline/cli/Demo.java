package loamline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.files.AtomicFiles;
import loamline.files.Read;
import loamline.files.YardFiles;
import loamline.files.ZoneFiles;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sheets.Paper;
import loamline.sheets.SheetOptions;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zones;

/** The demo without a window: every result of the two demo yards, written to a folder. */
public final class Demo {
    private static final List<String> YARDS = List.of("plover-court", "tansy-hill");
    private static final Path FOLDER = Path.of("target", "demo");

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
            try (InputStream in = Demo.class.getResourceAsStream("/loamline/maps/" + backdrop.file())) {
                byte[] bytes = in == null ? new byte[0] : in.readAllBytes();
                AtomicFiles.write(image, out -> out.write(bytes));
            }
            return yard.withBackdrop(Optional.of(backdrop.withFile(image.toString())));
        }
        return yard;
    }

    /** Writes the demo to {@code target/demo} and says where; gives the exit code. */
    public static int write(PrintWriter out, PrintWriter err) {
        try {
            for (String name : YARDS) {
                OutputFolder.write(FOLDER.resolve(name), results(read(name)));
            }
            Path plan = FOLDER.resolve(YARDS.get(0)).resolve("walk-plan.pdf");
            out.println("The demo's pages and files are in " + FOLDER.toAbsolutePath() + ".");
            out.println("Start with " + plan.toAbsolutePath() + ".");
            return LoamlineCommand.OK;
        } catch (NotDone | IOException e) {
            err.println("error demo " + e.getMessage());
            return LoamlineCommand.NOT_DONE;
        }
    }

    private static Yard read(String name) throws IOException {
        String resource = "/loamline/maps/" + name + ".loam.json";
        try (InputStream in = Demo.class.getResourceAsStream(resource)) {
            Read<Yard> read = YardFiles.read(Optional.ofNullable(in)
                    .orElseThrow(() -> new IOException(resource + " is not in the program; build it again")));
            return read.value().orElseThrow(() -> new IOException(resource + " cannot be read; build it again"));
        }
    }

    private static Map<String, byte[]> results(Yard yard) {
        CorePlan plan = CorePlanner.plan(yard, PlanOptions.USUAL);
        Map<String, byte[]> files = new LinkedHashMap<>();
        ZoneFiles.of(Zones.of(yard)).forEach((name, text) -> files.put(name, CoresOutput.utf8(text)));
        SheetOptions sheets = SheetOptions.usual(Paper.LETTER, UnitSystem.US, PageOptions.program());
        files.putAll(CoresOutput.files(yard, plan, sheets));
        return files;
    }
}
