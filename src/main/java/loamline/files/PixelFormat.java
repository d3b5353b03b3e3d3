package loamline.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.ImageInputStream;

/**
 * How an image keeps its pixels, without reading them.
 *
 * @param widthPx 0 if unknown
 * @param heightPx 0 if unknown
 * @param isTiff whether it starts as a TIFF or BigTIFF
 * @param trouble why the pixels cannot be read, and what to do
 */
record PixelFormat(int widthPx, int heightPx, boolean isTiff, Optional<String> trouble) {
    /** TIFF compressions that the JDK unpacks: none, CCITT, LZW, JPEG, Deflate, PackBits. */
    private static final Set<Integer> READABLE = Set.of(1, 2, 3, 4, 5, 6, 7, 8, 32773, 32946);

    private static final String SAVE_AGAIN = ": save it again with Deflate, LZW or JPEG compression";

    static PixelFormat of(Path image) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(image.toFile())) {
            boolean isTiff = startsAsTiff(in);
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return unreadable(
                        isTiff,
                        isTiff
                                ? "is a BigTIFF, which cannot be shown: save it as a plain TIFF of less than 4 GB"
                                : "is no image that can be shown: save it as PNG, JPEG or TIFF");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true);
                Optional<String> packed = isTiff ? unknownCompression(reader) : Optional.empty();
                return new PixelFormat(reader.getWidth(0), reader.getHeight(0), isTiff, packed);
            } catch (IOException | RuntimeException e) { // ImageIO answers some broken images with unchecked exceptions
                return unreadable(isTiff, "is damaged and cannot be shown: save it again");
            } finally {
                reader.dispose();
            }
        }
    }

    private static PixelFormat unreadable(boolean isTiff, String trouble) {
        return new PixelFormat(0, 0, isTiff, Optional.of(trouble));
    }

    private static boolean startsAsTiff(ImageInputStream in) throws IOException {
        byte[] start = new byte[4];
        in.mark();
        boolean whole = in.read(start) == 4;
        in.reset();
        boolean little = start[0] == 'I' && start[1] == 'I' && start[3] == 0 && isVersion(start[2]);
        boolean large = start[0] == 'M' && start[1] == 'M' && start[2] == 0 && isVersion(start[3]);
        return whole && (little || large);
    }

    private static boolean isVersion(byte version) {
        return version == 42 || version == 43;
    }

    private static Optional<String> unknownCompression(ImageReader reader) throws IOException {
        TIFFField field = TIFFDirectory.createFromMetadata(reader.getImageMetadata(0))
                .getTIFFField(BaselineTIFFTagSet.TAG_COMPRESSION);
        int method = field == null ? 1 : field.getAsInt(0);
        return READABLE.contains(method)
                ? Optional.empty()
                : Optional.of("has pixels packed by " + nameOf(method) + ", which cannot be shown" + SAVE_AGAIN);
    }

    private static String nameOf(int compression) {
        return switch (compression) {
            case 34925 -> "LZMA";
            case 50000 -> "Zstandard";
            case 50001 -> "WebP";
            default -> "method " + compression;
        };
    }
}
