/**
 * The command line: each command reads, asks a room for the answer, and writes files.
 *
 * <p>Exit codes: 0 done; 1 done, but the input has errors; 2 could not be done, nothing written; 130 interrupted.
 */
@NullMarked
package loamline.cli;

import org.jspecify.annotations.NullMarked;
