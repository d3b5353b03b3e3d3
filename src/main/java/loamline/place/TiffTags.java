package loamline.place;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.util.HashSet;
import java.util.Set;

/**
 * A walk over the directories of a TIFF (TIFF 6.0) or BigTIFF before anything believes them: a reader makes room for as
 * many values as a tag announces, so a broken count would take all memory.
 */
final class TiffTags {
    /** Numbers in one tag, bytes: tile offsets of the largest images take a tenth of this. */
    private static final long MAX_NUMBER_BYTES = 16L << 20;

    /** Images, masks and overviews in one file: common practice is below 20. */
    private static final int MAX_DIRECTORIES = 1000;

    /** Bytes of a value by type, TIFF 6.0 page 15, then BigTIFF's 16 to 18; 0 for types that do not exist. */
    private static final int[] TYPE_BYTES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

    private final SeekableByteChannel tiff;
    private final ByteOrder order;
    private final boolean big;

    private TiffTags(SeekableByteChannel tiff, ByteOrder order, boolean big) {
        this.tiff = tiff;
        this.order = order;
        this.big = big;
    }

    /**
     * Checks that every value of every directory lies inside the file and is of a bearable size.
     *
     * @param tiff at its start, and there again afterwards
     * @throws PlaceException if not, or if this is no TIFF
     */
    static void check(SeekableByteChannel tiff) throws PlaceException, IOException {
        ByteBuffer head = read(tiff, 0, 16);
        int mark = head.remaining() < 8 ? 0 : head.getShort(0);
        ByteOrder order = mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        int version = mark == 0x4949 || mark == 0x4D4D ? head.order(order).getShort(2) : 0;
        if (version != 42 && (version != 43 || head.remaining() < 16)) {
            throw new PlaceException("this is not a TIFF image");
        }
        boolean big = version == 43;
        new TiffTags(tiff, order, big).walk(big ? head.getLong(8) : Integer.toUnsignedLong(head.getInt(4)));
        tiff.position(0);
    }

    private void walk(long first) throws PlaceException, IOException {
        Set<Long> seen = new HashSet<>();
        long at = first;
        while (at != 0) {
            if (!seen.add(at) || seen.size() > MAX_DIRECTORIES) {
                throw broken("its directories do not end");
            }
            int countBytes = big ? 8 : 2;
            ByteBuffer count = bytes(at, countBytes);
            long entries = big ? count.getLong() : Short.toUnsignedInt(count.getShort());
            int entryBytes = big ? 20 : 12;
            if (entries < 0 || entries > 0xFFFF) {
                throw broken("a directory of " + entries + " tags");
            }
            ByteBuffer directory = bytes(at + countBytes, (int) entries * entryBytes + (big ? 8 : 4));
            for (int i = 0; i < entries; i++) {
                checkEntry(directory.position(i * entryBytes));
            }
            directory.position((int) entries * entryBytes);
            at = offset(directory);
        }
    }

    private void checkEntry(ByteBuffer entry) throws PlaceException, IOException {
        int tag = Short.toUnsignedInt(entry.getShort());
        int type = Short.toUnsignedInt(entry.getShort());
        long count = offset(entry);
        int each = type < TYPE_BYTES.length ? TYPE_BYTES[type] : 0;
        boolean inEntry = count >= 0 && count <= (big ? 8 : 4) / Math.max(1, each);
        if (each == 0 || inEntry) {
            return; // types that do not exist are passed over by readers
        }
        long room = tiff.size() - offset(entry);
        long bearable = each > 1 ? Math.min(room, MAX_NUMBER_BYTES) : room;
        if (count < 0 || count > bearable / each) {
            throw broken("tag " + tag + " announces " + Long.toUnsignedString(count) + " values");
        }
    }

    /** An offset or a count: 4 bytes, or 8 in a BigTIFF. */
    private long offset(ByteBuffer from) {
        return big ? from.getLong() : Integer.toUnsignedLong(from.getInt());
    }

    private ByteBuffer bytes(long at, int size) throws PlaceException, IOException {
        if (at < 0 || at > tiff.size() - size) {
            throw broken("a directory lies beyond its end");
        }
        return read(tiff, at, size).order(order);
    }

    /** Up to a number of bytes; fewer where the file ends. */
    private static ByteBuffer read(SeekableByteChannel tiff, long at, int size) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(size);
        tiff.position(at);
        int got = 0;
        while (bytes.hasRemaining() && got >= 0) {
            got = tiff.read(bytes);
        }
        return bytes.flip();
    }

    private static PlaceException broken(String what) {
        return new PlaceException("this TIFF is damaged: " + what + "; save the image again");
    }
}
