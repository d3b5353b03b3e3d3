/**
 * The Soil step: laboratory reports and what they mean. What is worked out comes from {@code loamline.soil}; here it is
 * kept current and put into words.
 */
@NullMarked
package loamline.desk.soil;

import org.jspecify.annotations.NullMarked;
