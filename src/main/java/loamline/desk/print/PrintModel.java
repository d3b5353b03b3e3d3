package loamline.desk.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import loamline.desk.session.Session;
import loamline.files.AtomicFiles;
import loamline.files.FileTrouble;
import loamline.scene.Palette;
import loamline.sheets.Paper;
import loamline.sheets.PdfImages;
import loamline.sheets.SheetOptions;
import loamline.yard.Backdrop;

/** What is chosen for the pages, the pages themselves, and their way into files. */
public final class PrintModel {
    /** Sharp enough to read a page on a screen that shows it whole. */
    private static final double PREVIEW_DPI = 110;

    private final Session session;
    private final String program;
    private final ObjectProperty<Paper> paper;
    private final ObjectProperty<Optional<LocalDate>> date = new SimpleObjectProperty<>(Optional.empty());
    private final BooleanProperty grey = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<List<BufferedImage>> pages = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private boolean looking;

    /** @param program name and version, for the foot of every page */
    public PrintModel(Session session, Paper usual, String program) {
        this.session = session;
        this.program = program;
        paper = new SimpleObjectProperty<>(usual);
        session.results().addListener((o, before, now) -> redraw());
        session.units().addListener((o, before, now) -> redraw());
        paper.addListener((o, before, now) -> redraw());
        date.addListener((o, before, now) -> redraw());
        grey.addListener((o, before, now) -> redraw());
    }

    /** Pages are drawn while somebody looks at them. */
    void look(boolean now) {
        looking = now;
        redraw();
    }

    private void redraw() {
        Optional<Printable> ready = printable();
        if (!looking || ready.isEmpty()) {
            pages.set(looking ? List.of() : pages.get());
            return;
        }
        session.work()
                .latest(
                        "pages",
                        "Drawing the pages",
                        () -> PdfImages.of(ready.get().walkPlan().pdf(), PREVIEW_DPI),
                        pages::set);
    }

    /** What can be printed now; empty while cores are being planned or where there are none. */
    Optional<Printable> printable() {
        return session.results()
                .get()
                .flatMap(results -> Printable.of(
                        results, options(), results.yard().backdrop().flatMap(PrintModel::image)));
    }

    private SheetOptions options() {
        SheetOptions usual = SheetOptions.usual(paper.get(), session.units().get(), program);
        SheetOptions coloured = grey.get() ? usual.with(Palette.PRINT.grey()) : usual;
        return date.get().map(coloured::with).orElse(coloured);
    }

    private static Optional<Path> image(Backdrop backdrop) {
        try {
            return Optional.of(Path.of(backdrop.file())).filter(Files::isRegularFile);
        } catch (InvalidPathException e) {
            return Optional.empty(); // named on another system
        }
    }

    /** A name to offer for a file. */
    String fileName(Output output) {
        return output.fileName(session.shown().get().name());
    }

    /** The same for anything else. */
    String fileName(String end) {
        return Output.fileName(session.shown().get().name(), end);
    }

    /** Makes a file in the background; it is replaced whole or not at all. */
    void save(Output output, Path file) {
        Optional<Printable> ready = printable();
        if (ready.isEmpty()) {
            said.set("There are no cores to print yet.");
            return;
        }
        write(output.title(), file, () -> output.bytes(ready.get()));
    }

    /** Makes pages in the background, as they are to be made now. */
    void save(String title, Path file, Function<SheetOptions, byte[]> pdf) {
        SheetOptions options = options();
        write(title, file, () -> pdf.apply(options));
    }

    private void write(String title, Path file, Bytes bytes) {
        said.set("");
        session.work()
                .latest("save " + title, "Writing " + file.getFileName(), () -> written(title, bytes, file), said::set);
    }

    /** What is written to a file. */
    private interface Bytes {
        byte[] get() throws IOException;
    }

    private static String written(String title, Bytes content, Path file) {
        try {
            byte[] bytes = content.get();
            AtomicFiles.write(file, out -> out.write(bytes));
            return title + " saved to " + file;
        } catch (IOException e) {
            return file + " " + FileTrouble.of(e).message();
        }
    }

    /** Says something, as why a file cannot be made. */
    void say(String words) {
        said.set(words);
    }

    public ObjectProperty<Paper> paper() {
        return paper;
    }

    /** The day that stands on the pages; empty leaves a line to fill in. */
    public ObjectProperty<Optional<LocalDate>> date() {
        return date;
    }

    /** Pages in shades of grey. */
    public BooleanProperty grey() {
        return grey;
    }

    /** The pages as they will come out; none while there is nothing to print. */
    ReadOnlyObjectProperty<List<BufferedImage>> pages() {
        return pages.getReadOnlyProperty();
    }

    /** What came of the last saving; blank at first. */
    public ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }
}
