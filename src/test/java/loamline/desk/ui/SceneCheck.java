package loamline.desk.ui;

import static loamline.desk.WindowDriver.nodes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;

/** What can be found wrong with a window without eyes. Asked on the screen's thread, after layout. */
record SceneCheck(Scene scene) {
    /** Least contrast of a text of usual size; WCAG 2.2, criterion 1.4.3. */
    static final double LEAST_CONTRAST = 4.5;

    /** Borders are laid on half pixels: as much may lie over another thing or beyond the window. */
    private static final double SLACK_PX = 1;

    /** All that is wrong, a line each; empty if nothing is. */
    List<String> complaints(Picture picture) {
        List<String> all = new ArrayList<>();
        all.addAll(cutTexts());
        all.addAll(overlaps());
        all.addAll(outside());
        all.addAll(nameless());
        all.addAll(faint(picture));
        return all;
    }

    private Stream<Node> all() {
        return nodes(scene.getRoot());
    }

    /** Texts that are cut off, unless a tooltip says all of it. */
    List<String> cutTexts() {
        return all().filter(Labeled.class::isInstance)
                .map(Labeled.class::cast)
                .filter(labeled ->
                        labeled.getText() != null && !labeled.getText().isEmpty())
                .filter(labeled -> !(labeled instanceof MenuButton)) // the label inside it is looked at
                .filter(labeled -> !shown(labeled).equals(written(labeled)))
                .filter(labeled -> !tooltip(labeled).contains(written(labeled)))
                .map(labeled -> "cut: \"" + labeled.getText() + "\" shows as \"" + shown(labeled) + "\"")
                .toList();
    }

    /** The text without the mark of its mnemonic. */
    private static String written(Labeled labeled) {
        return labeled.isMnemonicParsing() ? labeled.getText().replaceFirst("_", "") : labeled.getText();
    }

    private static String shown(Labeled labeled) {
        return labeled.getChildrenUnmodifiable().stream()
                .filter(node -> node instanceof Text && node != labeled.getGraphic())
                .map(node -> ((Text) node).getText())
                .findFirst()
                .orElse("");
    }

    private static String tooltip(Control control) {
        return Optional.ofNullable(control.getTooltip()).map(Tooltip::getText).orElse("");
    }

    /** Things side by side that lie over each other. Stacks are meant to; what is inside a control is its own. */
    List<String> overlaps() {
        return all().filter(Parent.class::isInstance)
                .filter(parent -> !(parent instanceof Control) && !(parent instanceof StackPane))
                .flatMap(parent -> overlaps((Parent) parent))
                .toList();
    }

    private static Stream<String> overlaps(Parent parent) {
        if (isInside(parent, SceneCheck::isShut)) {
            return Stream.empty();
        }
        List<Node> children = parent.getChildrenUnmodifiable().stream()
                .filter(node -> node.isVisible() && node.isManaged())
                .toList();
        return children.stream()
                .flatMap(one -> children.stream()
                        .filter(other -> children.indexOf(other) > children.indexOf(one))
                        .filter(other -> overlap(one.getBoundsInParent(), other.getBoundsInParent()))
                        .map(other -> "overlap: " + named(one) + " and " + named(other)));
    }

    private static boolean overlap(Bounds one, Bounds other) {
        double width = Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
        double height = Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
        return width > SLACK_PX && height > SLACK_PX;
    }

    /** Things that reach out of the window, or sideways out of a pane that scrolls down only. */
    List<String> outside() {
        return all().filter(node -> node.isManaged() && node != scene.getRoot() && !isClipped(node))
                .filter(node -> !reach(node).isEmpty() && !room(node).contains(reach(node)))
                .map(node -> "outside: " + named(node) + " reaches to " + words(reach(node)))
                .toList();
    }

    /** A picture larger than the window in which it is moved, and what a table that scrolls both ways shows a part of. */
    private static boolean isClipped(Node node) {
        return (node instanceof ImageView && isInside(node, around -> around.getClip() != null))
                || isInside(node, TableView.class::isInstance);
    }

    private static Bounds reach(Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    /** Where a node may lie: the window, or a column as wide as the pane that scrolls it. */
    private Bounds room(Node node) {
        Bounds window = new BoundingBox(
                -SLACK_PX, -SLACK_PX, scene.getWidth() + 2 * SLACK_PX, scene.getHeight() + 2 * SLACK_PX);
        return around(node, ScrollPane.class::isInstance)
                .map(pane -> pane.localToScene(pane.getLayoutBounds()))
                .map(pane ->
                        (Bounds) new BoundingBox(pane.getMinX() - SLACK_PX, -1e6, pane.getWidth() + 2 * SLACK_PX, 2e6))
                .orElse(window);
    }

    /** Things that a key can reach and that nobody has named. */
    List<String> nameless() {
        return reachable().stream()
                .filter(node -> name(node).isBlank())
                .map(node -> "nameless: " + node)
                .toList();
    }

    /** Things that the tab key is to reach; from the chosen one of a group, arrow keys go to the others. */
    List<Node> reachable() {
        return all().filter(node -> node.isFocusTraversable() && !node.isDisabled() && !isPassedOver(node))
                .filter(node -> !isInside(node, SceneCheck::isShut))
                .toList();
    }

    private static boolean isPassedOver(Node node) {
        return node instanceof ToggleButton toggle
                && toggle.getToggleGroup() != null
                && toggle.getToggleGroup().getSelectedToggle() != null
                && !toggle.isSelected();
    }

    /** A control whose inside is its own business; panes that scroll or share a room only hold others. */
    private static boolean isShut(Node node) {
        return node instanceof Control && !(node instanceof ScrollPane) && !(node instanceof SplitPane);
    }

    private String name(Node node) {
        String said = Optional.ofNullable(node.getAccessibleText()).orElse("");
        String written = node instanceof Labeled labeled
                ? Optional.ofNullable(labeled.getText()).orElse("")
                : "";
        String beside = all().filter(other -> other instanceof Label label && label.getLabelFor() == node)
                .map(label -> ((Label) label).getText())
                .findFirst()
                .orElse("");
        return said + written + beside;
    }

    /** Texts that are hard to tell from what lies behind them. */
    List<String> faint(Picture picture) {
        return all().filter(Text.class::isInstance)
                .map(Text.class::cast)
                .filter(text -> !text.getText().isBlank() && !isDisabled(text) && isInSight(text))
                .filter(text -> text.getFill() instanceof Color)
                .filter(text -> contrast(text, picture) < LEAST_CONTRAST)
                .map(text -> "faint: \"%s\" has contrast %.1f".formatted(text.getText(), contrast(text, picture)))
                .toList();
    }

    private static double contrast(Text text, Picture picture) {
        Color ink = (Color) text.getFill();
        int rgb = (int) Math.round(ink.getRed() * 255) << 16
                | (int) Math.round(ink.getGreen() * 255) << 8
                | (int) Math.round(ink.getBlue() * 255);
        return Picture.contrast(rgb, picture.commonest(text.localToScene(text.getLayoutBounds())));
    }

    private boolean isInSight(Node node) {
        Bounds window = new BoundingBox(0, 0, scene.getWidth(), scene.getHeight());
        Bounds pane = around(node, ScrollPane.class::isInstance)
                .map(p -> p.localToScene(p.getLayoutBounds()))
                .orElse(window);
        return window.contains(reach(node)) && pane.contains(reach(node));
    }

    private static boolean isDisabled(Node node) {
        return node.isDisabled() || isInside(node, Node::isDisabled);
    }

    private static boolean isInside(Node node, Predicate<Node> what) {
        return around(node, what).isPresent();
    }

    private static Optional<Node> around(Node node, Predicate<Node> what) {
        return Stream.<Node>iterate(node.getParent(), parent -> parent != null, Node::getParent)
                .filter(what)
                .findFirst();
    }

    private static String words(Bounds b) {
        return "%.0f..%.0f, %.0f..%.0f".formatted(b.getMinX(), b.getMaxX(), b.getMinY(), b.getMaxY());
    }

    private static String named(Node node) {
        String text = node instanceof Labeled labeled ? " \"" + labeled.getText() + "\"" : "";
        return node.getClass().getSimpleName() + node.getStyleClass() + text;
    }
}
