/**
 * The window: the sheet of steps, the map, the facts and the foot.
 *
 * <p>{@link loamline.desk.Session} alone holds the current yard and what was computed from it; views bind to it.
 * Long work runs in the background and is shown in the foot. The map is drawn by {@code scene}, off the screen's
 * thread, into an image that the map then shows.
 */
@NullMarked
package loamline.desk;

import org.jspecify.annotations.NullMarked;
