/**
 * Where the yard and its image lie: the yard's own plane in metres and WGS 84, and back; coordinate reference systems.
 *
 * <p>This is the only room that sees Apache SIS, and no SIS type leaves it.
 */
@NullMarked
package loamline.place;

import org.jspecify.annotations.NullMarked;
