package loamline.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * Files that are replaced whole or not at all.
 *
 * <p>The bytes go to a hidden file in the same folder, are brought to the disk, and take the target's name in
 * one step; then the folder is brought to the disk. Whatever stops the program in between, the target holds
 * either all of the old or all of the new. A target that is a link stays one: the file it points to is
 * replaced. Permissions of an old file are kept. Parent folders must be there.
 */
public final class AtomicFiles {
    /** Names tried for the hidden file; those of killed programs may lie about. */
    private static final int MAX_TEMPORARY_NAMES = 1000;

    private AtomicFiles() {}

    /** Something that writes a file's bytes. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes a text as UTF-8. */
    public static void write(Path target, String text) throws IOException {
        write(target, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * Writes a file.
     *
     * @throws IOException if it cannot be written, or if the content throws it; the old file is then untouched
     */
    public static void write(Path target, Content content) throws IOException {
        Path file = replaceable(target);
        Path folder = folderOf(file);
        Path temporary = fresh(folder, path -> Files.createFile(path));
        try {
            fill(temporary, content);
            keepPermissions(file, temporary);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
        sync(folder);
    }

    private static Path replaceable(Path target) throws IOException {
        Path file = Files.isSymbolicLink(target) ? target.toRealPath() : target.toAbsolutePath();
        if (Files.isDirectory(file)) {
            throw new FileSystemException(target.toString(), null, "is a folder");
        }
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw new AccessDeniedException(target.toString());
        }
        return file;
    }

    static Path folderOf(Path absolute) throws IOException {
        Path folder = absolute.getParent();
        if (folder == null) {
            throw new FileSystemException(absolute.toString(), null, "is a file system, not a file");
        }
        return folder;
    }

    interface Maker {
        void make(Path path) throws IOException;
    }

    /** Makes something under a hidden name that is free. */
    static Path fresh(Path folder, Maker maker) throws IOException {
        for (int i = 0; i < MAX_TEMPORARY_NAMES; i++) {
            Path path = folder.resolve(".loamline-" + i + ".tmp");
            try {
                maker.make(path);
                return path;
            } catch (FileAlreadyExistsException taken) {
                // the next name
            }
        }
        throw new FileSystemException(folder.toString(), null, "is full of .loamline-*.tmp files; remove them");
    }

    private static void fill(Path file, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (old != null && Files.exists(from)) {
            Files.setPosixFilePermissions(to, old.readAttributes().permissions());
        }
    }

    /** Brings a file or a folder to the disk; systems that cannot do so for a folder are left to themselves. */
    static void sync(Path path) throws IOException {
        boolean isFolder = Files.isDirectory(path);
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            if (!isFolder) {
                throw e;
            }
        }
    }
}
