/**
 * The Sun step: hours of direct sun on the turf over chosen dates, and sun and shade at an hour. What is worked out
 * comes from {@code loamline.sun}; here it is kept current and put into words.
 */
@NullMarked
package loamline.desk.sun;

import org.jspecify.annotations.NullMarked;
