package loamline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A build must not be red by chance. */
class LawsTest {
    @Test
    void everyLawNamesItsSeed() throws IOException {
        List<String> laws = new ArrayList<>();
        try (var files = Files.walk(Path.of("src/test/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Files.readAllLines(file).stream()
                        .map(String::strip)
                        .filter(line -> line.startsWith("@Property"))
                        .forEach(laws::add);
            }
        }
        assertThat(laws).isNotEmpty().allMatch(line -> line.contains("seed = Laws.SEED"));
        assertThat(Laws.SEED).isNotEmpty();
    }
}
