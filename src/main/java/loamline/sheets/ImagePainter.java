package loamline.sheets;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.PaperRect;
import loamline.scene.Scene;

/**
 * Makes images of scenes.
 *
 * @param dpi pixels in an inch of paper, above 0
 * @param ground what is painted first
 */
public record ImagePainter(Fonts fonts, double dpi, Ink ground) {
    private static final double MM_PER_INCH = 25.4;
    private static final String PNG_METADATA = "javax_imageio_png_1.0";

    /** A scene as a PNG that knows its resolution and nothing else. */
    public byte[] png(Scene scene) {
        return png(image(scene));
    }

    /** A scene as an image. */
    public BufferedImage image(Scene scene) {
        return image(scene.view().paper(), canvas -> scene.paint(canvas, new Point(0, 0)));
    }

    /** Anything that is drawn on paper of a size, as an image. */
    BufferedImage image(PaperRect paper, Consumer<Canvas> drawing) {
        double perMm = dpi / MM_PER_INCH;
        int width = (int) Math.max(1, Math.rint(paper.widthMm() * perMm));
        int height = (int) Math.max(1, Math.rint(paper.heightMm() * perMm));
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Awt.color(ground));
        graphics.fillRect(0, 0, width, height);
        draw(graphics, drawing);
        return image;
    }

    /** Paints a scene over what an image shows already; the view's upper left corner goes to the image's. */
    public void paint(Scene scene, BufferedImage over) {
        draw(over.createGraphics(), canvas -> scene.paint(canvas, new Point(0, 0)));
    }

    private void draw(Graphics2D graphics, Consumer<Canvas> drawing) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(dpi / MM_PER_INCH, dpi / MM_PER_INCH);
        drawing.accept(new ImageCanvas(graphics, fonts));
        graphics.dispose();
    }

    /** The bytes of a PNG; its pHYs chunk tells the resolution. */
    byte[] png(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            IIOMetadata metadata = writer.getDefaultImageMetadata(
                    ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
            IIOMetadataNode root = new IIOMetadataNode(PNG_METADATA);
            root.appendChild(resolution());
            metadata.mergeTree(PNG_METADATA, root);
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, metadata));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** Pixels to the metre, as PNG wants them (W3C PNG, section 11.3.4.3). */
    private IIOMetadataNode resolution() {
        String perMetre = Long.toString(Math.round(1000 * dpi / MM_PER_INCH));
        IIOMetadataNode node = new IIOMetadataNode("pHYs");
        node.setAttribute("pixelsPerUnitXAxis", perMetre);
        node.setAttribute("pixelsPerUnitYAxis", perMetre);
        node.setAttribute("unitSpecifier", "meter");
        return node;
    }
}
