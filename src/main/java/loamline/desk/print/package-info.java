/**
 * The Print step: pages as they will come out, and everything that can be taken along: the walk plan, its map, places
 * for a phone, the yard for other programs.
 */
@NullMarked
package loamline.desk.print;

import org.jspecify.annotations.NullMarked;
