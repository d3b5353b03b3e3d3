package loamline.desk.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringExpression;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import loamline.account.Problem;
import loamline.account.Severity;
import loamline.desk.session.Session;
import loamline.desk.store.Asking.Choice;
import loamline.desk.store.Asking.Question;
import loamline.desk.store.Asking.Sort;
import loamline.desk.store.Notices.About;
import loamline.desk.store.Notices.Action;
import loamline.files.FileTrouble;
import loamline.files.Fingerprint;
import loamline.files.ProjectFile;
import loamline.files.YardFiles;
import loamline.files.YardFiles.Format;
import loamline.place.Frame;
import loamline.yard.History;
import loamline.yard.Yard;

/**
 * Opens and saves the yard of a session. All methods are called on the screen's thread; reading is done in the
 * background, writing at once.
 *
 * <p>Case by case: a file that cannot be read changes nothing but a notice, with the place of the trouble and the
 * backup to open instead. An opened GeoJSON file is saved as GeoJSON while that keeps the yard whole; otherwise a
 * project file is offered. A file that another program changed since is written over only by one who says so.
 */
public final class Store {
    private static final Sort YARDS = new Sort("Yards", List.of("*.loam.json", "*.geojson", "*.json"));
    private static final Sort PROJECTS = new Sort("Yard projects", List.of("*.loam.json"));
    private static final Sort GEOJSON = new Sort("GeoJSON", List.of("*.geojson"));

    private final Session session;
    private final Asking asking;
    private final RecentFiles recent;
    private final Notices notices = new Notices();
    private final ReadOnlyObjectWrapper<YardFile> file = new ReadOnlyObjectWrapper<>(YardFile.NONE);
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final DiskWatch watch;

    /** @param onScreen runs something on the screen's thread */
    public Store(Session session, Home home, Asking asking, Later later, Consumer<Runnable> onScreen) {
        this.session = session;
        this.asking = asking;
        recent = new RecentFiles(home.state().resolve("recent.json"));
        watch = new DiskWatch(file, later, onScreen, this::changedOnDisk);
    }

    private enum Leave {
        SAVE,
        DISCARD,
        STAY
    }

    /** Whether the yard in the window may be given up; saves it first if that is what the user wants. */
    boolean mayLeave() {
        if (!session.history().get().isUnsaved()) {
            return true;
        }
        Leave leave = asking.ask(new Question<>(
                "Unsaved changes",
                "“" + name() + "” has changes that are not in its file. Save them first?",
                List.of(
                        new Choice<>(Leave.SAVE, "Save"),
                        new Choice<>(Leave.DISCARD, "Don’t save"),
                        new Choice<>(Leave.STAY, "Cancel")),
                Leave.STAY));
        return leave == Leave.DISCARD || (leave == Leave.SAVE && save());
    }

    /** An empty yard in the place of the one there was, which is saved first if the user wants. */
    public void newYard() {
        if (mayLeave()) {
            become(History.of(Yard.empty("", Frame.local())), YardFile.NONE);
        }
    }

    /** Opens what the user chooses. */
    public void open() {
        asking.fileToOpen(
                        "Open a yard",
                        YARDS,
                        file.get().path().map(path -> path.toAbsolutePath().getParent()))
                .ifPresent(this::open);
    }

    /** Opens a file; asks before unsaved changes are given up. */
    public void open(Path path) {
        read(path, opened -> {
            if (mayLeave()) {
                adopt(path, opened);
            }
        });
    }

    /** Opens the file again as it is on disk, or an empty yard where there is none; gives up changes. */
    void reopen() {
        file.get()
                .path()
                .ifPresentOrElse(
                        path -> read(path, opened -> adopt(path, opened)),
                        () -> become(History.of(Yard.empty("", Frame.local())), YardFile.NONE));
    }

    /** What came of reading a file, with what it held just before. */
    private record Opening(YardFile before, YardFiles.Opened opened) {}

    private void read(Path path, Consumer<Opening> then) {
        session.work()
                .latest(
                        "open",
                        "Opening " + YardFile.name(path),
                        () -> new Opening(YardFile.of(path, YardFile.now(path)), YardFiles.read(path)),
                        opening -> {
                            if (opening.opened().yard().isPresent()) {
                                then.accept(opening);
                            } else {
                                cannotOpen(path, opening.opened());
                            }
                        });
    }

    private void adopt(Path path, Opening opening) {
        notices.dismiss(About.OPENING);
        become(History.of(Backdrops.absolute(opening.opened().yard().orElseThrow(), path)), opening.before());
        remember(path);
        List<Problem> worse = opening.opened().problems().stream()
                .filter(problem -> problem.severity() != Severity.INFO)
                .toList();
        if (!worse.isEmpty()) {
            notices.show(About.OPENING, "Opened with problems. " + inWords(path, worse));
        }
    }

    private void cannotOpen(Path path, YardFiles.Opened opened) {
        Action[] actions = opened.backup().stream()
                .map(backup -> new Action("Open the backup " + YardFile.name(backup), () -> openBackup(path, backup)))
                .toArray(Action[]::new);
        notices.show(
                About.OPENING,
                "Could not open the file; your yard is as it was. " + inWords(path, opened.problems()),
                actions);
    }

    /** A backup in the place of its file: not saved, and saved under the file's name. */
    private void openBackup(Path path, Path backup) {
        read(backup, opening -> {
            if (mayLeave()) {
                Yard yard = opening.opened().yard().orElseThrow();
                become(
                        History.of(Backdrops.absolute(yard, path)).markedUnsaved(),
                        YardFile.of(path, YardFile.now(path)));
            }
        });
    }

    private static String inWords(Path path, List<Problem> problems) {
        return problems.stream()
                .limit(3)
                .map(problem -> YardFile.name(path) + problem.where().suffix() + ": " + problem.message() + ".")
                .collect(Collectors.joining(
                        " ", "", problems.size() > 3 ? " And " + (problems.size() - 3) + " more." : ""));
    }

    private void become(History history, YardFile from) {
        notices.dismiss(About.DISK);
        notices.dismiss(About.RECOVERY);
        file.set(from);
        session.open(history);
    }

    /** Takes up what a killed program left. */
    void resume(Snapshot left) {
        History history = History.of(left.yard());
        become(left.unsaved() ? history.markedUnsaved() : history, new YardFile(left.file(), left.known()));
        session.selection().set(left.selection());
        watch.look();
    }

    private enum Overwrite {
        ELSEWHERE,
        OVERWRITE,
        CANCEL
    }

    /** Saves the yard to its file, or asks for one; whether it is saved. */
    public boolean save() {
        Optional<Path> path = file.get().path().filter(p -> Format.of(p).isPresent());
        if (path.isEmpty() || !isKept(path.get())) {
            return saveAs();
        }
        Optional<Fingerprint> now = YardFile.now(path.get());
        if (now.isEmpty() || now.equals(file.get().known())) {
            return write(path.get());
        }
        Overwrite answer = asking.ask(new Question<>(
                "Changed by another program",
                "“" + YardFile.name(path.get()) + "” was changed on disk since it was opened here. Saving over it"
                        + " gives up those changes.",
                List.of(
                        new Choice<>(Overwrite.ELSEWHERE, "Save under another name …"),
                        new Choice<>(Overwrite.OVERWRITE, "Overwrite"),
                        new Choice<>(Overwrite.CANCEL, "Cancel")),
                Overwrite.CANCEL));
        return answer == Overwrite.OVERWRITE ? write(path.get()) : answer == Overwrite.ELSEWHERE && saveAs();
    }

    /** Saves the yard under a name the user chooses, and goes on with that file; whether it is saved. */
    public boolean saveAs() {
        return target("Save the yard as", suggested("")).map(this::write).orElse(false);
    }

    /** Writes a copy under a name the user chooses, and goes on with the file there was. */
    public void saveCopy() {
        target("Save a copy of the yard", suggested(" copy")).ifPresent(path -> {
            if (put(path).isPresent()) {
                said.set("A copy was saved to " + path);
                remember(path);
            }
        });
    }

    /** A name to begin with, beside the file there is. */
    private Path suggested(String more) {
        String plain = name().replaceFirst("(?i)\\.(loam\\.json|geojson|json)$", "");
        String safe = plain.replaceAll("[\\\\/:*?\"<>|\\p{Cntrl}]", "-");
        String named = safe + more + ProjectFile.ENDING;
        return file.get().path().map(path -> path.resolveSibling(named)).orElse(Path.of(named));
    }

    /** Where the user wants the yard, with an ending that keeps it whole. */
    private Optional<Path> target(String title, Path suggested) {
        return asking.fileToSave(title, List.of(PROJECTS, GEOJSON), suggested)
                .flatMap(path -> Format.of(path).isPresent() ? Optional.of(path) : withEnding(path))
                .filter(this::isKept);
    }

    /** The project file of a name without ending; nobody has asked yet whether that may be replaced. */
    private Optional<Path> withEnding(Path path) {
        Path project = path.resolveSibling(YardFile.name(path) + ProjectFile.ENDING);
        boolean free = !Files.exists(project)
                || asking.ask(new Question<>(
                        "Replace the file",
                        "“" + YardFile.name(project) + "” is there already. Replace it?",
                        List.of(new Choice<>(false, "Cancel"), new Choice<>(true, "Replace")),
                        false));
        return free ? Optional.of(project) : Optional.empty();
    }

    private boolean isKept(Path path) {
        boolean kept = YardFiles.keepsAll(
                session.history().get().now(), Format.of(path).orElseThrow());
        if (!kept) {
            notices.show(
                    About.SAVING,
                    YardFile.name(path) + " would not hold all of this yard. Save it as a project ("
                            + ProjectFile.ENDING + ") to keep everything.");
        }
        return kept;
    }

    private boolean write(Path path) {
        Optional<YardFile> written = put(path);
        written.ifPresent(to -> {
            file.set(to);
            session.markSaved();
            notices.dismiss(About.DISK);
            said.set("Saved to " + path);
            remember(path);
        });
        return written.isPresent();
    }

    private Optional<YardFile> put(Path path) {
        try {
            Yard yard = Backdrops.relative(session.history().get().now(), path);
            YardFile written = YardFile.of(path, Optional.of(YardFiles.write(yard, path)));
            notices.dismiss(About.SAVING);
            return Optional.of(written);
        } catch (IOException e) {
            notices.show(
                    About.SAVING,
                    "Could not save: " + path + " " + FileTrouble.of(e).message() + ".",
                    new Action("Save under another name …", this::saveAs));
            return Optional.empty();
        }
    }

    private void remember(Path path) {
        try {
            recent.add(path);
        } catch (IOException e) {
            said.set("The list of recent yards " + FileTrouble.of(e).message());
        }
    }

    /** Looks in the background whether another program changed the file; for when the window gets the focus. */
    public void lookAtDisk() {
        watch.look();
    }

    private void changedOnDisk(Path path, boolean gone) {
        boolean hadChanges = session.history().get().isUnsaved();
        String name = YardFile.name(path);
        if (gone) {
            session.markUnsaved();
            notices.show(
                    About.DISK,
                    "“" + name + "” is no longer on the disk. The yard in this window is all there is.",
                    new Action("Save it again", this::save));
            return;
        }
        Path mine = suggested(" (mine)");
        notices.show(
                About.DISK,
                "“" + name + "” was changed on disk by another program"
                        + (hadChanges ? ", and has changes here that are not saved." : "."),
                new Action(hadChanges ? "Reload, giving up the changes here" : "Reload", this::reopen),
                new Action("Keep mine", session::markUnsaved),
                new Action(
                        "Save mine as “" + YardFile.name(mine) + "” …",
                        () -> target("Save mine", mine).ifPresent(this::write)));
    }

    /** What the yard is called: its file, else its own name. */
    public String name() {
        String own = session.history().get().now().name();
        return file.get().name().orElse(own.isBlank() ? "New yard" : own);
    }

    /** The window's title: the yard's file, with a mark while it has changes that are not saved. */
    public StringExpression title() {
        return Bindings.createStringBinding(
                () -> (session.history().get().isUnsaved() ? "• " : "") + name() + " – Loamline",
                session.history(),
                file);
    }

    ReadOnlyObjectProperty<YardFile> file() {
        return file.getReadOnlyProperty();
    }

    /** The file of the yard in the window; empty for one that was never saved. */
    public Optional<Path> path() {
        return file.get().path();
    }

    public RecentFiles recent() {
        return recent;
    }

    public Notices notices() {
        return notices;
    }

    /** What was done last, for the foot. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }
}
