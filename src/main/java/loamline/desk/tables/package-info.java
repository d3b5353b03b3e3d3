/**
 * Tables of a visit in the window: brought in from a file, pasted, or typed, and kept with the yard. What they mean is
 * the business of the step that shows them.
 */
@NullMarked
package loamline.desk.tables;

import org.jspecify.annotations.NullMarked;
