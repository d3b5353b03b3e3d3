/**
 * Outlines from a click: finds the ground of one kind round a place in a picture.
 *
 * <p>{@link loamline.tracing.Picture} holds the pixels, {@link loamline.tracing.Mosaic} prepares a window of
 * them once, {@link loamline.tracing.Trace} answers for one or more clicks, and {@link
 * loamline.tracing.Trace#at} is cheap enough to follow a slider. The result is a {@link
 * loamline.tracing.Proposal}: an outline with few vertices to accept or edit, and how far it can be trusted.
 *
 * <p>Coordinates are those of the picture: x to the right, y <em>down</em>, unit one pixel. The pixel in column
 * i and row j covers [i, i + 1] x [j, j + 1]; (0, 0) is the outer corner of the first pixel, not its middle.
 *
 * <p>How it works, in order: colours in a perceptual space and a measure of texture ({@code Features}), small
 * patches whose borders follow the edges ({@code Patches}), a tree that joins the patches by the contrast along
 * their common borders ({@code MergeTree}), the branch of the tree at which the clicked patch stands out most,
 * and at last a border that is smoothed, straightened and squared ({@code Smoothing}, {@code Rings}, {@code
 * Straightening}).
 */
@NullMarked
package loamline.tracing;

import org.jspecify.annotations.NullMarked;
