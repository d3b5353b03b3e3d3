/**
 * The document: a yard and everything drawn in it.
 *
 * <p>A {@link loamline.yard.Yard} is an immutable value. Edits are functions from a yard to a yard, {@link
 * loamline.yard.History} keeps the sequence of them, {@link loamline.yard.YardCheck} lists what is doubtful.
 * Features keep what was drawn and what was said, including what this program does not understand ({@link
 * loamline.yard.Extras}, {@link loamline.yard.Unknown}). Lengths are metres, angles degrees.
 */
@NullMarked
package loamline.yard;

import org.jspecify.annotations.NullMarked;
