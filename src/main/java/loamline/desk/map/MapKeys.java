package loamline.desk.map;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import loamline.desk.tool.Input.KeyName;

/** Keys of JavaFX as tools know them. */
final class MapKeys {
    private MapKeys() {}

    static Optional<KeyName> toolKey(KeyCode key) {
        return Optional.ofNullable(
                switch (key) {
                    case ENTER -> KeyName.ENTER;
                    case ESCAPE -> KeyName.ESCAPE;
                    case BACK_SPACE -> KeyName.BACKSPACE;
                    case DELETE -> KeyName.DELETE;
                    case TAB -> KeyName.TAB;
                    case LEFT, KP_LEFT -> KeyName.LEFT;
                    case RIGHT, KP_RIGHT -> KeyName.RIGHT;
                    case UP, KP_UP -> KeyName.UP;
                    case DOWN, KP_DOWN -> KeyName.DOWN;
                    default -> null;
                });
    }

    /** The printable character that was typed, if it was one and no shortcut. */
    static Optional<Character> character(KeyEvent typed) {
        String text = typed.getCharacter();
        boolean plain = text.length() == 1 && !Character.isISOControl(text.charAt(0));
        return plain && !typed.isShortcutDown() && !typed.isMetaDown() ? Optional.of(text.charAt(0)) : Optional.empty();
    }
}
