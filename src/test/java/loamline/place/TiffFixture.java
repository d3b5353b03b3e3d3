package loamline.place;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.TreeMap;

/**
 * Small grey TIFFs, byte by byte (TIFF 6.0, little endian), with GeoTIFF tags (OGC 19-008r4) as a test wants them.
 */
public final class TiffFixture {
    private static final int SHORT = 3;
    private static final int DOUBLE = 12;

    private record Value(int type, int count, byte[] bytes) {}

    private final TreeMap<Integer, Value> tags = new TreeMap<>();
    private final int width;
    private final int height;

    private TiffFixture(int width, int height) {
        this.width = width;
        this.height = height;
    }

    /** An image without a place. */
    public static TiffFixture plain(int width, int height) {
        return new TiffFixture(width, height)
                .shorts(256, width)
                .shorts(257, height)
                .shorts(258, 8)
                .shorts(259, 1)
                .shorts(262, 1)
                .shorts(277, 1)
                .shorts(278, height)
                .shorts(279, width * height);
    }

    /** Size of a pixel and the place of the upper left corner (or pixel). */
    public TiffFixture placed(double scaleX, double scaleY, double x, double y) {
        return doubles(33550, scaleX, scaleY, 0).doubles(33922, 0, 0, 0, x, y, 0);
    }

    /** x = a·column + b·row + c, y = d·column + e·row + f. */
    public TiffFixture matrix(double a, double b, double c, double d, double e, double f) {
        return doubles(34264, a, b, 0, c, d, e, 0, f, 0, 0, 0, 0, 0, 0, 0, 1);
    }

    /** Keys and their values, in turn, keys rising: model type 1024, raster type 1025, system 2048 or 3072 … */
    public TiffFixture keys(int... keysAndValues) {
        int[] directory = new int[4 + 2 * keysAndValues.length];
        directory[0] = 1;
        directory[1] = 1;
        directory[3] = keysAndValues.length / 2;
        for (int i = 0; i < keysAndValues.length; i += 2) {
            directory[4 + 2 * i] = keysAndValues[i];
            directory[4 + 2 * i + 2] = 1;
            directory[4 + 2 * i + 3] = keysAndValues[i + 1];
        }
        return shorts(34735, directory);
    }

    public TiffFixture shorts(int tag, int... values) {
        ByteBuffer bytes = buffer(2 * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        tags.put(tag, new Value(SHORT, values.length, bytes.array()));
        return this;
    }

    public TiffFixture doubles(int tag, double... values) {
        ByteBuffer bytes = buffer(8 * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        tags.put(tag, new Value(DOUBLE, values.length, bytes.array()));
        return this;
    }

    /** The image as TIFF. */
    public byte[] bytes() {
        return bytes(8, 2, 4);
    }

    /** The image as BigTIFF. */
    public byte[] bigBytes() {
        return bytes(16, 8, 8);
    }

    private byte[] bytes(int headerBytes, int entriesBytes, int offsetBytes) {
        TreeMap<Integer, Value> all = new TreeMap<>(tags);
        all.put(273, new Value(SHORT, 1, buffer(2).putShort((short) headerBytes).array()));
        int directoryAt = headerBytes + width * height + (width * height) % 2;
        int valuesAt = directoryAt + entriesBytes + (4 + 2 * offsetBytes) * all.size() + offsetBytes;
        int size =
                valuesAt + all.values().stream().mapToInt(v -> v.bytes.length).sum();
        ByteBuffer out = buffer(size);
        out.putShort((short) 0x4949);
        if (offsetBytes == 8) {
            out.putShort((short) 43).putShort((short) 8).putShort((short) 0);
        } else {
            out.putShort((short) 42);
        }
        put(out, directoryAt, offsetBytes);
        out.position(directoryAt);
        put(out, all.size(), entriesBytes);
        int next = valuesAt;
        for (Map.Entry<Integer, Value> tag : all.entrySet()) {
            Value value = tag.getValue();
            out.putShort(tag.getKey().shortValue()).putShort((short) value.type);
            put(out, value.count, offsetBytes);
            if (value.bytes.length <= offsetBytes) {
                out.put(value.bytes).put(new byte[offsetBytes - value.bytes.length]);
            } else {
                put(out, next, offsetBytes);
                out.duplicate().position(next).put(value.bytes);
                next += value.bytes.length;
            }
        }
        put(out, 0, offsetBytes);
        return out.array();
    }

    private static void put(ByteBuffer out, int value, int bytes) {
        for (int i = 0; i < bytes; i++) {
            out.put((byte) (i < 4 ? value >> 8 * i : 0));
        }
    }

    /** The bytes as a file that is gone after use. */
    public static SeekableByteChannel channel(byte[] bytes) {
        try {
            Path file = Files.createTempFile("loamline", ".tif");
            Files.write(file, bytes);
            return Files.newByteChannel(file, StandardOpenOption.READ, StandardOpenOption.DELETE_ON_CLOSE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
