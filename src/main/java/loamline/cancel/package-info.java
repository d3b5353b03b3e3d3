/**
 * How long computing is given up before its end. Kernels look at the heads of their long loops whether anybody still
 * waits for them; what they compute does not depend on it.
 */
@NullMarked
package loamline.cancel;

import org.jspecify.annotations.NullMarked;
