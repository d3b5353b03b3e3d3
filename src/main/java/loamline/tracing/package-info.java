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
 * <p>How it works, in order: colour in a perceptual space and a measure of texture ({@code Features}); small
 * patches whose borders follow the edges ({@code Patches}); a tree that joins them, the least contrast along
 * their common borders first ({@code Merging}); for each click, the node of the tree above it that stands out
 * most ({@code Branch}), which the slider leaves upwards and downwards; smooth cells from the nodes of all clicks
 * ({@code Shaping}); and straight, where it fits square, edges round them ({@code Straightening}). What the edges
 * lie on is read from the picture again ({@code Border}), so that a doubtful outline says where.
 *
 * <p>What it cannot do: see ground under a tree, tell a shadow from the ground that it lies on (a click in the
 * shade adds it), or take a bed full of flowers for one thing.
 */
@NullMarked
package loamline.tracing;

import org.jspecify.annotations.NullMarked;
