package loamline.desk.log;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.desk.session.Results;
import loamline.desk.session.Session;
import loamline.desk.tables.TablesModel;
import loamline.files.LogFile;
import loamline.files.RawTable;
import loamline.sampling.CorePlan;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;

/**
 * The photos that the logs of the yard name. A log holds a name only, relative to the yard's folder; the picture stays
 * the file that it is, and one that is not there is told so.
 */
public final class PhotoModel {
    private static final String SAVE_FIRST = "Save the yard first: its photos are looked for in its folder.";

    private final Session session;
    private final TablesModel logs;
    private final Supplier<Optional<Path>> folder;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");

    /**
     * A photo of a core.
     *
     * @param name as the log has it
     * @param file where it is; empty if it is not there
     * @param lack why it is not seen; empty if it is there
     */
    record Photo(String core, String name, Optional<Path> file, String lack) {
        /** In words, for one without a picture. */
        String words() {
            return core + ": " + name + (lack.isEmpty() ? "" : ", " + lack);
        }
    }

    /** @param folder where the yard's file is; empty if it has none yet */
    PhotoModel(Session session, TablesModel logs, Supplier<Optional<Path>> folder) {
        this.session = session;
        this.logs = logs;
        this.folder = folder;
    }

    /** All photos, in the order of the logs and their rows. Looks whether the files are there. */
    List<Photo> photos() {
        Optional<Path> beside = folder.get();
        return session.history().get().now().attached(Sort.LOG).stream()
                .flatMap(table -> LogFile.parse(table.text()).value().stream())
                .flatMap(List::stream)
                .flatMap(row -> row.photos().stream().map(name -> photo(row.core(), name, beside)))
                .distinct()
                .toList();
    }

    private static Photo photo(String core, String name, Optional<Path> folder) {
        if (folder.isEmpty()) {
            return new Photo(core, name, Optional.empty(), "looked for once the yard is saved");
        }
        Optional<Path> file = inside(folder.get(), name);
        if (file.isEmpty()) {
            return new Photo(core, name, Optional.empty(), "no file in the yard’s folder has such a name");
        }
        return Files.isRegularFile(file.get())
                ? new Photo(core, name, file, "")
                : new Photo(core, name, Optional.empty(), "not in the yard’s folder");
    }

    /** A file by its relative name; empty if it would lie elsewhere. */
    private static Optional<Path> inside(Path folder, String name) {
        try {
            Path root = folder.toAbsolutePath().normalize();
            Path file = root.resolve(name.replace('\\', '/')).normalize();
            return file.startsWith(root) && !file.equals(root) ? Optional.of(file) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** The cores that a photo can be of, in the plan's order. */
    List<String> cores() {
        return session.results().get().flatMap(Results::plan).stream()
                .map(CorePlan::cores)
                .flatMap(List::stream)
                .map(CorePlan.PlannedCore::id)
                .toList();
    }

    /** Writes a photo's name into the open log, as one edit; {@link #said} tells why not. */
    void attach(String core, Path file) {
        Optional<Path> beside = folder.get();
        Optional<Attachment> log = logs.open().get();
        Optional<String> name = beside.flatMap(root -> relative(root, file));
        if (log.isEmpty()) {
            said.set("Begin a log first: a photo is named in a core’s row.");
        } else if (name.isEmpty()) {
            said.set(
                    beside.isEmpty()
                            ? SAVE_FIRST
                            : "Copy the photo into the yard’s folder first: the log keeps its name only.");
        } else {
            said.set("");
            logs.change(PhotoCells.with(RawTable.of(log.get().text()), core, name.get()));
        }
    }

    private static Optional<String> relative(Path folder, Path file) {
        Path root = folder.toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        return whole.startsWith(root)
                ? Optional.of(root.relativize(whole).toString().replace('\\', '/'))
                : Optional.empty();
    }

    /** Why a photo was not attached; empty if nothing went wrong. */
    ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }
}
