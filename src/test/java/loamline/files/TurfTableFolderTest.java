package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loamline.reference.TurfTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A user's tables about turf in a folder. */
class TurfTableFolderTest {
    private static final String HEAD = "grass,region,use,low_lb,high_lb,status,source_id\n";

    @TempDir
    private Path folder;

    private Read<TurfTables> read(String table, String text) throws IOException {
        Files.writeString(folder.resolve(table), text);
        return TableFolder.turf(folder);
    }

    @Test
    void aRowOfTheUsersStandsBesideThePublishedOnes() throws IOException {
        Read<TurfTables> read = read("turf-nitrogen.csv", HEAD + "tall fescue,coast,any,2,3,ours,our-trial\n");
        assertThat(read.problems()).isEmpty();
        TurfTables tables = read.value().orElseThrow();
        assertThat(tables.rows("turf-nitrogen.csv"))
                .hasSize(TurfTables.published().rows("turf-nitrogen.csv").size() + 1);
        assertThat(tables.rows("turf-nitrogen.csv", tables.grass("TF").orElseThrow(), "coast"))
                .singleElement()
                .satisfies(row ->
                        assertThat(tables.origin(row).source().citation()).isEqualTo("your own table: our-trial"));
    }

    @Test
    void aBadRowIsToldByFileAndLineAndThePublishedTableIsUsed() throws IOException {
        Read<TurfTables> read = read(
                "turf-nitrogen.csv",
                HEAD + "tall fescue,coast,any,2,3,ours,our-trial\ntall fescue,hills,any,two,3,ours,our-trial\n");
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.isError()).isTrue();
            assertThat(problem.message())
                    .startsWith("turf-nitrogen.csv: line 3: low_lb should be a number of 0 or more, not “two”");
        });
        assertThat(read.value().orElseThrow().rows("turf-nitrogen.csv"))
                .isEqualTo(TurfTables.published().rows("turf-nitrogen.csv"));
    }

    @Test
    void tablesOfOtherNamesAreLeftAlone() throws IOException {
        assertThat(read("soil-ranges.csv", "nothing\n").problems()).isEmpty();
    }
}
