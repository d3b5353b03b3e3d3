package loamline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import loamline.files.AtomicFolder;
import loamline.files.FileTrouble;
import picocli.CommandLine.Option;

/** The folder a command writes to: whole or not at all. */
final class OutputFolder {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Folder for the results; made if it is not there. Other files in it stay.")
    private Path folder;

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    void add(String name, byte[] bytes) {
        files.put(name, bytes);
    }

    Path folder() {
        return folder;
    }

    /** Writes all that was added. */
    void write() throws NotDone {
        write(folder, files);
    }

    static void write(Path folder, Map<String, byte[]> files) throws NotDone {
        try {
            AtomicFolder.write(folder, temporary -> {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Files.write(temporary.resolve(file.getKey()), file.getValue());
                }
            });
        } catch (IOException e) {
            throw new NotDone(
                    "OUTPUT_NOT_WRITTEN", folder + " " + FileTrouble.of(e).message());
        }
    }
}
