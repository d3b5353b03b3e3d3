package loamline.desk.map;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.Optional;
import java.util.Set;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import loamline.desk.session.Results;
import loamline.files.ImagePixels;
import loamline.sampling.CorePlan;
import loamline.scene.Layer;
import loamline.scene.Palette;
import loamline.units.UnitSystem;

/**
 * A picture of the map as it stood when it was asked for.
 *
 * @param asked what it shows
 * @param image its pixels
 */
record MapPicture(Ask asked, WritableImage image) {
    /**
     * What a picture is to show.
     *
     * @param content counts up whenever anything but the viewport changes
     * @param viewport the ground, with a margin
     * @param pixelScale device pixels to a logical one
     */
    record Ask(long content, Viewport viewport, double pixelScale, Content what) {
        /** Whether its picture will do for a window: same content and scale, and nothing is missing. */
        boolean serves(long wanted, Viewport window, double pixels) {
            return content == wanted
                    && pixelScale == pixels
                    && viewport.metresPerPx() == window.metresPerPx()
                    && viewport.covers(window);
        }
    }

    /**
     * Everything that is drawn.
     *
     * @param plan cores and walk; the last ones while new ones are being planned
     * @param found what a step has found
     * @param pixels the image underneath, as far as it is read
     */
    record Content(
            Results results,
            Optional<CorePlan> plan,
            Found found,
            Optional<ImagePixels> pixels,
            Set<Layer> layers,
            boolean imageShown,
            Palette palette,
            UnitSystem units) {
        Content {
            layers = Set.copyOf(layers);
        }

        /** How opaque the image is, 0 to 1; 0 if there is none to be seen. */
        double imageOpacity() {
            boolean seen = imageShown && pixels.isPresent();
            return seen ? results.yard().backdrop().map(b -> b.opacity()).orElse(0.0) : 0;
        }
    }

    /** Wraps pixels without copying them; they must not change any more. */
    static MapPicture of(Ask asked, BufferedImage drawn) {
        int[] argb = ((DataBufferInt) drawn.getRaster().getDataBuffer()).getData();
        PixelBuffer<IntBuffer> pixels = new PixelBuffer<>(
                drawn.getWidth(), drawn.getHeight(), IntBuffer.wrap(argb), PixelFormat.getIntArgbPreInstance());
        return new MapPicture(asked, new WritableImage(pixels));
    }
}
