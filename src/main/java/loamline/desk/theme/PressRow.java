package loamline.desk.theme;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;

/** A row that is pressed as a button is, by mouse, Enter or Space, but as high as its wrapped words ask for. */
public final class PressRow extends HBox {
    private final Runnable action;

    public PressRow(Runnable action, Node... children) {
        super(10, children);
        this.action = action;
        getStyleClass().add("press-row");
        setAccessibleRole(AccessibleRole.BUTTON);
        setFocusTraversable(true);
        setOnMouseClicked(e -> {
            if (e.getButton() == MouseButton.PRIMARY) {
                requestFocus();
                action.run();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
                action.run();
                e.consume();
            }
        });
    }

    @Override
    public void executeAccessibleAction(AccessibleAction asked, Object... parameters) {
        if (asked == AccessibleAction.FIRE) {
            action.run();
        } else {
            super.executeAccessibleAction(asked, parameters);
        }
    }
}
