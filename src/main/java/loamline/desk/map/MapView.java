package loamline.desk.map;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.sheets.Fonts;
import loamline.units.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The map: snapshot, draw in the background, show. While a picture is being drawn the last one is moved and scaled
 * with the view, and the selection is drawn on top at once.
 */
public final class MapView extends Region {
    private static final double ZOOM_STEP = 1.25;
    private static final double PAN_STEP_PX = 60;
    private static final double PICK_REACH_PX = 12;
    private static final double HALO_PX = 15;

    /** Pixels the mouse may slip in a click. */
    private static final double CLICK_SLIP_PX = 4;

    private final Session session;
    private final Canvas canvas = new Canvas();
    private final Fonts fonts = new Fonts();
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "loamline map");
        thread.setDaemon(true);
        return thread;
    });
    private Palette palette = Palette.LIGHT;
    private Viewport viewport = new Viewport(new Point(0, 0), 0.1, 1, 1);
    private @Nullable MapPicture picture;
    private volatile long asked;
    private boolean fitted;
    private double pressedX;
    private double pressedY;
    private double draggedX;
    private double draggedY;

    public MapView(Session session) {
        this.session = session;
        getStyleClass().add("map");
        getChildren().add(canvas);
        setFocusTraversable(true);
        setAccessibleText("Map of the yard");
        session.results().addListener((o, before, now) -> {
            fitted = fitted && now.isPresent();
            refresh();
        });
        session.units().addListener((o, before, now) -> refresh());
        session.selection().addListener((o, before, now) -> show());
        addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        addEventHandler(KeyEvent.KEY_PRESSED, this::keyed);
    }

    public void setPalette(Palette changed) {
        palette = changed;
        refresh();
    }

    /** Shows the whole yard. */
    public void fit() {
        Optional<Box> box =
                session.results().get().flatMap(results -> results.yard().box());
        if (box.isPresent() && getWidth() > 0 && getHeight() > 0) {
            viewport = Viewport.fitting(box.get(), getWidth(), getHeight());
            fitted = true;
            refresh();
        }
    }

    /** Brings a place to the middle, at the scale there is. */
    public void centreOn(Point place) {
        change(new Viewport(place, viewport.metresPerPx(), viewport.widthPx(), viewport.heightPx()));
    }

    void zoom(double factor) {
        change(viewport.zoomed(factor, getWidth() / 2, getHeight() / 2));
    }

    private void change(Viewport changed) {
        viewport = changed;
        refresh();
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            viewport = viewport.resized(Math.max(1, getWidth()), Math.max(1, getHeight()));
            refresh();
        }
    }

    /** Asks for a picture of what is to be seen now, and shows the last one meanwhile. */
    private void refresh() {
        Optional<Results> results = session.results().get();
        if (results.isPresent() && !fitted) {
            fit();
            return;
        }
        show();
        if (results.isEmpty() || getWidth() < 1 || getHeight() < 1) {
            return;
        }
        long ticket = asked + 1;
        asked = ticket;
        Viewport wanted = viewport;
        Palette colours = palette;
        var units = session.units().get();
        double pixels = getScene() == null ? 1 : getScene().getWindow().getOutputScaleX();
        drawing.execute(() -> draw(ticket, results.get(), wanted, colours, units, pixels));
    }

    private void draw(long ticket, Results results, Viewport wanted, Palette colours, UnitSystem units, double pixels) {
        if (ticket == asked) {
            MapPicture drawn = MapPicture.of(results, wanted, colours, units, pixels, fonts);
            Platform.runLater(() -> {
                picture = drawn;
                show();
            });
        }
    }

    /** Paints the canvas: the last picture where it belongs by now, and the selection. */
    private void show() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        var paper = palette.of(Role.PAPER);
        g.setFill(Color.rgb(paper.red(), paper.green(), paper.blue()));
        g.fillRect(0, 0, getWidth(), getHeight());
        MapPicture last = picture;
        if (last != null) {
            Viewport was = last.viewport();
            Point corner = was.ground(0, 0);
            double scale = was.metresPerPx() / viewport.metresPerPx();
            g.drawImage(
                    last.image(),
                    viewport.xPx(corner),
                    viewport.yPx(corner),
                    was.widthPx() * scale,
                    was.heightPx() * scale);
        }
        showSelection(g);
    }

    private void showSelection(GraphicsContext g) {
        session.results().get().flatMap(this::selectedPlace).ifPresent(at -> {
            var select = palette.of(Role.SELECT);
            g.setStroke(Color.rgb(select.red(), select.green(), select.blue()));
            g.setLineWidth(3);
            g.strokeOval(viewport.xPx(at) - HALO_PX, viewport.yPx(at) - HALO_PX, 2 * HALO_PX, 2 * HALO_PX);
        });
    }

    private Optional<Point> selectedPlace(Results results) {
        String id = session.selection().get().core();
        return results.plan().stream()
                .flatMap(plan -> plan.cores().stream())
                .filter(core -> core.id().equals(id))
                .map(core -> core.at())
                .findFirst();
    }

    private void scrolled(ScrollEvent e) {
        if (e.getDeltaY() != 0) {
            change(viewport.zoomed(e.getDeltaY() > 0 ? ZOOM_STEP : 1 / ZOOM_STEP, e.getX(), e.getY()));
        }
        e.consume();
    }

    private void pressed(MouseEvent e) {
        requestFocus();
        pressedX = draggedX = e.getX();
        pressedY = draggedY = e.getY();
    }

    private void dragged(MouseEvent e) {
        change(viewport.moved(e.getX() - draggedX, e.getY() - draggedY));
        draggedX = e.getX();
        draggedY = e.getY();
    }

    private void released(MouseEvent e) {
        boolean click = Math.hypot(e.getX() - pressedX, e.getY() - pressedY) <= CLICK_SLIP_PX;
        if (click) {
            double reachM = PICK_REACH_PX * viewport.metresPerPx();
            Point place = viewport.ground(e.getX(), e.getY());
            session.results().get().ifPresent(r -> session.selection().set(Selection.at(place, reachM, r)));
        }
    }

    private void keyed(KeyEvent e) {
        KeyCode key = e.getCode();
        if (e.isShortcutDown()) {
            return; // the window's own keys
        } else if (key == KeyCode.F) {
            fit();
        } else if (key == KeyCode.PLUS || key == KeyCode.EQUALS || key == KeyCode.ADD) {
            zoom(ZOOM_STEP);
        } else if (key == KeyCode.MINUS || key == KeyCode.SUBTRACT) {
            zoom(1 / ZOOM_STEP);
        } else if (key == KeyCode.ESCAPE) {
            session.selection().set(Selection.NOTHING);
        } else if (key.isArrowKey()) {
            double dx = key == KeyCode.LEFT ? 1 : key == KeyCode.RIGHT ? -1 : 0;
            double dy = key == KeyCode.UP ? 1 : key == KeyCode.DOWN ? -1 : 0;
            change(viewport.moved(dx * PAN_STEP_PX, dy * PAN_STEP_PX));
        } else {
            return;
        }
        e.consume();
    }
}
