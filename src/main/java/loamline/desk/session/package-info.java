/** The one holder of the current yard, of what was computed from it and of what is selected; long work in the background. */
@NullMarked
package loamline.desk.session;

import org.jspecify.annotations.NullMarked;
