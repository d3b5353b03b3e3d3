/**
 * Tools of the map as state machines, without a screen: an input and what is round it go in; the tool's next state,
 * effects and guides come out. Lists of inputs therefore test them.
 *
 * <p>What draws something new is one machine, {@code Draw}: it sets places by clicks, drags and typed sizes, drawn to what
 * is there by {@link loamline.desk.tool.Snapping}; a {@code Form} says how many places it takes and what they make. {@link
 * loamline.desk.tool.ToolChoice} lists these tools with their keys.
 *
 * <p>Esc always steps back once. A drag is one edit. Inputs that mean nothing to a tool are left to the map.
 */
@NullMarked
package loamline.desk.tool;

import org.jspecify.annotations.NullMarked;
