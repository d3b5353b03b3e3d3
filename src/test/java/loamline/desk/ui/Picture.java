package loamline.desk.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** What can be seen of a window, a pixel to a logical pixel. */
record Picture(BufferedImage image) {
    /** Taken on the screen's thread. */
    static Picture of(Scene scene) {
        WritableImage seen = scene.snapshot(null);
        int width = (int) seen.getWidth();
        int height = (int) seen.getHeight();
        int[] argb = new int[width * height];
        seen.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, argb, 0, width);
        return new Picture(image);
    }

    void save(Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(image, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The colour that most pixels of a place have, as 0xRRGGBB: what lies behind a text there. */
    int commonest(Bounds place) {
        int x = Math.max(0, (int) place.getMinX());
        int y = Math.max(0, (int) place.getMinY());
        int width = Math.min(image.getWidth(), (int) Math.ceil(place.getMaxX())) - x;
        int height = Math.min(image.getHeight(), (int) Math.ceil(place.getMaxY())) - y;
        Map<Integer, Long> counts = Arrays.stream(image.getRGB(x, y, width, height, null, 0, width))
                .mapToObj(rgb -> rgb & 0xFFFFFF)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** Contrast of two colours, 1 to 21; WCAG 2.2, "contrast ratio". */
    static double contrast(int one, int other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    /** WCAG 2.2, "relative luminance". */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        double share = (channel & 0xFF) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
