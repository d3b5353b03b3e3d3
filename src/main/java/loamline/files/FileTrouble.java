package loamline.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;

/** What the disk says, in words for a user. */
public final class FileTrouble {
    private FileTrouble() {}

    /** Why a file cannot be read as one, without opening it; empty if nothing speaks against it. */
    static Optional<Problem> beforeReading(Path file, long maxBytes) throws IOException {
        if (Files.isDirectory(file)) {
            return Optional.of(error("FILE_IS_FOLDER", "is a folder: name a file in it"));
        }
        if (!Files.exists(file)) {
            return Optional.of(error("FILE_NOT_FOUND", "is not there: check the name and the folder"));
        }
        if (!Files.isRegularFile(file)) {
            return Optional.of(error("FILE_NOT_REGULAR", "is a device or a pipe: save its content to a file first"));
        }
        long bytes = Files.size(file);
        if (bytes > maxBytes) {
            return Optional.of(error(
                    "FILE_TOO_LARGE",
                    "has " + (bytes >> 20) + " MB, which is no yard (at most " + (maxBytes >> 20)
                            + " MB): choose another, or export only what lies in the yard"));
        }
        return Optional.empty();
    }

    /** An exception in reading or writing as a problem of severity error. */
    public static Problem of(IOException e) {
        if (e instanceof AccessDeniedException) {
            return error("FILE_NO_PERMISSION", "may not be opened: change its permissions, or choose another place");
        }
        if (e instanceof NoSuchFileException) {
            return error("FILE_NOT_FOUND", "is not there: check the name and the folder");
        }
        Optional<String> reason = e instanceof FileSystemException f
                ? Optional.ofNullable(f.getReason())
                : Optional.ofNullable(e.getMessage());
        return error(
                "FILE_TROUBLE",
                reason.orElse(e.getClass().getSimpleName())
                        + ": see that the disk is there and has room, then try again");
    }

    private static Problem error(String code, String message) {
        return Problem.error(code, Where.WHOLE, message);
    }
}
