package loamline.files;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.place.Affine;
import loamline.place.Crs;
import loamline.place.GeoTiff;
import loamline.place.ImagePlace;
import loamline.place.LonLat;
import loamline.place.PlaceException;

/** Reads one {@link Imagery}. */
final class ImageryReader {
    /** No image of 200 megapixels is larger, even unpacked with 16 bits in four bands. */
    private static final long MAX_BYTES = 4L << 30;

    /** Pixels in degrees are finer than this, 11 m; in metres or feet they are coarser. */
    private static final double MAX_PIXEL_DEG = 1e-4;

    /** A shift of datum that is worth a word, m: what a phone errs by anyway (common practice, no source). */
    private static final double ROUGH_M = 5;

    private final Path image;
    private final Optional<Crs> named;
    private final List<Problem> problems = new ArrayList<>();

    ImageryReader(Path image, Optional<Crs> named) {
        this.image = image;
        this.named = named;
    }

    Read<Imagery> read() {
        try {
            Optional<Problem> trouble = FileTrouble.beforeReading(image, MAX_BYTES);
            return trouble.isPresent() ? Read.failed(List.of(trouble.get())) : readContent();
        } catch (IOException e) {
            return Read.failed(List.of(FileTrouble.of(e)));
        }
    }

    private Read<Imagery> readContent() throws IOException {
        PixelFormat pixels = PixelFormat.of(image);
        pixels.trouble().ifPresent(what -> problems.add(error("IMAGE_PIXELS_UNREADABLE", what)));
        Optional<GeoTiff> tags = pixels.isTiff() ? tags() : Optional.empty();
        int widthPx = tags.map(GeoTiff::widthPx).orElse(pixels.widthPx());
        int heightPx = tags.map(GeoTiff::heightPx).orElse(pixels.heightPx());
        if (widthPx < 1 || heightPx < 1) {
            return Read.failed(problems);
        }
        Optional<Affine> toCrs = toCrs(tags);
        Optional<Crs> crs = toCrs.isPresent() ? crs(tags, toCrs.get(), widthPx, heightPx) : Optional.empty();
        Optional<ImagePlace> place = crs.map(c -> new ImagePlace(widthPx, heightPx, toCrs.orElseThrow(), c));
        Optional<Affine> unnamed = crs.isPresent() ? Optional.empty() : toCrs;
        return new Read<>(
                Optional.of(new Imagery(widthPx, heightPx, place.filter(this::isOnEarth), unnamed)), problems);
    }

    private Optional<GeoTiff> tags() throws IOException {
        try (SeekableByteChannel tiff = Files.newByteChannel(image)) {
            return Optional.of(GeoTiff.read(tiff));
        } catch (PlaceException e) {
            problems.add(warning("IMAGE_PLACE_UNREADABLE", e.getMessage()));
            return Optional.empty();
        }
    }

    private Optional<Affine> toCrs(Optional<GeoTiff> tags) throws IOException {
        Optional<Affine> stated = tags.flatMap(GeoTiff::toCrs);
        try {
            Optional<Affine> found = stated.isPresent() ? stated : ImageSideFiles.toCrs(image);
            if (found.isEmpty()) {
                problems.add(Problem.info(
                        "IMAGE_WITHOUT_PLACE",
                        Where.WHOLE,
                        "has no place that can be used: measure a known distance on it to set its scale"));
            }
            return found;
        } catch (PlaceException e) {
            problems.add(warning("IMAGE_PLACE_UNREADABLE", e.getMessage()));
            return Optional.empty();
        }
    }

    private Optional<Crs> crs(Optional<GeoTiff> tags, Affine toCrs, int widthPx, int heightPx) throws IOException {
        Optional<Crs> stated = tags.flatMap(GeoTiff::crs);
        try {
            Optional<Crs> found = stated.isPresent() ? stated : ImageSideFiles.crs(image);
            if (found.isPresent() || named.isPresent()) {
                return found.or(() -> named);
            }
        } catch (PlaceException e) {
            problems.add(warning("IMAGE_PLACE_UNREADABLE", e.getMessage()));
        }
        if (looksLikeDegrees(toCrs, widthPx, heightPx)) {
            problems.add(Problem.info(
                    "IMAGE_DEGREES_ASSUMED",
                    Where.WHOLE,
                    "names no coordinate reference system; its numbers are taken as WGS 84 degrees"));
            return Optional.of(Crs.LON_LAT);
        }
        problems.add(warning(
                "IMAGE_SYSTEM_UNKNOWN",
                "has coordinates but does not say in which coordinate reference system: name it (such as EPSG:32617),"
                        + " or put the .prj file beside the image"));
        return Optional.empty();
    }

    private static boolean looksLikeDegrees(Affine toCrs, int widthPx, int heightPx) {
        return toCrs.pixelSide() < MAX_PIXEL_DEG
                && LonLat.isOnEarth(toCrs.x(0, 0), toCrs.y(0, 0))
                && LonLat.isOnEarth(toCrs.x(widthPx, heightPx), toCrs.y(widthPx, heightPx));
    }

    private boolean isOnEarth(ImagePlace place) {
        double accuracyM = place.crs().accuracyM();
        if (accuracyM > ROUGH_M) {
            problems.add(Problem.info(
                    "IMAGE_PLACE_ROUGH",
                    Where.WHOLE,
                    String.format(
                            Locale.ROOT,
                            "is in “%s”, whose place on the earth is known to %.0f m here; shapes and areas are right",
                            place.crs().name(),
                            accuracyM)));
        }
        try {
            place.centre();
            return true;
        } catch (PlaceException e) {
            problems.add(warning("IMAGE_PLACE_UNREADABLE", e.getMessage()));
            return false;
        }
    }

    private static Problem warning(String code, String message) {
        return Problem.warning(code, Where.WHOLE, message);
    }

    private static Problem error(String code, String message) {
        return Problem.error(code, Where.WHOLE, message);
    }
}
