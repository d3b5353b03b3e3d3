package loamline.files;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Output folders that are written whole or not at all.
 *
 * <p>The files are made in a hidden folder beside the target. If making them fails, nothing has changed. Then:
 *
 * <ul>
 *   <li>A target that is not there appears in one step, complete. Parent folders are made.
 *   <li>Into a folder that is there, the files are moved one by one in the order of their names, each replacing
 *       an older one of its name in one step. Files of other names stay. Whatever stops the program in between,
 *       every file is either old or new, none is half written.
 * </ul>
 */
public final class AtomicFolder {
    private AtomicFolder() {}

    /** Something that fills an empty folder. */
    @FunctionalInterface
    public interface Filler {
        void fill(Path folder) throws IOException;
    }

    /**
     * Writes a folder.
     *
     * @throws IOException if it cannot be written, if the filler throws it, or if a file has the target's name
     */
    public static void write(Path target, Filler filler) throws IOException {
        Path folder = target.toAbsolutePath().normalize();
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FileSystemException(target.toString(), null, "is a file, not a folder");
        }
        Path parent = AtomicFiles.folderOf(folder);
        Files.createDirectories(parent);
        Path temporary = AtomicFiles.fresh(parent, path -> Files.createDirectory(path));
        try {
            filler.fill(temporary);
            for (Path made : inside(temporary)) {
                AtomicFiles.sync(made);
            }
            if (Files.exists(folder)) {
                moveEach(temporary, folder);
            } else {
                Files.move(temporary, folder, StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            delete(temporary);
        }
        AtomicFiles.sync(parent);
    }

    private static void moveEach(Path from, Path to) throws IOException {
        for (Path made : inside(from)) {
            Path target = to.resolve(from.relativize(made));
            if (Files.isDirectory(made)) {
                Files.createDirectories(target);
            } else {
                Files.move(made, target, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        AtomicFiles.sync(to);
    }

    /** Everything in a folder, by name, folders before what they hold. */
    private static List<Path> inside(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !path.equals(folder)).sorted().toList();
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        for (Path left :
                inside(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
            Files.delete(left);
        }
        Files.delete(folder);
    }
}
