package loamline.desk.map;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.ContextMenu;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.tool.Guide;
import loamline.desk.tool.ToolHost;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.scene.Palette;
import loamline.scene.Role;

/**
 * The map. From below: the picture of yard and image, drawn in the background; guides and the selection, drawn at
 * once; scale bar, north arrow, readout and the list of layers, which stay where they are.
 */
public final class MapView extends Region {
    private static final double PICK_REACH_PX = 12;

    private final Session session;
    private final ToolHost host;
    private final Camera camera = new Camera();
    private final MapLayers layers = new MapLayers();
    private final BackdropSource backdrop;
    private final PictureLayer picture = new PictureLayer();
    private final Overlay overlay = new Overlay();
    private final WalkRunner runner = new WalkRunner(camera.viewport());
    private final Furniture furniture = new Furniture();
    private final ScreenText text = new ScreenText();
    private final Readout readout = new Readout();
    private final LayersView layerList;
    private final MissingImage missing = new MissingImage(() -> this.find.run());
    private final Rectangle window = new Rectangle();
    private final ObjectProperty<Found> found = new SimpleObjectProperty<>(Found.NOTHING);
    private final BooleanProperty reducedMotion = new SimpleBooleanProperty();
    private Palette palette = Palette.LIGHT;
    private Optional<CorePlan> plan = Optional.empty();
    private Optional<Point> pointer = Optional.empty();
    private Supplier<Optional<ContextMenu>> menu = Optional::empty;
    private Picker picker = Selection::at;
    private Runnable find = () -> {};
    private Runnable told = () -> {};
    private Letters letters = typed -> false;
    private long content;
    private boolean fitted;
    private boolean seen;

    /** The view of the whole yard; as long as it is the one there is, it is made anew for each size of the map. */
    private Optional<Viewport> whole = Optional.empty();

    /** Where a yard that comes is to be looked at; empty to show all of it. */
    private Optional<Sight> wanted = Optional.empty();

    /** @param host holds the tool that gets all inputs first */
    public MapView(Session session, ToolHost host) {
        this.session = session;
        this.host = host;
        backdrop = new BackdropSource(session);
        layerList = new LayersView(session, layers);
        getStyleClass().add("map");
        setFocusTraversable(true);
        setAccessibleText("Map of the yard");
        setClip(window);
        getChildren().addAll(picture, overlay, runner, furniture.bar(), furniture.north(), readout, missing, layerList);
        List.of(layerList, missing).forEach(Cards::keepMouse);
        new MapInput(this, camera, host, new Rest());
        addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, this::openMenu);
        listen();
        setPalette(Palette.LIGHT);
    }

    private void listen() {
        session.results().addListener((o, before, now) -> follow(now));
        session.units().addListener((o, before, now) -> {
            changed();
            drawFurniture();
        });
        session.selection().addListener((o, before, now) -> drawOverlay());
        layers.shown().addListener((o, before, now) -> changed());
        found.addListener((o, before, now) -> follow(session.results().get()));
        backdrop.state().addListener((o, before, now) -> {
            missing.say(now.trouble());
            changed();
        });
        camera.viewport().addListener((o, before, now) -> {
            refresh();
            if (before.metresPerPx() != now.metresPerPx()) {
                drawFurniture();
            }
        });
        picture.onShown(this::pictureShown);
        host.current().addListener((o, before, now) -> toolChanged());
        toolChanged();
        follow(session.results().get());
    }

    /** The colours to draw in. */
    public void setPalette(Palette changed) {
        palette = changed;
        setBackground(new Background(new BackgroundFill(ScreenCanvas.color(palette.of(Role.PAPER)), null, null)));
        changed();
        drawFurniture();
    }

    /** Opens the menu of what a right click has selected; empty opens none. */
    public void setMenu(Supplier<Optional<ContextMenu>> supplier) {
        menu = supplier;
    }

    /** What a letter means that neither the tool nor the map knows. */
    public interface Letters {
        boolean typed(char letter);
    }

    /** Given letters that neither the tool nor the map knows. */
    public void setLetters(Letters taker) {
        letters = taker;
    }

    /** What clicks select that the tool left alone. */
    public void setPicker(Picker finder) {
        picker = finder;
    }

    /** Called when the person wants to look for the image that is missing. */
    public void setOnFindImage(Runnable action) {
        find = action;
    }

    /** The image under the yard: the folder it is named from, and how far it is read. */
    public BackdropSource backdrop() {
        return backdrop;
    }

    /** Which layers are to be seen. */
    public MapLayers layers() {
        return layers;
    }

    /** Whether the system asks for less motion; then the walk does not run. */
    public BooleanProperty reducedMotion() {
        return reducedMotion;
    }

    /** What a step has found, to be seen on the ground. */
    public ObjectProperty<Found> found() {
        return found;
    }

    private void pictureShown() {
        if (picture.isCurrent() && plan.isPresent()) {
            session.seen().set(true);
        }
        told.run();
    }

    /** Told whenever a new picture is shown. */
    void onPicture(Runnable toTell) {
        told = toTell;
    }

    /** Whether the picture shows the yard as it was asked for last. */
    boolean isCurrent() {
        return picture.isCurrent();
    }

    Session session() {
        return session;
    }

    Camera camera() {
        return camera;
    }

    /** Shows the whole yard; one without a drawing, its image. */
    public void fit() {
        extent().ifPresent(this::fit);
    }

    /** Shows all of the ground, moved aside from under the list of layers as far as there is room. */
    private void fit(Box ground) {
        if (getWidth() > 0 && getHeight() > 0) {
            Viewport view = Viewport.fitting(
                    ground, camera.now().widthPx(), camera.now().heightPx());
            double covered = view.xPx(new Point(ground.maxX(), ground.maxY())) - layerList.getLayoutX() + Cards.EDGE_PX;
            double room = view.xPx(new Point(ground.minX(), ground.minY())) - Cards.EDGE_PX;
            Viewport moved = view.moved(-Math.max(0, Math.min(covered, room)), 0);
            whole = Optional.of(moved);
            camera.look(moved.sight());
        }
    }

    /** Told where the map looks whenever that changes; nothing as long as it shows the whole yard. */
    public void onSight(Consumer<Optional<Sight>> told) {
        camera.viewport()
                .addListener((o, before, now) ->
                        told.accept(whole.equals(Optional.of(now)) ? Optional.empty() : Optional.of(now.sight())));
    }

    /** Looks there once the yard that is being opened is there. */
    public void lookAt(Sight sight) {
        wanted = Optional.of(sight);
    }

    /** The folder of the yard's file, from which its image is named. */
    public void setFolder(Optional<Path> folder) {
        backdrop.folder().set(folder);
    }

    /** Brings a place to the middle, at the scale there is. */
    public void centreOn(Point place) {
        camera.centreOn(place);
    }

    /** Runs a dot along the walk once, in a few seconds; nothing without a walk or with reduced motion. */
    public void runWalk() {
        if (!reducedMotion.get()) {
            plan.flatMap(WalkPace::of).ifPresent(pace -> runner.start(pace, palette));
        }
    }

    private Optional<Box> extent() {
        return session.results().get().flatMap(results -> Extent.of(results.yard()));
    }

    /** Takes up new results; the last plan stays in sight while the next is being made. */
    private void follow(Optional<Results> now) {
        if (now.isEmpty()) {
            plan = Optional.empty();
            fitted = false;
            seen = false;
            content++;
            picture.clear(content);
            runner.stop();
            return;
        }
        plan = now.get().plan().or(() -> plan);
        readout.origin(now.get().yard().frame().origin());
        layers.look(now.get().yard(), plan, found.get());
        changed();
    }

    /** The list of layers draws its signs while the picture is being drawn elsewhere. */
    private void changed() {
        content++;
        refresh();
        session.results().get().ifPresent(results -> layerList.follow(results, found.get(), palette));
    }

    /** Shows the window as it is now. */
    private void refresh() {
        if (getWidth() < 1 || getHeight() < 1) {
            return;
        }
        fitAtFirst();
        session.results().get().ifPresent(results -> {
            boolean inMotion =
                    !session.shown().get().equals(session.history().get().now());
            picture.show(content, camera.now(), pixelScale(), what(results), inMotion);
        });
        drawOverlay();
    }

    /** A yard is fitted when it is opened, an empty one when it gets its image, but not when its drawing begins. */
    private void fitAtFirst() {
        if (!fitted && extent().isPresent()) {
            fitted = true;
            if (!seen || session.shown().get().features().isEmpty()) {
                wanted.ifPresentOrElse(camera::look, this::fit);
                wanted = Optional.empty();
            }
        }
        seen = seen || session.results().get().isPresent();
    }

    private MapPicture.Content what(Results results) {
        return new MapPicture.Content(
                results,
                plan,
                found.get(),
                backdrop.state().get().pixels(),
                layers.drawn(),
                layers.shown().get().contains(MapLayer.IMAGE),
                palette,
                session.units().get());
    }

    private double pixelScale() {
        boolean seen = getScene() != null && getScene().getWindow() != null;
        return seen ? getScene().getWindow().getOutputScaleX() : 1;
    }

    private void drawOverlay() {
        double metresPerPx = camera.now().metresPerPx();
        List<Guide> guides = new ArrayList<>();
        session.results()
                .get()
                .ifPresent(results -> guides.addAll(SelectionMarks.of(
                        results, plan.stream().toList(), session.selection().get(), metresPerPx)));
        guides.addAll(host.guides(metresPerPx));
        overlay.show(guides, camera.now(), palette);
        readout.pointer(pointer, session.units().get());
    }

    private void drawFurniture() {
        furniture.draw(camera.now().view(), palette, session.units().get(), text);
    }

    private void toolChanged() {
        readout.hint(host.current().get().hint());
        drawOverlay();
    }

    private void openMenu(ContextMenuEvent e) {
        if (!e.isKeyboardTrigger()) {
            pick(camera.now().ground(e.getX(), e.getY()));
        }
        menu.get().ifPresent(opened -> opened.show(this, e.getScreenX(), e.getScreenY()));
        e.consume();
    }

    private void pick(Point place) {
        double reachM = PICK_REACH_PX * camera.now().metresPerPx();
        session.results().get().ifPresent(r -> session.selection().set(picker.at(place, reachM, r)));
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        window.setWidth(width);
        window.setHeight(height);
        if (overlay.getWidth() != width || overlay.getHeight() != height) {
            overlay.setWidth(width);
            overlay.setHeight(height);
            boolean wasWhole = whole.equals(Optional.of(camera.now()));
            camera.resize(width, height);
            if (wasWhole) {
                fit();
            }
            refresh();
        }
        furniture.place(width, height);
        Cards.place(readout, layerList, missing, width, height);
    }

    /** What the tool leaves to the map. */
    private final class Rest implements MapInput.Left {
        @Override
        public void picked(Point at) {
            pick(at);
        }

        @Override
        public boolean stepBack() {
            boolean selected = !session.selection().get().equals(Selection.NOTHING);
            session.selection().set(Selection.NOTHING);
            return selected;
        }

        @Override
        public boolean letter(char typed) {
            return letters.typed(typed);
        }

        @Override
        public void fit() {
            MapView.this.fit();
        }

        @Override
        public void pointer(Optional<Point> at) {
            pointer = at;
            readout.pointer(at, session.units().get());
        }

        @Override
        public void toolMoved() {
            readout.hint(host.current().get().hint());
            drawOverlay();
        }
    }
}
