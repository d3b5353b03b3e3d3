/**
 * Tools of the map as state machines, without a screen: an input and what is round it go in; the tool's next state,
 * effects and guides come out. Lists of inputs therefore test them.
 *
 * <p>Esc always steps back once. A drag is one edit. Inputs that mean nothing to a tool are left to the map.
 */
@NullMarked
package loamline.desk.tool;

import org.jspecify.annotations.NullMarked;
