/**
 * Points, lines, outlines as drawn, and regions as measured: plane geometry in metres.
 *
 * <p>Two ideas are kept apart on purpose. A {@link loamline.geometry.Shape} is what somebody drew: a point,
 * a line or an outline, kept to the last vertex even where it crosses itself. A {@link
 * loamline.geometry.Region} is ground: always valid, possibly empty, possibly in several parts, and the only
 * thing that has an area. {@link loamline.geometry.Repair} leads from the one to the other and says what it
 * had to do.
 *
 * <p>Results of set operations are regions again: an empty result is {@link
 * loamline.geometry.Region#EMPTY}, touching along an edge or at a point has no area and is dropped. This is
 * the only room that sees JTS, and no JTS type leaves it.
 */
@NullMarked
package loamline.geometry;

import org.jspecify.annotations.NullMarked;
