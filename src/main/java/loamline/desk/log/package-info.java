/**
 * The Log step: what the cores showed, and what ails the parts of the lawn that struggle. What is worked out comes from
 * {@code loamline.findings}; here it is kept current and put into words.
 */
@NullMarked
package loamline.desk.log;

import org.jspecify.annotations.NullMarked;
