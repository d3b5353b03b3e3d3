package loamline.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loamline.place.Affine;
import loamline.place.PlaceException;

/**
 * The little text beside an image that says where it lies: six numbers, one a line, which are the steps of x and y a
 * column, the steps of x and y a row, and x and y of the middle of the upper left pixel.
 */
final class WorldFile {
    /** A plain decimal number, perhaps with an exponent; a decimal comma is what some programs write by mistake. */
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][-+]?\\d+)?");

    private WorldFile() {}

    /**
     * The affine map that the numbers state, from the corner of the first pixel rather than its middle.
     *
     * @throws PlaceException if they are not six numbers, or give the pixels no area
     */
    static Affine parse(String text) throws PlaceException {
        List<String> words = Stream.of(text.strip().split("\\s+", -1)).toList();
        if (words.size() < 6
                || !words.stream().limit(6).allMatch(w -> NUMBER.matcher(w).matches())) {
            throw new PlaceException("a world file has six numbers, one a line");
        }
        double[] n = words.stream()
                .limit(6)
                .mapToDouble(word -> Double.parseDouble(word.replace(',', '.')))
                .toArray();
        try {
            return new Affine(n[0], n[2], n[4] - (n[0] + n[2]) / 2, n[1], n[3], n[5] - (n[1] + n[3]) / 2);
        } catch (IllegalArgumentException e) {
            throw new PlaceException("the world file gives the pixels no size", e);
        }
    }

    /** The names it may have beside an image, likeliest first: for yard.jpeg yard.jgw, yard.jpegw and yard.wld. */
    static List<Path> namesBeside(Path image) {
        String name = String.valueOf(image.getFileName());
        int dot = name.lastIndexOf('.');
        String base = dot < 0 ? name : name.substring(0, dot);
        String ending = dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
        Stream<String> endings = ending.length() < 2
                ? Stream.of("wld")
                : Stream.of("" + ending.charAt(0) + ending.charAt(ending.length() - 1) + "w", ending + "w", "wld");
        return endings.flatMap(e -> Stream.of(e, e.toUpperCase(Locale.ROOT)))
                .map(e -> image.resolveSibling(base + "." + e))
                .toList();
    }
}
