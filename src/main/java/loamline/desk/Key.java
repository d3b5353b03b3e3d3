package loamline.desk;

import java.util.Arrays;
import java.util.List;

/**
 * A key that works anywhere in the window.
 *
 * @param group under which head it is told
 * @param keys as people write them, the first to be told; {@code Shortcut} is Ctrl, or Cmd on a Mac
 * @param words what it does
 * @param action what is done
 */
record Key(String group, List<String> keys, String words, Runnable action) {
    Key {
        keys = List.copyOf(keys);
    }

    static Key of(String group, String keys, String words, Runnable action) {
        return new Key(group, Arrays.asList(keys.split(" ")), words, action);
    }

    /** How the first of its keys is told. */
    String told() {
        return keys.get(0)
                .replace("Shortcut", "Ctrl")
                .replace("Equals", "+")
                .replace("Minus", "−")
                .replace("Open_Bracket", "[")
                .replace("Close_Bracket", "]");
    }
}
