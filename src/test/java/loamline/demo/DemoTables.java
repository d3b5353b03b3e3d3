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
        BEGINNINGS.put("lab", Sort.LAB);
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
            yard = yard.attaching(attachment(FOLDER.resolve("climate.csv")));
        }
        return yard;
    }

    private static List<Path> tables(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Attachment attachment(Path file) {
        String name = file.getFileName().toString();
        String stem = name.replaceFirst("\\.csv$", "");
        String beginning = BEGINNINGS.keySet().stream()
                .filter(stem::startsWith)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(file + " is of no known sort"));
        try {
            return Attachment.of(
                    BEGINNINGS.get(beginning), name, stem.substring(beginning.length()), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
