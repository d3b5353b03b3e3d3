package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImageTilesTest {
    /** What JPEG may change a channel by within one colour. */
    private static final int JPEG_SLIP = 6;

    private static final int WIDTH = 700;
    private static final int HEIGHT = 531;

    @TempDir
    private Path folder;

    /** Red above green at the left, blue at the right. */
    private static BufferedImage flag(int type) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, type);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(new Color(200, 40, 40));
        graphics.fillRect(0, 0, 320, 256);
        graphics.setColor(new Color(40, 160, 60));
        graphics.fillRect(0, 256, 320, HEIGHT);
        graphics.setColor(new Color(30, 60, 180));
        graphics.fillRect(320, 0, WIDTH, HEIGHT);
        graphics.dispose();
        return image;
    }

    private Path written(String format, int type, boolean progressive) throws IOException {
        Path file = folder.resolve("flag." + format);
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        if (progressive) {
            how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
        }
        Files.deleteIfExists(file);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(flag(type), null, null), how);
        }
        return file;
    }

    private static BufferedImage drawn(ImagePixels pixels, AffineTransform to, int width, int height) {
        BufferedImage device = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = device.createGraphics();
        graphics.setClip(0, 0, width, height);
        pixels.draw(graphics, to);
        graphics.dispose();
        return device;
    }

    private static void looksLike(BufferedImage device, int x, int y, int red, int green, int blue) {
        Color got = new Color(device.getRGB(x, y));
        assertThat(Math.abs(got.getRed() - red))
                .as("red at %s, %s: %s", x, y, got)
                .isLessThanOrEqualTo(JPEG_SLIP);
        assertThat(Math.abs(got.getGreen() - green)).as("green of %s", got).isLessThanOrEqualTo(JPEG_SLIP);
        assertThat(Math.abs(got.getBlue() - blue)).as("blue of %s", got).isLessThanOrEqualTo(JPEG_SLIP);
    }

    @ParameterizedTest
    @CsvSource({
        "jpeg, 1, false",
        "jpeg, 1, true",
        "png, 1, false",
        "png, 1, true",
        "png, 2, false",
        "tiff, 1, false",
        "bmp, 1, false"
    })
    void everyFormatGivesTheSamePicture(String format, int type, boolean progressive) throws IOException {
        try (ImageTiles tiles = ImageTiles.read(written(format, type, progressive), share -> {})) {
            assertThat(tiles.widthPx()).isEqualTo(WIDTH);
            assertThat(tiles.heightPx()).isEqualTo(HEIGHT);
            BufferedImage device = drawn(tiles, new AffineTransform(), WIDTH, HEIGHT);
            looksLike(device, 100, 100, 200, 40, 40);
            looksLike(device, 100, 400, 40, 160, 60);
            looksLike(device, 690, 520, 30, 60, 180);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.25, 0.37, 0.5, 1, 3})
    void bordersLieWhereTheyBelongAtEveryScale(double scale) throws IOException {
        try (ImageTiles tiles = ImageTiles.read(written("png", 1, false), share -> {})) {
            int side = (int) Math.ceil(700 * scale);
            BufferedImage device = drawn(tiles, AffineTransform.getScaleInstance(scale, scale), side, side);
            int slip = (int) Math.ceil(1 + 2 * scale) + 1;
            int borderX = (int) Math.round(320 * scale);
            int borderY = (int) Math.round(256 * scale);
            looksLike(device, borderX - slip - 1, borderY - slip - 1, 200, 40, 40);
            looksLike(device, borderX - slip - 1, borderY + slip, 40, 160, 60);
            looksLike(device, borderX + slip, borderY, 30, 60, 180);
            assertThat(device.getRGB(side / 2, side - 1) & 0xFFFFFF)
                    .as("below the image")
                    .isZero();
        }
    }

    @Test
    void anImageCanBeTurned() throws IOException {
        try (ImageTiles tiles = ImageTiles.read(written("png", 1, false), share -> {})) {
            AffineTransform quarter = new AffineTransform(0, 1, -1, 0, HEIGHT, 0);
            BufferedImage device = drawn(tiles, quarter, HEIGHT, WIDTH);
            looksLike(device, HEIGHT - 100, 100, 200, 40, 40);
            looksLike(device, HEIGHT - 400, 100, 40, 160, 60);
            looksLike(device, 10, 690, 30, 60, 180);
        }
    }

    @Test
    void whatIsTransparentIsLaidOnWhite() throws IOException {
        Path file = folder.resolve("clear.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_ARGB), "png", file.toFile());
        try (ImageTiles tiles = ImageTiles.read(file, share -> {})) {
            looksLike(drawn(tiles, new AffineTransform(), 40, 30), 20, 15, 255, 255, 255);
        }
    }

    @Test
    void progressRisesToOne() throws IOException {
        List<Double> told = new ArrayList<>();
        ImageTiles.read(written("jpeg", 1, false), told::add).close();
        assertThat(told).isSorted().last().isEqualTo(1.0);
    }

    @Test
    void anInterruptedThreadGivesUp() throws IOException {
        Path file = written("jpeg", 1, false);
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> ImageTiles.read(file, share -> {})).isInstanceOf(CancellationException.class);
        Thread.interrupted();
    }

    @Test
    void aFileThatIsNoImageSaysSo() throws IOException {
        Path file = Files.writeString(folder.resolve("note.jpg"), "no image");
        assertThatThrownBy(() -> ImageTiles.read(file, share -> {}))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("save it as PNG, JPEG or TIFF");
    }

    @Test
    void aFileThatBreaksOffIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(written("png", 1, false));
        Path file = Files.write(folder.resolve("half.png"), java.util.Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> ImageTiles.read(file, share -> {})).isInstanceOf(IOException.class);
    }

    @Test
    void closedTilesDrawNothing() throws IOException {
        ImageTiles tiles = ImageTiles.read(written("png", 1, false), share -> {});
        tiles.close();
        BufferedImage device = drawn(tiles, new AffineTransform(), 50, 50);
        assertThat(device.getRGB(10, 10) & 0xFFFFFF).isZero();
    }

    @Test
    void fourColoursMixToTheirMean() {
        assertThat(TileLevel.mean(0x000000, 0x000000, 0xFFFFFF, 0xFFFFFF)).isEqualTo(0x808080);
        assertThat(TileLevel.mean(0x010203, 0x010203, 0x010203, 0x010203)).isEqualTo(0x010203);
        assertThat(TileLevel.mean(0xFF0000, 0x00FF00, 0x0000FF, 0xFFFFFF)).isEqualTo(0x808080);
    }

    @Test
    void onlyLargeImagesNeedAnOverview() throws IOException {
        assertThat(ImageOverview.read(written("png", 1, false))).isEmpty();
    }

    @Test
    void anOverviewLiesWhereTheImageLies() {
        BufferedImage coarse = new BufferedImage(7, 6, BufferedImage.TYPE_INT_RGB);
        coarse.setRGB(3, 2, 0xFFFFFF);
        BufferedImage device = drawn(new ImageOverview(700, 600, 100, coarse), new AffineTransform(), 700, 600);
        assertThat(device.getRGB(350, 250) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(device.getRGB(450, 250) & 0xFFFFFF).isZero();
    }
}
