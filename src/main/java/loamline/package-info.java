@NullMarked
package loamline;

import org.jspecify.annotations.NullMarked;
