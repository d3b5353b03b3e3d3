package loamline.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.IntStream;

/** Earlier states of a file beside it: {@code name~1~} is the last one, up to {@code name~3~}. */
final class Backups {
    /** How many are kept: the last one, one in case that is bad too, and one more. */
    static final int COUNT = 3;

    private Backups() {}

    private static Path path(Path file, int number) {
        return file.resolveSibling(file.getFileName() + "~" + number + "~");
    }

    /** Those that are there, newest first. */
    static List<Path> of(Path file) {
        return IntStream.rangeClosed(1, COUNT)
                .mapToObj(number -> path(file, number))
                .filter(Files::isRegularFile)
                .toList();
    }

    /** Copies a file to its newest backup and gives up the oldest; the file itself stays. */
    static void keep(Path file) throws IOException {
        for (int number = COUNT - 1; number >= 1; number--) {
            if (Files.exists(path(file, number))) {
                Files.move(path(file, number), path(file, number + 1), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        AtomicFiles.write(path(file, 1), out -> Files.copy(file, out));
    }
}
