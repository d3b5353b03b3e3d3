/**
 * Cup tests: where one is worth the walk, how it is laid, what its readings say, and which head is at fault.
 *
 * <p>A reading becomes a rate: mm/h = 600 · ml / (cm² · minutes). Everything after that is done with rates, so cups of
 * several sizes and turns of several lengths go together.
 *
 * <p>Results are never NaN or infinite. What cannot be said is empty, and a problem says why: no uniformity of a lawn
 * that stayed dry, no verdict on a head with too few cups in its throw, no rate farther from the cups than they carry.
 */
@NullMarked
package loamline.water.cups;

import org.jspecify.annotations.NullMarked;
