package loamline.desk.map;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import loamline.desk.session.Session;
import loamline.files.ImageOverview;
import loamline.files.ImagePixels;
import loamline.files.ImageTiles;
import loamline.yard.Backdrop;

/** Finds and reads the image under the yard: an overview first if it is large, then all of it. */
public final class BackdropSource {
    private static final String SORT = "image";

    /**
     * How far the image is.
     *
     * @param pixels what can be drawn of it
     * @param trouble why there is nothing to draw, in a sentence; blank if all is well
     * @param path where it was looked for; empty if the yard has no image
     */
    public record State(Optional<ImagePixels> pixels, String trouble, Optional<Path> path) {
        static final State NONE = new State(Optional.empty(), "", Optional.empty());
    }

    private final Session session;
    private final ObjectProperty<Optional<Path>> folder = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);

    BackdropSource(Session session) {
        this.session = session;
        session.shown().addListener((o, before, now) -> look());
        folder.addListener((o, before, now) -> look());
        look();
    }

    /** The folder that the yard's file lies in, from which its image is named; empty for a yard without a file. */
    public ObjectProperty<Optional<Path>> folder() {
        return folder;
    }

    public ReadOnlyObjectProperty<State> state() {
        return state.getReadOnlyProperty();
    }

    /** Where an image is, as a yard names it. */
    static Optional<Path> resolved(Optional<Path> folder, String file) {
        try {
            Path named = Path.of(file);
            return Optional.of(folder.map(f -> f.resolve(named))
                    .orElse(named)
                    .toAbsolutePath()
                    .normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void look() {
        Optional<Path> wanted = session.shown()
                .get()
                .backdrop()
                .map(Backdrop::file)
                .filter(file -> !file.isBlank())
                .flatMap(file -> resolved(folder.get(), file));
        if (!wanted.equals(state.get().path())) {
            become(new State(Optional.empty(), "", wanted));
            wanted.ifPresent(this::read);
        }
    }

    /** Looks for the image again where it was missing. */
    public void again() {
        state.get().path().ifPresent(this::read);
    }

    private void read(Path image) {
        String name = String.valueOf(image.getFileName());
        if (!Files.isRegularFile(image)) {
            become(new State(Optional.empty(), "The image " + name + " is not there: " + image, Optional.of(image)));
            return;
        }
        session.work().latest(SORT, "Looking at " + name, () -> overview(image), seen -> {
            arrived(seen);
            if (seen.trouble().isEmpty()) {
                readAll(image, name);
            }
        });
    }

    private void readAll(Path image, String name) {
        session.work()
                .latest(
                        SORT,
                        "Reading " + name,
                        "Read it again",
                        progress -> tiles(image, progress::at),
                        this::arrived);
    }

    private static State overview(Path image) {
        try {
            return new State(ImageOverview.read(image).map(ImagePixels.class::cast), "", Optional.of(image));
        } catch (IOException e) {
            return broken(image, e);
        }
    }

    private static State tiles(Path image, DoubleConsumer progress) {
        try {
            return new State(Optional.of(ImageTiles.read(image, progress)), "", Optional.of(image));
        } catch (IOException e) {
            return broken(image, e);
        }
    }

    private static State broken(Path image, IOException why) {
        String words = "The image " + image.getFileName() + " " + why.getMessage();
        return new State(Optional.empty(), words, Optional.of(image));
    }

    /** Takes what was read, unless another image is wanted by now. */
    private void arrived(State read) {
        if (read.path().equals(state.get().path())) {
            become(read);
        } else {
            read.pixels().ifPresent(BackdropSource::close);
        }
    }

    private void become(State next) {
        Optional<ImagePixels> old = state.get().pixels();
        state.set(next);
        old.filter(pixels -> !next.pixels().equals(old)).ifPresent(BackdropSource::close);
    }

    private static void close(ImagePixels pixels) {
        if (pixels instanceof ImageTiles tiles) {
            try {
                tiles.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
