/** The foot: problems with a way to each and a repair where it is safe, what is saved, units, and work that runs. */
@NullMarked
package loamline.desk.foot;

import org.jspecify.annotations.NullMarked;
