package loamline.sheets;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages of a PDF as images, to be looked at before they are printed. */
public final class PdfImages {
    private PdfImages() {}

    /**
     * All pages in order.
     *
     * @param pdf a well-formed document, as {@link WalkPlan#pdf()} makes it
     * @param dpi pixels to the inch, above 0
     * @throws UncheckedIOException if the bytes are no PDF
     */
    public static List<BufferedImage> of(byte[] pdf, double dpi) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                pages.add(renderer.renderImageWithDPI(page, (float) dpi, ImageType.RGB));
            }
            return pages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
