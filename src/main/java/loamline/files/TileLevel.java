package loamline.files;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.util.Optional;

/**
 * One level of a pyramid in the making: rows come in from the top; every full row of tiles goes to the store, and
 * every two rows become one of the next level, which has half as many columns. A last odd row or column counts twice.
 */
final class TileLevel {
    private final TileStore store;
    private final int level;
    private final int width;
    private final int height;
    private final int[] band;
    private final int[] held;
    private final Optional<TileLevel> next;
    private int rows;

    TileLevel(TileStore store, int level, int width, int height) {
        this.store = store;
        this.level = level;
        this.width = width;
        this.height = height;
        band = new int[width * Math.min(ImageTiles.TILE_PX, height)];
        held = new int[(width + 1) / 2];
        next = width <= ImageTiles.TILE_PX && height <= ImageTiles.TILE_PX
                ? Optional.empty()
                : Optional.of(new TileLevel(store, level + 1, (width + 1) / 2, (height + 1) / 2));
    }

    void row(int[] rgb) throws IOException {
        int inBand = rows % ImageTiles.TILE_PX;
        System.arraycopy(rgb, 0, band, inBand * width, width);
        rows++;
        boolean last = rows == height;
        if (next.isPresent() && (rows % 2 == 0 || last)) {
            int upper = rows % 2 == 0 ? inBand - 1 : inBand;
            halve(upper * width, inBand * width);
            next.get().row(held);
        }
        if (inBand == ImageTiles.TILE_PX - 1 || last) {
            cut(inBand + 1);
        }
    }

    private void halve(int upper, int lower) {
        for (int x = 0; x < held.length; x++) {
            int left = 2 * x;
            int right = Math.min(left + 1, width - 1);
            held[x] = mean(band[upper + left], band[upper + right], band[lower + left], band[lower + right]);
        }
    }

    /** The mean of four colours, each channel rounded to the nearest. */
    static int mean(int a, int b, int c, int d) {
        int redBlue = (a & 0xFF00FF) + (b & 0xFF00FF) + (c & 0xFF00FF) + (d & 0xFF00FF) + 0x020002;
        int green = (a & 0x00FF00) + (b & 0x00FF00) + (c & 0x00FF00) + (d & 0x00FF00) + 0x000200;
        return redBlue >>> 2 & 0xFF00FF | green >>> 2 & 0x00FF00;
    }

    private void cut(int bandRows) throws IOException {
        int row = (rows - 1) / ImageTiles.TILE_PX;
        for (int left = 0; left < width; left += ImageTiles.TILE_PX) {
            int columns = Math.min(ImageTiles.TILE_PX, width - left);
            BufferedImage tile = new BufferedImage(columns, bandRows, BufferedImage.TYPE_INT_RGB);
            int[] pixels = ((DataBufferInt) tile.getRaster().getDataBuffer()).getData();
            for (int y = 0; y < bandRows; y++) {
                System.arraycopy(band, y * width + left, pixels, y * columns, columns);
            }
            store.put(new TileStore.Key(level, left / ImageTiles.TILE_PX, row), tile);
        }
    }
}
