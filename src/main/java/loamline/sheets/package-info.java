/**
 * Pages and pictures: PDF for print, PNG for everything else.
 *
 * <p>{@link loamline.sheets.WalkPlan} is the first document; others put their pages together from the same few
 * parts. A {@link loamline.sheets.Block} takes the width it is given and says how high it is; a {@link
 * loamline.sheets.Column} sets blocks one below the other and breaks them into {@link loamline.sheets.Page}s,
 * repeating the head of a {@link loamline.sheets.Table}; a {@link loamline.sheets.Book} adds header and foot
 * and writes the PDF. {@link loamline.sheets.PdfCanvas} and {@link loamline.sheets.ImageCanvas} are the two
 * papers that a {@link loamline.scene.Scene} can be painted on.
 *
 * <p>Results: vector only, text can be selected, fonts are embedded. A character that the fonts do not have is
 * replaced by an empty box, never an error. There is no clock: the same input gives the same bytes.
 */
@NullMarked
package loamline.sheets;

import org.jspecify.annotations.NullMarked;
