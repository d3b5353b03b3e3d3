package loamline.desk.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A recovery file that one running program has to itself, held by a lock beside it.
 *
 * <p>The system gives the lock back whenever the program ends, however it ends. A free slot whose recovery file is
 * still there was left by a program that did not end cleanly.
 */
final class Slot {
    /** Programs that may run at once with a recovery file each. */
    private static final int MOST = 32;

    private final Path file;
    private final FileChannel channel;

    private Slot(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes a free slot, one that was left behind if there is any.
     *
     * @return empty if all are taken
     * @throws IOException if the folder cannot be used
     */
    static Optional<Slot> claim(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        for (int number = 1; number <= MOST; number++) {
            files.add(folder.resolve("yard-" + number + ".loam.json"));
        }
        files.sort(Comparator.comparing(file -> !Files.exists(file)));
        for (Path file : files) {
            Optional<Slot> slot = tryClaim(file);
            if (slot.isPresent()) {
                return slot;
            }
        }
        return Optional.empty();
    }

    private static Optional<Slot> tryClaim(Path file) throws IOException {
        FileChannel channel = FileChannel.open(
                file.resolveSibling(file.getFileName() + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new Slot(file, channel));
            }
        } catch (OverlappingFileLockException e) {
            // taken by another window of this program
        }
        channel.close();
        return Optional.empty();
    }

    Path file() {
        return file;
    }

    boolean wasLeftBehind() {
        return Files.exists(file);
    }

    /** Puts a recovery file that cannot be read out of the way, and says where it is now. */
    Path setAside() throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".damaged");
        return Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Gives the slot back with its file, as a program does that is killed. */
    void release() throws IOException {
        channel.close();
    }

    /** Gives the slot back and removes the file: the program ends cleanly. */
    void end() throws IOException {
        Files.deleteIfExists(file);
        release();
    }
}
