/**
 * The Trace step: the image with its scale and north, outlines drawn by hand or found on the image, and the turf that
 * they make.
 *
 * <p>{@link loamline.desk.trace.ImageTracer} finds ground for the assisted tool; {@link
 * loamline.desk.trace.ImageOpening} decides where an image belongs; {@link loamline.desk.trace.TraceModel} holds what
 * {@link loamline.desk.trace.TraceStep} shows.
 */
@NullMarked
package loamline.desk.trace;

import org.jspecify.annotations.NullMarked;
