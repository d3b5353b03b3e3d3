package loamline.files;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Tiles in a file that goes when it is closed, packed as JPEG: a tenth of their size, and they are only looked at. */
final class TileStore implements Closeable {
    /** Shares of a pixel's colour are not seen to change. */
    private static final float QUALITY = 0.9f;

    /** A tile's place in the pyramid: level 0 holds the image as it is, each further level half as much. */
    record Key(int level, int column, int row) {}

    private record Extent(long offset, int bytes) {}

    private final Map<Key, Extent> places = new HashMap<>();
    private final FileChannel file;
    private final ImageWriter packer =
            ImageIO.getImageWritersByFormatName("jpeg").next();
    private final ImageWriteParam packing = packer.getDefaultWriteParam();
    private long end;

    TileStore() throws IOException {
        Path temporary = Files.createTempFile("loamline", ".tiles");
        file = FileChannel.open(
                temporary, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
        packing.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        packing.setCompressionQuality(QUALITY);
    }

    void put(Key key, BufferedImage tile) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(packed)) {
            packer.setOutput(out);
            packer.write(null, new IIOImage(tile, null, null), packing);
        }
        ByteBuffer bytes = ByteBuffer.wrap(packed.toByteArray());
        places.put(key, new Extent(end, bytes.remaining()));
        while (bytes.hasRemaining()) {
            end += file.write(bytes, end);
        }
    }

    /** A tile's pixels, 0xRRGGBB row by row. */
    int[] get(Key key) throws IOException {
        Extent place = places.get(key);
        if (place == null) {
            throw new IllegalArgumentException("no tile " + key);
        }
        ByteBuffer bytes = ByteBuffer.allocate(place.bytes);
        while (bytes.hasRemaining()) {
            if (file.read(bytes, place.offset + bytes.position()) < 0) {
                throw new IOException("the temporary file of the image was cut off");
            }
        }
        BufferedImage packed = ImageIO.read(new ByteArrayInputStream(bytes.array()));
        return packed.getRGB(0, 0, packed.getWidth(), packed.getHeight(), null, 0, packed.getWidth());
    }

    long bytes() {
        return end;
    }

    @Override
    public void close() throws IOException {
        packer.dispose();
        file.close();
    }
}
