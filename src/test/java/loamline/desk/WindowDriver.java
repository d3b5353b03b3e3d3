package loamline.desk;

import static org.testfx.util.WaitForAsyncUtils.asyncFx;
import static org.testfx.util.WaitForAsyncUtils.waitFor;
import static org.testfx.util.WaitForAsyncUtils.waitForFxEvents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import loamline.cli.LoamlineCommand;
import loamline.desk.map.MapProbe;
import loamline.desk.map.MapView;
import loamline.desk.session.Session;
import loamline.desk.store.Asking;
import loamline.desk.store.Home;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.yard.Yard;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.robot.KeyboardRobot;
import org.testfx.robot.MouseRobot;

/**
 * A person at the window: finds things by the words on them, presses, types and drags with a mouse and keys of the
 * toolkit's robot, and counts what it takes.
 *
 * <p>What counts as one: a mouse button pressed and released, wherever it moved between; a notch of the wheel; a key
 * pressed and released, those held down with it counting too; a character typed; an answer to a dialog for a file
 * counts as two, one to choose and one to confirm. Moving the pointer counts nothing.
 */
public final class WindowDriver implements AutoCloseable {
    private static final int PATIENCE_S = 20;
    /** An input becomes an event in one round of the screen's thread and is answered in the next. */
    private static final int ROUNDS = 2;

    private static final int EVENTS_OF_A_DIALOG = 2;

    /** Farther than the screen in memory lets the two clicks of a double click lie apart. */
    private static final double WAY_ROUND_PX = 40;

    private final FxRobot robot = new FxRobot();
    private final MouseRobot mouse = robot.robotContext().getMouseRobot();
    private final Answers answers = new Answers();
    private final Stage stage;
    private int events;

    private WindowDriver(Stage stage) {
        this.stage = stage;
    }

    /** Opens the window on a yard in a size, waits until all is computed and drawn, and puts the welcome away. */
    public static WindowDriver open(Yard yard, double width, double height) {
        WindowDriver driver = openFirst(yard, width, height);
        onScreen(() -> {
            ((Button) driver.control("Got it")).fire();
            driver.map().requestFocus();
            return driver;
        });
        return driver;
    }

    /** Opens the window as for somebody who never ran the program, whatever other tests have left. */
    public static WindowDriver openFirst(Yard yard, double width, double height) {
        try {
            Path homes = Files.createDirectories(Path.of("target", "window-tests"));
            System.setProperty(
                    Home.PROPERTY,
                    Files.createTempDirectory(homes, "home").toAbsolutePath().toString());
            FxToolkit.registerPrimaryStage();
            WindowDriver driver = new WindowDriver(onScreen(Stage::new));
            onScreen(() -> {
                Window window = new Window(driver.stage, yard, LoamlineCommand.program(), driver.answers);
                driver.stage.setX(0);
                driver.stage.setY(0);
                driver.stage.setWidth(width);
                driver.stage.setHeight(height);
                window.show(Optional.empty());
                return window;
            });
            return driver.settle();
        } catch (TimeoutException | IOException e) {
            throw new AssertionError("no window", e);
        }
    }

    /** Opens the window in the size of a small laptop's screen. */
    public static WindowDriver open(Yard yard) {
        return open(yard, 1280, 800);
    }

    public void resize(double width, double height) {
        onScreen(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
            return stage;
        });
        settle();
    }

    /** Waits until no work runs, the cores are planned and the map shows what it was asked to show. */
    public WindowDriver settle() {
        waitForFxEvents();
        until("the window to come to rest", () -> onScreen(this::isAtRest));
        return this;
    }

    private boolean isAtRest() {
        stage.getScene().getRoot().applyCss();
        stage.getScene().getRoot().layout();
        return map() != null
                && session().work().running().get().isEmpty()
                && session().results().get().filter(r -> r.plan().isPresent()).isPresent()
                && MapProbe.isCurrent(map());
    }

    /** Waits until something holds. */
    public void until(String what, Callable<Boolean> holds) {
        try {
            waitFor(PATIENCE_S, TimeUnit.SECONDS, holds);
        } catch (TimeoutException e) {
            throw new AssertionError("waited " + PATIENCE_S + " s for " + what, e);
        }
    }

    /** Asks something on the screen's thread. */
    public static <T> T onScreen(Callable<T> question) {
        return waitFor(asyncFx(question));
    }

    public Session session() {
        return MapProbe.session(map());
    }

    /** The cores and walks on show. */
    public CorePlan plan() {
        return onScreen(() -> session().results().get().orElseThrow().plan().orElseThrow());
    }

    public MapView map() {
        return (MapView) stage.getScene().getRoot().lookup(".map");
    }

    public Scene scene() {
        return stage.getScene();
    }

    public String title() {
        return onScreen(stage::getTitle);
    }

    /** How many events it took so far. */
    public int events() {
        return events;
    }

    /** Whether some words are to be read anywhere in the window. */
    public boolean reads(String words) {
        return onScreen(() -> nodes(scene().getRoot())
                .anyMatch(node -> node instanceof Labeled labeled
                        && labeled.getText() != null
                        && labeled.getText().contains(words)));
    }

    /** The one control with some words on it, beside it, or said of it to those who cannot see it. */
    public Node control(String words) {
        List<Node> found = onScreen(() -> nodes(scene().getRoot())
                .filter(node -> node.isFocusTraversable() && !node.isDisabled())
                .filter(node -> words.equals(node.getAccessibleText())
                        || node instanceof Labeled labeled && words.equals(labeled.getText())
                        || isLabelled(node, words))
                .toList());
        if (found.size() != 1) {
            throw new AssertionError("looked for one \"" + words + "\", found " + found);
        }
        return found.get(0);
    }

    private boolean isLabelled(Node node, String words) {
        return nodes(scene().getRoot())
                .anyMatch(other ->
                        other instanceof Label label && label.getLabelFor() == node && words.equals(label.getText()));
    }

    /** A node and all that is in it and can be seen. */
    public static Stream<Node> nodes(Node node) {
        Stream<Node> within = node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().flatMap(WindowDriver::nodes)
                : Stream.empty();
        return node.isVisible() ? Stream.concat(Stream.of(node), within) : Stream.empty();
    }

    /** Clicks the control with some words. */
    public WindowDriver press(String words) {
        return click(middle(control(words)));
    }

    /** Clicks into a field, puts a text in the place of what is there, and confirms it. */
    public WindowDriver fill(String field, String text) {
        press(field);
        return keys(KeyCode.SHORTCUT, KeyCode.A).type(text).keys(KeyCode.ENTER);
    }

    private static Point2D middle(Node node) {
        return onScreen(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            return new Point2D(bounds.getCenterX(), bounds.getCenterY());
        });
    }

    /** Clicks a place on the ground. */
    public WindowDriver click(Point ground) {
        return click(inSight(ground));
    }

    /** By a way round, as clicks in quick succession near each other would be taken for one double click. */
    private WindowDriver click(Point2D place) {
        mouse.moveNoWait(place.add(place.getX() < WAY_ROUND_PX ? WAY_ROUND_PX : -WAY_ROUND_PX, 0));
        mouse.moveNoWait(place);
        mouse.pressNoWait(MouseButton.PRIMARY);
        mouse.releaseNoWait(MouseButton.PRIMARY);
        return counted(1);
    }

    /** Takes hold of a place on the ground and lets go at another. */
    public WindowDriver drag(Point from, Point to) {
        Point2D start = inSight(from);
        Point2D end = inSight(to);
        mouse.moveNoWait(start);
        mouse.pressNoWait(MouseButton.PRIMARY);
        mouse.moveNoWait(start.midpoint(end));
        mouse.moveNoWait(end);
        mouse.releaseNoWait(MouseButton.PRIMARY);
        return counted(1);
    }

    /** Turns the wheel over a place on the ground: away from oneself above 0, as the screen in memory counts it. */
    public WindowDriver wheel(int notches, Point ground) {
        mouse.moveNoWait(inSight(ground));
        for (int i = 0; i < Math.abs(notches); i++) {
            mouse.scrollNoWait(Integer.signum(notches));
        }
        return counted(Math.abs(notches));
    }

    /** Where a place on the ground is seen now, whether in sight or not. */
    public Point2D onMap(Point ground) {
        return onScreen(() -> MapProbe.onScreen(map(), ground));
    }

    /** How far the map is zoomed. */
    public double metresPerPx() {
        return onScreen(() -> MapProbe.metresPerPx(map()));
    }

    private Point2D inSight(Point ground) {
        Point2D place = onMap(ground);
        if (!onScreen(() -> map().localToScreen(map().getBoundsInLocal())).contains(place)) {
            throw new AssertionError(ground + " is out of sight");
        }
        return place;
    }

    /** Presses keys together, as Ctrl with P, and lets go. */
    public WindowDriver keys(KeyCode... together) {
        KeyboardRobot keyboard = robot.robotContext().getKeyboardRobot();
        keyboard.pressNoWait(together);
        keyboard.releaseNoWait(together);
        return counted(together.length);
    }

    public WindowDriver type(String text) {
        robot.write(text);
        return counted(text.length());
    }

    /** The file that the next dialog is to be answered with. */
    public WindowDriver willChoose(Path file) {
        answers.next = Optional.of(file);
        return this;
    }

    private WindowDriver counted(int more) {
        waitForFxEvents(ROUNDS);
        events += more;
        return this;
    }

    /** Closes the window without saving. */
    @Override
    public void close() {
        answers.leaves = true;
        onScreen(() -> {
            stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
            return stage;
        });
    }

    /** Answers the window's questions: a file that was set before, and to others what loses nothing until the end. */
    private final class Answers implements Asking {
        private Optional<Path> next = Optional.empty();
        private volatile boolean leaves;

        @Override
        public <A> A ask(Question<A> question) {
            return question.choices().stream()
                    .filter(choice -> leaves && choice.label().equals("Don’t save"))
                    .findFirst()
                    .map(Choice::answer)
                    .orElse(question.ifClosed());
        }

        @Override
        public Optional<Path> fileToOpen(String title, Sort sort, Optional<Path> folder) {
            return answer();
        }

        @Override
        public Optional<Path> fileToSave(String title, List<Sort> sorts, Path suggested) {
            return answer();
        }

        private Optional<Path> answer() {
            Optional<Path> given = next;
            next = Optional.empty();
            events += EVENTS_OF_A_DIALOG;
            return given;
        }
    }
}
