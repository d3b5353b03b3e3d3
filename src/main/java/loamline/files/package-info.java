/**
 * Bytes to values and back: the project file, GeoJSON, tables that people type, the place of images, result files, and
 * whole-or-nothing writing.
 *
 * <p>Reading gives a {@link loamline.files.Read}: a value with every problem that was met, each at its line
 * (text that is not well formed) or JSON pointer (content that cannot be used). What is sound is read even
 * where its neighbour is not; a feature that cannot be read, and every name that this program does not know,
 * is kept as it stood and written back. A value is missing only if the file as a whole is of no use. No input
 * leads to an exception: those are for the disk ({@link java.io.IOException}) and for programming errors.
 * {@link loamline.files.CsvTable} does the same row by row.
 *
 * <p>Writing gives the same bytes for the same value: UTF-8, {@code \n}, no clock. {@link
 * loamline.files.AtomicFiles} and {@link loamline.files.AtomicFolder} put them in place whole or not at all.
 */
@NullMarked
package loamline.files;

import org.jspecify.annotations.NullMarked;
