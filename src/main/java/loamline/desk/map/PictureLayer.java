package loamline.desk.map;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Group;
import javafx.scene.image.ImageView;
import javafx.util.Duration;
import loamline.desk.map.MapPicture.Ask;
import loamline.desk.map.MapPicture.Content;
import loamline.geometry.Box;
import loamline.geometry.Point;
import org.jspecify.annotations.Nullable;

/**
 * The yard's picture: snapshot, draw in the background, show. The near picture reaches beyond the window, so panning
 * moves it and seldom needs another; while a new one is drawn the last one is moved and scaled along. Under it lies
 * one of the whole yard, seen where the near one does not reach. Of several asks, only the latest is drawn.
 */
final class PictureLayer extends Group {
    /** How far a picture reaches beyond the window, as a share of the window. */
    private static final double OVERSCAN = 0.25;

    private static final double REST_MS = 300;

    /** Pixels of a picture, at most: 48 MB. A large, fine screen gets less margin. */
    private static final double MOST_PX = 12e6;

    private final PictureMaker maker = new PictureMaker();
    /** The picture of the whole yard waits until the map has been at rest for this long. */
    private final PauseTransition rest = new PauseTransition(Duration.millis(REST_MS));

    private final ImageView wholeView = new ImageView();
    private final ImageView nearView = new ImageView();
    private final AtomicReference<@Nullable Ask> wanted = new AtomicReference<>();
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "loamline map");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<MapPicture> near = Optional.empty();
    private Optional<MapPicture> whole = Optional.empty();
    private Optional<Ask> asked = Optional.empty();
    private Optional<Box> reach = Optional.empty();
    private Viewport window = new Viewport(new Point(0, 0), 1, 1, 1);
    private long oldest;
    private Runnable afterShown = () -> {};

    PictureLayer() {
        setManaged(false);
        setMouseTransparent(true);
        getChildren().addAll(wholeView, nearView);
    }

    /** Told whenever a new picture is shown. */
    void onShown(Runnable told) {
        afterShown = told;
    }

    /** Moves what is there, and asks for another picture if that does not do. */
    void show(long content, Viewport changed, double pixelScale, Content what, boolean inMotion) {
        window = changed;
        place();
        if (asked.filter(ask -> ask.serves(content, window, pixelScale)).isEmpty()) {
            boolean quick = inMotion || near.isEmpty(); // a first picture is to be there soon
            Ask ask = new Ask(content, window.grown(quick ? 0 : marginPx(pixelScale)), pixelScale, what);
            asked = Optional.of(ask);
            reach = inMotion ? Optional.empty() : reach(what);
            if (wanted.getAndSet(ask) == null) {
                drawing.execute(this::draw);
            }
        }
    }

    /** Forgets the pictures of another yard, and those of it that are still being drawn. */
    void clear(long content) {
        oldest = content;
        rest.stop();
        near = Optional.empty();
        whole = Optional.empty();
        asked = Optional.empty();
        wanted.set(null);
        place();
    }

    /** Whether what was asked for last is what is shown. */
    boolean isCurrent() {
        return asked.isPresent() && asked.equals(near.map(MapPicture::asked));
    }

    private double marginPx(double pixelScale) {
        double most = MOST_PX / (pixelScale * pixelScale);
        double side = Math.max(window.widthPx(), window.heightPx());
        double room = Math.sqrt(most) - Math.sqrt(window.widthPx() * window.heightPx());
        return Math.rint(Math.max(0, Math.min(OVERSCAN * side, room / 2)));
    }

    private static Optional<Box> reach(Content what) {
        return Extent.of(what.results().yard());
    }

    private void draw() {
        Ask ask = wanted.getAndSet(null);
        if (ask != null) {
            MapPicture drawn = MapPicture.of(ask, maker.draw(ask));
            Platform.runLater(() -> commit(drawn));
        }
    }

    private void commit(MapPicture drawn) {
        if (drawn.asked().content() < oldest) {
            return;
        }
        near = Optional.of(drawn);
        place();
        afterShown.run();
        boolean known = whole.filter(w -> w.asked().content() == drawn.asked().content())
                .isPresent();
        if (!known) {
            rest.setOnFinished(e -> reach.ifPresent(box -> drawing.execute(() -> drawWhole(drawn.asked(), box))));
            rest.playFromStart();
        }
    }

    private void drawWhole(Ask like, Box box) {
        if (wanted.get() == null) {
            Viewport all = Viewport.fitting(
                    box, like.viewport().widthPx(), like.viewport().heightPx());
            Ask ask = new Ask(like.content(), all, 1, like.what());
            MapPicture drawn = MapPicture.of(ask, maker.draw(ask));
            Platform.runLater(() -> {
                whole = Optional.of(drawn).filter(w -> ask.content() >= oldest);
                place();
            });
        }
    }

    private void place() {
        place(nearView, near);
        boolean covered = near.filter(n -> n.asked().viewport().covers(window)).isPresent();
        place(wholeView, covered ? Optional.empty() : whole);
    }

    private void place(ImageView view, Optional<MapPicture> picture) {
        view.setVisible(picture.isPresent());
        view.setImage(picture.map(MapPicture::image).orElse(null));
        picture.ifPresent(shown -> {
            Viewport was = shown.asked().viewport();
            double scale = was.metresPerPx() / window.metresPerPx();
            Point corner = was.ground(0, 0);
            boolean sameSize = scale == 1;
            double pixels = shown.asked().pixelScale();
            view.setSmooth(false); // scaled ones are seen for a moment only, and smoothing costs more than a frame
            view.setFitWidth(was.widthPx() * scale);
            view.setFitHeight(was.heightPx() * scale);
            view.setTranslateX(onPixel(window.xPx(corner), pixels, sameSize));
            view.setTranslateY(onPixel(window.yPx(corner), pixels, sameSize));
        });
    }

    /** A picture of the right size goes on whole device pixels: crisp, and copied rather than mixed. */
    private static double onPixel(double px, double pixelScale, boolean crisp) {
        return crisp ? Math.rint(px * pixelScale) / pixelScale : px;
    }
}
