package loamline.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;

/** The invented tables that a demo yard carries: those of its folder under {@code demo-data/}, and the climate. */
final class DemoTables {
    private static final Path FOLDER = Path.of("demo-data");

    /** What a table is, by how its name begins; what follows the beginning is what it is about. */
    private static final Map<String, Sort> BEGINNINGS = new LinkedHashMap<>();

    static {
        BEGINNINGS.put("cups-valve-", Sort.READINGS);
        BEGINNINGS.put("log", Sort.LOG);
        BEGINNINGS.put("products", Sort.PRODUCTS);
        BEGINNINGS.put("service", Sort.SERVICE);
        BEGINNINGS.put("targets", Sort.TARGETS);
        BEGINNINGS.put("climate", Sort.CLIMATE);
    }

    private DemoTables() {}

    static Yard attached(DemoYard demo) {
        Yard yard = demo.yard();
        Path own = FOLDER.resolve(demo.file());
        if (Files.isDirectory(own)) {
            for (Path table : tables(own)) {
                yard = yard.attaching(attachment(table));
            }
            for (String shared : List.of("lab/thistlewick.csv", "lab/mossgate.csv", "climate.csv")) {
                yard = yard.attaching(attachment(FOLDER.resolve(shared)));
            }
        }
        return yard;
    }

    private static List<Path> tables(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> isCarried(file.getFileName().toString()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A list under another name than its sort is one to try instead. */
    private static boolean isCarried(String name) {
        return name.endsWith(".csv") && !name.startsWith("service-");
    }

    private static Attachment attachment(Path file) {
        String name = file.getFileName().toString();
        String stem = name.replaceFirst("\\.csv$", "");
        if (file.getParent().endsWith("lab")) {
            return attachment(Sort.LAB, name, "", file);
        }
        String beginning = BEGINNINGS.keySet().stream()
                .filter(stem::startsWith)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(file + " is of no known sort"));
        Sort sort = BEGINNINGS.get(beginning);
        return attachment(sort, name, sort == Sort.READINGS ? stem.substring(beginning.length()) : "", file);
    }

    private static Attachment attachment(Sort sort, String name, String about, Path file) {
        try {
            return Attachment.of(sort, name, about, Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
