/**
 * The map as a display list: one drawing for screen, page and image.
 *
 * <p>{@link loamline.scene.YardScene} turns a yard, its zones and its core plan into a {@link
 * loamline.scene.Scene}: marks in layers, places in metres on the ground, sizes of signs, lines and type in
 * millimetres on paper. {@link loamline.scene.Scene#paint} replays it on a {@link loamline.scene.Canvas};
 * whoever has paper, pixels or a window implements that one small interface and nothing else. A screen takes a
 * millimetre for 96/25.4 pixels, so signs and type have one size in print and on screen.
 *
 * <p>Paper is measured from its upper left corner: x to the right, y down. The ground has y to the north, and
 * north is always up.
 *
 * <p>Results: what lies outside the view may be left out; patterns are geometry, already cut to their outline;
 * labels never overlap each other or a core, and a label without room is left out. The same input gives the
 * same list.
 */
@NullMarked
package loamline.scene;

import org.jspecify.annotations.NullMarked;
