package loamline.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.place.Affine;
import loamline.place.Crs;
import loamline.place.PlaceException;

/** Files beside an image that say where it lies; the first that is there counts. */
final class ImageSideFiles {
    /** A description of a coordinate reference system has a few thousand characters, a side file some statistics too. */
    private static final long MAX_BYTES = 1 << 20;

    private ImageSideFiles() {}

    /** From pixels to coordinates: a world file, else the side file of GDAL. */
    static Optional<Affine> toCrs(Path image) throws IOException, PlaceException {
        Optional<String> world = textOf(WorldFile.namesBeside(image));
        return world.isPresent()
                ? Optional.of(WorldFile.parse(world.get()))
                : aux(image).toCrs();
    }

    /** The coordinate reference system: a .prj file, else the side file of GDAL. */
    static Optional<Crs> crs(Path image) throws IOException, PlaceException {
        String base = String.valueOf(image.getFileName()).replaceFirst("\\.[^.]*$", "");
        Optional<String> prj =
                textOf(List.of(image.resolveSibling(base + ".prj"), image.resolveSibling(base + ".PRJ")));
        Optional<String> wkt = prj.isPresent() ? prj : aux(image).wkt();
        return wkt.isPresent() ? Optional.of(Crs.ofWkt(wkt.get())) : Optional.empty();
    }

    private static GdalSideFile aux(Path image) throws IOException, PlaceException {
        Optional<String> text = textOf(List.of(image.resolveSibling(image.getFileName() + ".aux.xml")));
        return text.isPresent() ? GdalSideFile.parse(text.get()) : GdalSideFile.EMPTY;
    }

    private static Optional<String> textOf(List<Path> candidates) throws IOException, PlaceException {
        for (Path file : candidates) {
            if (Files.isRegularFile(file)) {
                if (Files.size(file) > MAX_BYTES) {
                    throw new PlaceException(file.getFileName() + " is too large to say where the image lies");
                }
                return Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
            }
        }
        return Optional.empty();
    }
}
