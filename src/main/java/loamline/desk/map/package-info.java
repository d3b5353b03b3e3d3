/** The map: a picture drawn in the background, guides drawn at once, and where on the ground the window looks. */
@NullMarked
package loamline.desk.map;

import org.jspecify.annotations.NullMarked;
