/**
 * The core log and what it says: what every core showed, how zones differ, and why a part of the turf struggles.
 *
 * <p>A log is a list of rows; {@link loamline.findings.CoreLog} sets it beside the planned cores, season by season, and
 * keeps the bags balanced. {@link loamline.findings.Findings} sets every core beside modelled water, sun and the
 * laboratory's report, compares struggling areas with the rest, and ranks causes by published signs ({@link
 * loamline.reference.Cause}). Nothing here is certain: a cause without its telling sign is never named, and "not enough
 * evidence" is an answer. Lengths are metres, pressures kPa; a reading that nobody took is absent, never 0.
 */
@NullMarked
package loamline.findings;

import org.jspecify.annotations.NullMarked;
