package loamline.desk.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loamline.yard.Yard;

/**
 * The path of the image under a yard: absolute while the yard is open, relative to the yard's file on disk where both
 * are on one file system. So a yard can be saved elsewhere, and a folder can be moved with all that is in it.
 */
final class Backdrops {
    private Backdrops() {}

    /** The yard as opened from a file. */
    static Yard absolute(Yard yard, Path file) {
        return changed(yard, image -> folder(file).resolve(image).normalize().toString());
    }

    /** The yard as it is to be written to a file. */
    static Yard relative(Yard yard, Path file) {
        return changed(yard, image -> {
            Path path = Path.of(image);
            boolean related = path.isAbsolute()
                    && Optional.ofNullable(path.getRoot())
                            .equals(Optional.ofNullable(folder(file).getRoot()));
            return related ? folder(file).relativize(path).toString().replace('\\', '/') : image;
        });
    }

    private static Path folder(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        return Optional.ofNullable(absolute.getParent()).orElse(absolute);
    }

    private static Yard changed(Yard yard, UnaryOperator<String> change) {
        return yard.withBackdrop(yard.backdrop().map(b -> {
            try {
                return b.withFile(change.apply(b.file()));
            } catch (InvalidPathException e) {
                return b; // written on another system; it cannot be found here, but is kept
            }
        }));
    }
}
