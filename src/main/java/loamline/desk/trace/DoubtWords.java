package loamline.desk.trace;

import loamline.geometry.Point;
import loamline.tracing.Doubt;
import loamline.yard.Backdrop;

/** Doubts about a traced outline in words, with sides named by the compass. */
final class DoubtWords {
    private static final String[] COMPASS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private DoubtWords() {}

    static String of(Doubt doubt, Backdrop.Placement placement) {
        if (doubt.side().isEmpty()) {
            return doubt.sentence();
        }
        String side = "The " + compass(doubt.side().get(), placement) + " side ";
        String share = " (" + Math.round(100 * doubt.share()) + " % of the border)";
        return switch (doubt.kind()) {
            case FAINT -> side + "is not clear" + share + ": check it by eye.";
            case SHADOW ->
                side + "looks like the edge of a shadow" + share + ": click in the shade too if the ground goes on.";
            case CUT_OFF -> side + "runs out of the image" + share + ".";
            default -> doubt.sentence();
        };
    }

    /** Which way a side of the picture looks on the ground. */
    static String compass(Doubt.Side side, Backdrop.Placement placement) {
        Point out = switch (side) {
            case TOP -> new Point(0, -1);
            case RIGHT -> new Point(1, 0);
            case BOTTOM -> new Point(0, 1);
            case LEFT -> new Point(-1, 0);
        };
        Point to = placement.ground(out);
        double azimuthDeg = Math.toDegrees(Math.atan2(to.x() - placement.c(), to.y() - placement.f()));
        return COMPASS[Math.floorMod((int) Math.round(azimuthDeg / 45), COMPASS.length)];
    }
}
