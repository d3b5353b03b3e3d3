package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFilesTest {
    @TempDir
    private Path folder;

    @Test
    void aNewFileAppearsWhole() throws IOException {
        AtomicFiles.write(folder.resolve("a"), "größer\n");
        assertThat(folder.resolve("a")).hasContent("größer\n");
        assertThat(names(folder)).containsExactly("a");
    }

    @Test
    void aFailedWriteLeavesTheOldFileAndNothingElse() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "old");
        assertThatThrownBy(() -> AtomicFiles.write(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("the disk is full");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage("the disk is full");
        assertThat(file).hasContent("old");
        assertThat(names(folder)).containsExactly("a");
    }

    @Test
    void theOldFileIsThereUntilTheNewOneIsComplete() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "old");
        AtomicFiles.write(file, out -> {
            out.write('n');
            out.flush();
            assertThat(file).hasContent("old");
        });
        assertThat(file).hasContent("n");
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path real = Files.writeString(folder.resolve("real"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), real);
        AtomicFiles.write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
    }

    @Test
    void permissionsAreKept() throws IOException {
        Path file = Files.writeString(folder.resolve("a"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        AtomicFiles.write(file, "new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
    }

    @Test
    void leftoversOfAKilledProgramAreNoObstacle() throws IOException {
        Files.writeString(folder.resolve(".loamline-0.tmp"), "half");
        AtomicFiles.write(folder.resolve("a"), "whole");
        assertThat(folder.resolve("a")).hasContent("whole");
        assertThat(folder.resolve(".loamline-0.tmp")).hasContent("half");
    }

    @Test
    void aFolderIsNotReplacedAndAMissingFolderIsNotMade() {
        assertThatThrownBy(() -> AtomicFiles.write(folder, "x"))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("is a folder");
        assertThatThrownBy(() -> AtomicFiles.write(folder.resolve("no/a"), "x"))
                .isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void aNewFolderAppearsWithAllItsFilesAndParents() throws IOException {
        Path target = folder.resolve("out/june");
        AtomicFolder.write(target, made -> {
            Files.writeString(made.resolve("zones.json"), "{}");
            Files.createDirectory(made.resolve("maps"));
            Files.writeString(made.resolve("maps/water.png"), "png");
            assertThat(target).doesNotExist();
        });
        assertThat(target.resolve("zones.json")).hasContent("{}");
        assertThat(target.resolve("maps/water.png")).hasContent("png");
        assertThat(names(folder.resolve("out"))).containsExactly("june");
    }

    @Test
    void aFolderThatIsThereKeepsWhatIsNotReplaced() throws IOException {
        Path target = Files.createDirectory(folder.resolve("out"));
        Files.createDirectory(target.resolve("maps"));
        Files.writeString(target.resolve("zones.json"), "old");
        Files.writeString(target.resolve("notes.txt"), "mine");
        Files.writeString(target.resolve("maps/mine.png"), "mine");
        AtomicFolder.write(target, made -> {
            Files.writeString(made.resolve("zones.json"), "new");
            Files.createDirectory(made.resolve("maps"));
            Files.writeString(made.resolve("maps/water.png"), "png");
        });
        assertThat(target.resolve("zones.json")).hasContent("new");
        assertThat(target.resolve("notes.txt")).hasContent("mine");
        assertThat(names(target.resolve("maps"))).containsExactly("mine.png", "water.png");
        assertThat(names(folder)).containsExactly("out");
    }

    @Test
    void aFolderThatCouldNotBeFilledChangesNothing() throws IOException {
        Path target = Files.createDirectory(folder.resolve("out"));
        Files.writeString(target.resolve("zones.json"), "old");
        assertThatThrownBy(() -> AtomicFolder.write(target, made -> {
                    Files.writeString(made.resolve("zones.json"), "new");
                    throw new IllegalStateException("no turf");
                }))
                .hasMessage("no turf");
        assertThat(target.resolve("zones.json")).hasContent("old");
        assertThat(names(folder)).containsExactly("out");
    }

    @Test
    void aFileInTheFoldersPlaceStays() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        assertThatThrownBy(() -> AtomicFolder.write(file, made -> {}))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("is a file");
        assertThat(file).hasContent("mine");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
