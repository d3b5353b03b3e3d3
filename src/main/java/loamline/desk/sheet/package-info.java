/** The sheet: the visit as a list of steps, each with one line of result and its own tools. */
@NullMarked
package loamline.desk.sheet;

import org.jspecify.annotations.NullMarked;
