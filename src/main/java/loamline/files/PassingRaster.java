package loamline.files;

import java.awt.Point;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * A raster as large as an image that keeps one row: a row that is written into it is handed on. The reader of JPEG
 * writes rows ({@link #setRect}), that of PNG pixels ({@link #setPixel}).
 */
final class PassingRaster extends WritableRaster {
    /** Takes a row. */
    interface Rows {
        void row(int y, Raster row) throws IOException;
    }

    /** Rows do not come once each from the top, as in interlaced images. */
    static final class OutOfOrder extends RuntimeException {}

    private final Rows rows;
    private final WritableRaster row;
    private int nextX;
    private int nextY;

    /** @param whole how pixels of the whole image would be kept */
    PassingRaster(SampleModel whole, Rows rows) {
        super(whole, whole.createCompatibleSampleModel(1, 1).createDataBuffer(), new Point(0, 0));
        this.rows = rows;
        row = Raster.createWritableRaster(whole.createCompatibleSampleModel(whole.getWidth(), 1), new Point(0, 0));
    }

    @Override
    public void setRect(int dx, int dy, Raster written) {
        expect(dx == 0 && dy == nextY && written.getHeight() == 1 && written.getWidth() == getWidth());
        handOn(written);
    }

    @Override
    public void setPixel(int x, int y, int[] pixel) {
        expect(x == nextX && y == nextY);
        row.setPixel(x, 0, pixel);
        nextX++;
        if (nextX == getWidth()) {
            nextX = 0;
            handOn(row);
        }
    }

    private static void expect(boolean orderly) {
        if (!orderly) {
            throw new OutOfOrder();
        }
    }

    private void handOn(Raster whole) {
        try {
            rows.row(nextY, whole);
            nextY++;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
