package loamline.desk.tool;

import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Point;

/**
 * Where a pointer is taken to be.
 *
 * @param at the place
 * @param word what it was drawn to, or blank if nothing was in reach: the place is then the pointer's own
 * @param help marks that explain it
 */
public record Snapped(Point at, String word, List<Guide> help) {
    public Snapped {
        help = List.copyOf(help);
    }

    /** A pointer left where it is. */
    public static Snapped free(Point pointer) {
        return new Snapped(pointer, "", List.of());
    }

    /** What to show of it; nothing where nothing was in reach. */
    public List<Guide> guides() {
        return word.isBlank()
                ? List.of()
                : Stream.concat(help.stream(), Stream.of(new Guide.Snap(at, word)))
                        .toList();
    }
}
