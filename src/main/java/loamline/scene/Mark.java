package loamline.scene;

import loamline.geometry.Box;
import loamline.geometry.Point;

/** One thing on the map. */
public sealed interface Mark {
    /**
     * Something that grows with the map.
     *
     * @param path metres on the ground
     */
    record Drawn(Path path, Paint paint) implements Mark {}

    /**
     * A sign that keeps its size.
     *
     * @param at its place on the ground
     * @param path millimetres on paper from that place; x right, y down
     */
    record Stamp(Point at, Path path, Paint paint) implements Mark {}

    /**
     * Cells in colour that grow with the map.
     *
     * @param ground what they cover, m
     */
    record Shade(Box ground, Pixels pixels) implements Mark {}

    /**
     * Words that keep their size.
     *
     * @param at their place on the ground
     * @param run its baseline counts from that place
     */
    record Words(Point at, Run run) implements Mark {}
}
