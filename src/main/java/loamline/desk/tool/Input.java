package loamline.desk.tool;

import loamline.geometry.Point;

/** What a person does on the map. */
public sealed interface Input {
    /** Keys held down; {@code shortcut} is Ctrl, or Cmd on a Mac. */
    record Held(boolean shift, boolean shortcut, boolean alt) {
        public static final Held NONE = new Held(false, false, false);
    }

    /** The first button goes down; {@code clicks} counts quick repeats from 1. */
    record Press(Point at, int clicks, Held held) implements Input {}

    /** The pointer moves with the first button down. */
    record Drag(Point at, Held held) implements Input {}

    /** The first button goes up. */
    record Release(Point at, Held held) implements Input {}

    /** The pointer moves with no button down. */
    record Move(Point at, Held held) implements Input {}

    /** A character is typed, as in a length. */
    record Typed(char character) implements Input {}

    /** A key that tools know is pressed. */
    record Key(KeyName key, Held held) implements Input {}

    /** Something that one tool understands and others pass over: a setting from the sheet, or an answer it waits for. */
    non-sealed interface OfTool extends Input {}

    /** Keys that tools know. */
    enum KeyName {
        ENTER,
        ESCAPE,
        BACKSPACE,
        DELETE,
        TAB,
        LEFT,
        RIGHT,
        UP,
        DOWN
    }
}
