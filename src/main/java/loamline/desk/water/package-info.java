/**
 * The Water step: where heads miss, which cup tests pay, what the readings say, how long to run. What is worked out
 * comes from {@code loamline.water}; here it is kept current and put into words.
 */
@NullMarked
package loamline.desk.water;

import org.jspecify.annotations.NullMarked;
