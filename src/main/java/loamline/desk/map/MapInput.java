package loamline.desk.map;

import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import loamline.desk.tool.Input;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Tool;
import loamline.desk.tool.ToolHost;
import loamline.geometry.Point;

/**
 * Mouse and keys over the map. Every input goes to the tool first; what it does not use moves the map or picks. The
 * middle button, and any button with the space bar held, always pan. Drags are given to the tool once a frame.
 */
final class MapInput {
    private static final double PAN_STEP_PX = 60;

    /** Pixels the mouse may slip in a click. */
    private static final double CLICK_SLIP_PX = 4;

    /** What is left for the map to do. */
    interface Left {
        /** A click that meant nothing to the tool. */
        void picked(Point at);

        /** Esc that meant nothing to the tool; false if there was nothing to step back from. */
        boolean stepBack();

        void fit();

        /** A letter that meant nothing to the tool nor to the map; false if it means nothing at all. */
        boolean letter(char typed);

        /** The pointer is over a place, or over none. */
        void pointer(Optional<Point> at);

        /** The tool got an input. */
        void toolMoved();
    }

    private final Node map;
    private final Camera camera;
    private final ToolHost host;
    private final Left left;
    private Optional<Input> drag = Optional.empty();
    private boolean space;
    private boolean panning;
    private boolean pressUsed;
    private boolean slipped;
    private double pressedX;
    private double pressedY;
    private double lastX;
    private double lastY;
    private final AnimationTimer frame = new AnimationTimer() {
        @Override
        public void handle(long now) {
            flushDrag();
        }
    };

    MapInput(Node map, Camera camera, ToolHost host, Left left) {
        this.map = map;
        this.camera = camera;
        this.host = host;
        this.left = left;
        map.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        map.addEventHandler(MouseEvent.MOUSE_EXITED, e -> left.pointer(Optional.empty()));
        map.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        map.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        map.addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        map.addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        map.addEventHandler(ZoomEvent.ZOOM, this::pinched);
        map.addEventHandler(KeyEvent.KEY_PRESSED, this::keyPressed);
        map.addEventHandler(KeyEvent.KEY_RELEASED, this::keyReleased);
        map.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        map.focusedProperty().addListener((o, before, focused) -> hold(false));
        host.current().addListener((o, before, now) -> showCursor());
        showCursor();
    }

    private boolean send(Input input) {
        boolean used = host.send(input, camera.now().metresPerPx());
        left.toolMoved();
        return used;
    }

    private Point ground(MouseEvent e) {
        return camera.now().ground(e.getX(), e.getY());
    }

    private static Held held(MouseEvent e) {
        return new Held(e.isShiftDown(), e.isShortcutDown(), e.isAltDown());
    }

    private void moved(MouseEvent e) {
        left.pointer(Optional.of(ground(e)));
        send(new Input.Move(ground(e), held(e)));
    }

    private void pressed(MouseEvent e) {
        map.requestFocus();
        pressedX = lastX = e.getX();
        pressedY = lastY = e.getY();
        slipped = false;
        panning = e.getButton() == MouseButton.MIDDLE || (space && e.getButton() == MouseButton.PRIMARY);
        pressUsed = e.getButton() == MouseButton.PRIMARY
                && !panning
                && send(new Input.Press(ground(e), e.getClickCount(), held(e)));
        showCursor();
    }

    private void dragged(MouseEvent e) {
        left.pointer(Optional.of(ground(e)));
        slipped = slipped || Math.hypot(e.getX() - pressedX, e.getY() - pressedY) > CLICK_SLIP_PX;
        if (e.isPrimaryButtonDown() && !panning) {
            if (pressUsed) {
                drag = Optional.of(new Input.Drag(ground(e), held(e)));
                frame.start();
            } else if (slipped && !send(new Input.Drag(ground(e), held(e)))) {
                panning = true;
                showCursor();
            }
        }
        if (panning) {
            camera.pan(e.getX() - lastX, e.getY() - lastY);
            lastX = e.getX();
            lastY = e.getY();
        }
    }

    private void flushDrag() {
        frame.stop();
        Optional<Input> last = drag;
        drag = Optional.empty();
        last.ifPresent(this::send);
    }

    private void released(MouseEvent e) {
        flushDrag();
        if (e.getButton() == MouseButton.PRIMARY && !panning) {
            boolean used = send(new Input.Release(ground(e), held(e)));
            if (!used && !pressUsed && !slipped) {
                left.picked(ground(e));
            }
        }
        panning = false;
        showCursor();
    }

    private void scrolled(ScrollEvent e) {
        boolean sideways = e.getDeltaY() == 0;
        if (e.isDirect() || sideways) {
            camera.pan(e.getDeltaX(), e.getDeltaY());
        } else {
            camera.wheel(e.getDeltaY(), e.getX(), e.getY());
        }
        e.consume();
    }

    private void pinched(ZoomEvent e) {
        camera.zoom(e.getZoomFactor(), e.getX(), e.getY());
        e.consume();
    }

    private void keyPressed(KeyEvent e) {
        if (e.getCode() == KeyCode.SPACE) {
            hold(true);
            e.consume();
            return;
        }
        Held held = new Held(e.isShiftDown(), e.isShortcutDown(), e.isAltDown());
        boolean used = MapKeys.toolKey(e.getCode())
                .map(key -> send(new Input.Key(key, held)))
                .orElse(false);
        if (used || moveMap(e)) {
            e.consume();
        }
    }

    private boolean moveMap(KeyEvent e) {
        KeyCode key = e.getCode();
        if (key == KeyCode.ESCAPE) {
            return left.stepBack();
        }
        if (!key.isArrowKey() || e.isShortcutDown() || e.isAltDown()) {
            return false;
        }
        double dx = key == KeyCode.LEFT ? 1 : key == KeyCode.RIGHT ? -1 : 0;
        double dy = key == KeyCode.UP ? 1 : key == KeyCode.DOWN ? -1 : 0;
        camera.pan(dx * PAN_STEP_PX, dy * PAN_STEP_PX);
        return true;
    }

    private void keyReleased(KeyEvent e) {
        if (e.getCode() == KeyCode.SPACE) {
            hold(false);
            e.consume();
        }
    }

    /** Letters go to the tool first: an f may end a length in feet. */
    private void typed(KeyEvent e) {
        Optional<Character> character = MapKeys.character(e);
        if (character.isPresent() && (send(new Input.Typed(character.get())) || command(character.get()))) {
            e.consume();
        }
    }

    private boolean command(char character) {
        switch (character) {
            case 'f', 'F' -> left.fit();
            case '+', '=' -> camera.zoom(Camera.STEP);
            case '-' -> camera.zoom(1 / Camera.STEP);
            default -> {
                return left.letter(character);
            }
        }
        return true;
    }

    private void hold(boolean held) {
        space = held;
        showCursor();
    }

    private void showCursor() {
        Cursor ofTool = host.current().get().cursor() == Tool.Pointer.CROSS ? Cursor.CROSSHAIR : Cursor.DEFAULT;
        map.setCursor(panning ? Cursor.CLOSED_HAND : space ? Cursor.OPEN_HAND : ofTool);
    }
}
