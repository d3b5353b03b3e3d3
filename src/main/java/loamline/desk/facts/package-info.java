/** The facts about what is selected, with the account of every computed number. */
@NullMarked
package loamline.desk.facts;

import org.jspecify.annotations.NullMarked;
