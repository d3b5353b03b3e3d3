package loamline.files;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;

/** An image that can be drawn at any scale and turn, for a window or a page. */
public interface ImagePixels {
    int widthPx();

    int heightPx();

    /**
     * Draws what the clip shows.
     *
     * @param graphics without a transform, its clip set
     * @param toDevice from the image's pixels, counted from its upper left corner, to the device's
     */
    void draw(Graphics2D graphics, AffineTransform toDevice);
}
