/**
 * Published tables as data: each row with its source, under {@code src/main/resources/loamline/reference}.
 *
 * <p>Changing a figure touches no code.
 */
@NullMarked
package loamline.reference;

import org.jspecify.annotations.NullMarked;
