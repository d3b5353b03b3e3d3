package loamline.desk.tool;

import java.util.OptionalDouble;
import loamline.geometry.Point;
import loamline.geometry.StraightLine;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;

/**
 * What is typed while a side is pending: a length, an azimuth, or both with {@code <} between them.
 *
 * <p>{@code 34.5} is a length in the units shown, {@code 12' 6"} and {@code 4.2 m} in their own; it runs the way the
 * pointer points. {@code < 45} is a direction, degrees clockwise from north; the pointer then tells how far.
 * {@code 34.5 < 45} is both. {@code @} does as well as {@code <}; Tab goes from the one to the other and back.
 *
 * @param size what stands before the {@code <}
 * @param azimuth what stands after it
 * @param atAzimuth whether the next character goes there
 */
record Typing(String size, String azimuth, boolean atAzimuth) {
    static final Typing NONE = new Typing("", "", false);

    /** No yard is as large, m. */
    static final double MOST_SIDE_M = 10_000;

    private static final String STARTS = ".½¼¾";
    private static final String CARET = "▏";

    boolean isEmpty() {
        return size.isEmpty() && azimuth.isEmpty() && !atAzimuth;
    }

    /** Whether a character belongs here: a number begins, and anything readable goes on. */
    boolean takes(char c) {
        return isEmpty()
                ? Character.isDigit(c) || STARTS.indexOf(c) >= 0 || isAngleSign(c)
                : !Character.isISOControl(c) && size.length() + azimuth.length() < Parsing.MAX_CHARS;
    }

    /** With a character more, one that it takes. */
    Typing with(char c) {
        if (isAngleSign(c)) {
            return new Typing(size, azimuth, true);
        }
        return atAzimuth ? new Typing(size, azimuth + c, true) : new Typing(size + c, azimuth, false);
    }

    /** At the other of the two. */
    Typing switched() {
        return new Typing(size, azimuth, !atAzimuth);
    }

    /** Without the last character; from an empty azimuth back to the size. */
    Typing shortened() {
        if (atAzimuth) {
            return azimuth.isEmpty() ? new Typing(size, "", false) : new Typing(size, cut(azimuth), true);
        }
        return new Typing(cut(size), azimuth, false);
    }

    private static String cut(String text) {
        return text.isEmpty() ? text : text.substring(0, text.length() - 1);
    }

    private static boolean isAngleSign(char c) {
        return c == '<' || c == '@';
    }

    /** As it is to be shown, with a mark where the next character goes. */
    String shown() {
        if (azimuth.isEmpty() && !atAzimuth) {
            return size + CARET;
        }
        return atAzimuth ? size + " < " + azimuth + CARET : size + CARET + " < " + azimuth;
    }

    /**
     * The end of a side.
     *
     * @param from where it starts
     * @param pointer gives what is not typed: the direction, or how far along it
     * @param units what a bare length is in
     */
    Target target(Point from, Point pointer, UnitSystem units) {
        if (isEmpty()) {
            return Target.at(pointer);
        }
        ParseResult direction = Parsing.parse(Measure.ANGLE, azimuth, units);
        ParseResult length = Parsing.parse(Measure.LENGTH, size, units);
        if (!azimuth.isBlank() && direction.refusal().isPresent()) {
            return Target.refused(pointer, direction.refusal().get().message());
        }
        if (!size.isBlank() && length.refusal().isPresent()) {
            return Target.refused(pointer, length.refusal().get().message());
        }
        return target(from, pointer, direction.value(), length.value());
    }

    private static Target target(Point from, Point pointer, OptionalDouble azimuthDeg, OptionalDouble lengthM) {
        if (azimuthDeg.isEmpty() && from.equals(pointer)) {
            return Target.refused(pointer, "Point the way with the mouse, or add an angle such as < 90.");
        }
        double deg = Azimuth.turned(azimuthDeg.orElse(Azimuth.deg(from, pointer)));
        StraightLine way = StraightLine.at(from, deg);
        double sizeM = lengthM.orElse(way.alongM(pointer));
        if (sizeM < Snapping.LEAST_SIDE_M || sizeM > MOST_SIDE_M) {
            return Target.refused(pointer, "Type a length above 0 and below 10 km.");
        }
        return Target.at(way.at(sizeM));
    }
}
