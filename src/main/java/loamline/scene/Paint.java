package loamline.scene;

import java.util.Optional;

/** How a path is painted: its inside (by the even-odd rule), its line, or both, the line on top. */
public record Paint(Optional<Ink> fill, Optional<Pen> pen) {
    public static Paint fill(Ink ink) {
        return new Paint(Optional.of(ink), Optional.empty());
    }

    public static Paint line(Pen pen) {
        return new Paint(Optional.empty(), Optional.of(pen));
    }

    public static Paint both(Ink ink, Pen pen) {
        return new Paint(Optional.of(ink), Optional.of(pen));
    }
}
