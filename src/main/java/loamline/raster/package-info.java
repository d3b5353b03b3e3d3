/**
 * Grids over the yard: cells, masks, interpolation, and kernels over arrays, row-major from
 * the south-west corner.
 */
@NullMarked
package loamline.raster;

import org.jspecify.annotations.NullMarked;
