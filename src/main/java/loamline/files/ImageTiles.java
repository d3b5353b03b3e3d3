package loamline.files;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import loamline.cancel.Cancellation;

/**
 * A large image, ready to be drawn at any scale: a pyramid of tiles in a temporary file, made by reading the image
 * once from top to bottom.
 *
 * <p>Memory: while reading, 8 bytes for every column and row of a tile (30 MB for 14,000 columns); afterwards the
 * {@value #MOST_TILES} tiles used last, 64 MB, and what is drawn at the moment. Interlaced images have to be read in
 * one piece and are refused where that takes more than a quarter of the memory.
 *
 * <p>May be drawn from one thread and closed from another; closed, it draws nothing.
 */
public final class ImageTiles implements ImagePixels, Closeable {
    /** Side of a tile. */
    static final int TILE_PX = 256;

    /** Tiles kept unpacked, a quarter of a megabyte each. */
    static final int MOST_TILES = 256;

    private final int widthPx;
    private final int heightPx;
    private final TileStore store;
    private final Map<TileStore.Key, int[]> used = new LinkedHashMap<>(MOST_TILES, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<TileStore.Key, int[]> eldest) {
            return size() > MOST_TILES;
        }
    };
    private boolean closed;

    private ImageTiles(int widthPx, int heightPx, TileStore store) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.store = store;
    }

    /**
     * Reads an image.
     *
     * @param progress told the share that is done, 0 to 1
     * @throws CancellationException if the thread is interrupted
     * @throws IOException if the image cannot be read; its message says why, in words for a user
     */
    public static ImageTiles read(Path image, DoubleConsumer progress) throws IOException {
        QuietLibraries.silence();
        TileStore store = new TileStore();
        Building building = new Building(store, progress);
        boolean done = false;
        try {
            PixelRows.read(image, building);
            done = true;
            return new ImageTiles(building.width, building.height, store);
        } finally {
            if (!done) {
                store.close();
            }
        }
    }

    /** Builds the pyramid while rows come in; a new size starts it over. */
    private static final class Building implements PixelRows.Sink {
        private final TileStore store;
        private final DoubleConsumer progress;
        private TileLevel base;
        private int width = 1;
        private int height = 1;

        Building(TileStore store, DoubleConsumer progress) {
            this.store = store;
            this.progress = progress;
            base = new TileLevel(store, 0, width, height);
        }

        @Override
        public void size(int widthPx, int heightPx) {
            width = widthPx;
            height = heightPx;
            base = new TileLevel(store, 0, widthPx, heightPx);
        }

        @Override
        public void row(int y, int[] rgb) throws IOException {
            Cancellation.check();
            base.row(rgb);
            progress.accept((y + 1.0) / height);
        }
    }

    @Override
    public int widthPx() {
        return widthPx;
    }

    @Override
    public int heightPx() {
        return heightPx;
    }

    /** Room that the tiles take on disk. */
    public long storedBytes() {
        return store.bytes();
    }

    @Override
    public synchronized void draw(Graphics2D graphics, AffineTransform toDevice) {
        int level = level(toDevice);
        Rectangle shown = shown(graphics.getClipBounds(), toDevice, level);
        if (closed || shown.isEmpty()) {
            return;
        }
        AffineTransform place = new AffineTransform(toDevice);
        place.scale(1 << level, 1 << level);
        place.translate(shown.x, shown.y);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(mosaic(level, shown), place, null);
    }

    /** The level whose pixels are nearest in size to the device's. */
    private int level(AffineTransform toDevice) {
        double devicePx = Math.sqrt(Math.abs(toDevice.getDeterminant()));
        long nearest = Math.round(-Math.log(devicePx) / Math.log(2));
        int coarsest = 0;
        while (Math.max(widthPx, heightPx) > (long) TILE_PX << coarsest) {
            coarsest++;
        }
        return (int) Math.max(0, Math.min(coarsest, nearest));
    }

    /** The pixels of a level that a clip shows. */
    private Rectangle shown(Rectangle clip, AffineTransform toDevice, int level) {
        try {
            Rectangle2D inImage =
                    toDevice.createInverse().createTransformedShape(clip).getBounds2D();
            int step = 1 << level;
            Rectangle inLevel = new Rectangle2D.Double(
                            inImage.getX() / step,
                            inImage.getY() / step,
                            inImage.getWidth() / step,
                            inImage.getHeight() / step)
                    .getBounds();
            inLevel.grow(1, 1); // pixels at the edge are mixed with their neighbours
            return inLevel.intersection(new Rectangle(0, 0, side(widthPx, level), side(heightPx, level)));
        } catch (NoninvertibleTransformException e) {
            return new Rectangle();
        }
    }

    /** Pixels along a side of the image on a level: halved and rounded up at each. */
    private static int side(int px, int level) {
        return (int) (((long) px + (1L << level) - 1) >> level);
    }

    /** A part of a level in one piece, so that no seam between tiles is seen. */
    private BufferedImage mosaic(int level, Rectangle part) {
        BufferedImage mosaic = new BufferedImage(part.width, part.height, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) mosaic.getRaster().getDataBuffer()).getData();
        int lastColumn = (part.x + part.width - 1) / TILE_PX;
        int lastRow = (part.y + part.height - 1) / TILE_PX;
        for (int row = part.y / TILE_PX; row <= lastRow; row++) {
            for (int column = part.x / TILE_PX; column <= lastColumn; column++) {
                Rectangle whole = new Rectangle(
                        column * TILE_PX,
                        row * TILE_PX,
                        Math.min(TILE_PX, side(widthPx, level) - column * TILE_PX),
                        Math.min(TILE_PX, side(heightPx, level) - row * TILE_PX));
                copy(tile(new TileStore.Key(level, column, row)), whole, part, pixels);
            }
        }
        return mosaic;
    }

    private static void copy(int[] tile, Rectangle whole, Rectangle part, int[] pixels) {
        Rectangle both = whole.intersection(part);
        for (int y = both.y; y < both.y + both.height; y++) {
            int from = (y - whole.y) * whole.width + both.x - whole.x;
            System.arraycopy(tile, from, pixels, (y - part.y) * part.width + both.x - part.x, both.width);
        }
    }

    private int[] tile(TileStore.Key key) {
        int[] kept = used.get(key);
        if (kept != null) {
            return kept;
        }
        try {
            int[] read = store.get(key);
            used.put(key, read);
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void close() throws IOException {
        closed = true;
        used.clear();
        store.close();
    }
}
