/** How the window looks: colours, letters, icons, and the size of text. */
@NullMarked
package loamline.desk.theme;

import org.jspecify.annotations.NullMarked;
