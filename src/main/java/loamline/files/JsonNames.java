package loamline.files;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The member names that one sort of object uses; every other member is somebody else's and is kept.
 *
 * <p>In memory a kept member may have any name, also one that is ours here: it came from a file of another
 * layout. It is then written with a {@code ~} before its name, which reading takes off again.
 *
 * @param ours the names in use
 */
record JsonNames(Set<String> ours) {
    private static final String APART = "~";

    static JsonNames of(String... ours) {
        return new JsonNames(Set.of(ours));
    }

    boolean isOurs(String name) {
        return ours.contains(name);
    }

    /** The name in memory of a member that is not ours. */
    String inMemory(String name) {
        return name.startsWith(APART) && ours.contains(bare(name)) ? name.substring(APART.length()) : name;
    }

    /** The name in the file of a member that is not ours. */
    String inFile(String name) {
        return ours.contains(bare(name)) ? APART + name : name;
    }

    /** Adds somebody else's members to those of ours. */
    void addOthers(Map<String, @Nullable Object> kept, Map<String, @Nullable Object> members) {
        kept.forEach((name, value) -> members.put(inFile(name), value));
    }

    private static String bare(String name) {
        return name.replaceFirst("^" + APART + "+", "");
    }
}
