/**
 * The window: the sheet of steps, the map, the facts and the foot.
 *
 * <p>{@link loamline.desk.session.Session} alone holds the current yard and what was computed from it; views bind to it.
 * Long work runs in the background and is shown in the foot. {@code store} keeps the yard's file and what survives a
 * killed program. The map is drawn by {@code scene}, off the screen's thread, into an image that the map then shows. Tools
 * are state machines in {@code tool}; the steps of the sheet have a package each.
 */
@NullMarked
package loamline.desk;

import org.jspecify.annotations.NullMarked;
