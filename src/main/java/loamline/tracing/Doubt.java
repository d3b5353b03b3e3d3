package loamline.tracing;

import java.util.Optional;

/**
 * Something about a proposal that its user should look at.
 *
 * @param side which side of the outline it concerns, where it is one
 * @param share how much is concerned, 0 to 1: of the border, or of the area for {@link Kind#UNSTABLE}
 */
public record Doubt(Kind kind, Optional<Side> side, double share) {
    /** What is doubtful. */
    public enum Kind {
        /** A click lies where the picture shows nothing. */
        NO_DATA,
        /** A click lies on ground that is closed to tracing. */
        CLOSED,
        /** No edge is to be seen along a side. */
        FAINT,
        /** A side follows what looks like the edge of a shadow. */
        SHADOW,
        /** The ground runs out of the picture. */
        CUT_OFF,
        /** A small move of the slider changes much. */
        UNSTABLE
    }

    /** A side of an outline, as seen in the picture. */
    public enum Side {
        TOP,
        RIGHT,
        BOTTOM,
        LEFT;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** One plain sentence that says what is the matter and what to do. */
    public String sentence() {
        String where = side.map(s -> "Along the " + s.word() + " ").orElse("Here ");
        return switch (kind) {
            case NO_DATA -> "The picture shows nothing where you clicked.";
            case CLOSED -> "This ground is already traced or lies beyond a limit.";
            case FAINT -> where + "the edge is faint (" + percent() + " of the border): check it by eye.";
            case SHADOW ->
                where + "the border follows what looks like a shadow (" + percent()
                        + "): add a click in the shade if the ground goes on.";
            case CUT_OFF -> where + "the ground runs out of the picture (" + percent() + " of the border).";
            case UNSTABLE ->
                "A small move of the slider changes the area by " + percent() + ": nothing marks a clear stop here.";
        };
    }

    private String percent() {
        return Math.round(100 * share) + " %";
    }
}
