package loamline.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.place.Affine;
import loamline.place.Crs;
import loamline.place.ImagePlace;
import loamline.place.LonLat;
import loamline.place.PlaceException;
import loamline.yard.Backdrop;
import loamline.yard.Extras;

/**
 * What an aerial image says of itself: its size and where it lies. Its pixels are not read.
 *
 * <p>The place comes from the tags of a GeoTIFF, else from a world file beside the image (.tfw, .pgw, .jgw, .wld …),
 * else from a side file of GDAL (.aux.xml). The coordinate reference system comes from the tags, else from a .prj file,
 * else from the side file, else from the caller; numbers that can only be degrees are taken as WGS 84.
 *
 * @param place empty for a plain picture, whose scale has to be measured
 * @param unnamed from pixels to coordinates in a system that nobody names; empty if there are none, or the place is
 *     known
 */
public record Imagery(int widthPx, int heightPx, Optional<ImagePlace> place, Optional<Affine> unnamed) {
    /** How opaque an image is at first. */
    public static final double OPAQUE = 1;

    /** Reads an image's size and place; every failure is among the problems. */
    public static Read<Imagery> read(Path image) {
        return read(image, Optional.empty());
    }

    /**
     * Reads an image's size and place.
     *
     * @param system what the numbers beside the image mean, if they do not say so themselves
     */
    public static Read<Imagery> read(Path image, Optional<Crs> system) {
        QuietLibraries.silence();
        return new ImageryReader(image, system).read();
    }

    /**
     * The image laid under a yard.
     *
     * @param file what the yard calls the image
     * @param origin the yard's own place; for a new yard {@link ImagePlace#centre()} is a good one
     * @return with a warning if the image bends visibly against the yard's plane; empty if it cannot be drawn there
     */
    public static Read<Backdrop> under(LonLat origin, String file, ImagePlace place) {
        try {
            ImagePlace.Fit fit = place.onto(origin);
            Affine to = fit.toYard();
            Backdrop backdrop = new Backdrop(
                    file,
                    place.widthPx(),
                    place.heightPx(),
                    new Backdrop.Placement(to.a(), to.b(), to.c(), to.d(), to.e(), to.f()),
                    0,
                    OPAQUE,
                    List.of(),
                    Extras.NONE);
            return new Read<>(Optional.of(backdrop), bent(fit));
        } catch (PlaceException e) {
            return Read.failed(List.of(Problem.error("IMAGE_OUT_OF_REACH", Where.WHOLE, e.getMessage())));
        }
    }

    private static List<Problem> bent(ImagePlace.Fit fit) {
        if (fit.residualPx() <= ImagePlace.MAX_RESIDUAL_PX) {
            return List.of();
        }
        return List.of(Problem.warning(
                "IMAGE_BENT",
                Where.WHOLE,
                String.format(
                        Locale.ROOT,
                        "the image bends against the yard's plane by up to %.1f pixels (%.2f m):"
                                + " crop it to the yard, or export it in UTM",
                        fit.residualPx(),
                        fit.residualM())));
    }
}
