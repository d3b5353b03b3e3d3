package loamline.desk.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loamline.files.PlanFiles;
import loamline.files.ProjectFile;
import loamline.yard.Yard;

/**
 * A project as one file to pass on: the yard, its image beside it, the pages and every export. The same project gives
 * the same bytes; the entries carry no time.
 */
final class ProjectZip {
    /** The first moment that a ZIP can tell, ms since 1970; stands for "no time". */
    private static final long NO_TIME_MS = 315532800000L;

    private ProjectZip() {}

    static byte[] of(Printable printable) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files(printable).entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTime(NO_TIME_MS);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static Map<String, byte[]> files(Printable printable) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Optional<Path> image = printable.image();
        String imageName = image.map(path -> String.valueOf(path.getFileName())).orElse("");
        Yard yard = printable.yard();
        Yard packed = image.isPresent()
                ? yard.withBackdrop(yard.backdrop().map(backdrop -> backdrop.withFile(imageName)))
                : yard;
        files.put("yard" + ProjectFile.ENDING, Output.utf8(ProjectFile.write(packed)));
        if (image.isPresent()) {
            files.put(imageName, Files.readAllBytes(image.get()));
        }
        PlanFiles.of(printable.plan(), printable.yard().frame())
                .forEach((name, text) -> files.put(name, Output.utf8(text)));
        for (Output output : Output.values()) {
            if (output != Output.ZIP && output.refusal(printable).isEmpty()) {
                files.put(output.fileName(""), output.bytes(printable));
            }
        }
        return files;
    }
}
