package loamline.desk.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import loamline.files.GeoJson;
import loamline.files.GpxFile;
import loamline.files.KmlFile;

/** What can be taken along as a file. */
enum Output {
    WALK_PLAN("Walk plan", "PDF", "to print and to carry", "walk-plan", ".pdf", false),
    MAP("Map", "PNG", "an image", "walk-map", ".png", false),
    GPX("Cores and walk", "GPX", "for a phone", "cores", ".gpx", true),
    GEOJSON("Yard", "GeoJSON", "for map programs", "yard", ".geojson", false),
    KML("Yard and walk", "KML", "for globe viewers", "yard", ".kml", true),
    ZIP("Whole project", "ZIP", "with the image and all files", "project", ".zip", false);

    private final String title;
    private final String format;
    private final String use;
    private final String stem;
    private final String ending;
    private final boolean needsPlace;

    Output(String title, String format, String use, String stem, String ending, boolean needsPlace) {
        this.title = title;
        this.format = format;
        this.use = use;
        this.stem = stem;
        this.ending = ending;
        this.needsPlace = needsPlace;
    }

    String title() {
        return title;
    }

    /** What sort of file it is, in a word. */
    String format() {
        return format;
    }

    /** What sort of file it is and what it is for. */
    String kind() {
        return format + ", " + use;
    }

    String ending() {
        return ending;
    }

    /** A name for the file, made from the yard's; signs that file systems dislike become dashes. */
    String fileName(String yardName) {
        return fileName(yardName, stem + ending);
    }

    static String fileName(String yardName, String end) {
        String name = yardName.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return (name.isEmpty() ? "" : name + "-") + end;
    }

    /** Why this cannot be made; blank if it can. */
    String refusal(Printable printable) {
        return needsPlace && printable.yard().frame().origin().isEmpty()
                ? "Needs a place on the earth: open a georeferenced image, or save the yard as GeoJSON."
                : "";
    }

    /**
     * The file's bytes.
     *
     * @throws IOException if the image that belongs to the project cannot be read
     * @throws IllegalStateException if it was refused
     */
    byte[] bytes(Printable printable) throws IOException {
        return switch (this) {
            case WALK_PLAN -> printable.walkPlan().pdf();
            case MAP -> printable.walkPlan().mapPng();
            case GPX ->
                utf8(GpxFile.of(printable.plan(), printable.yard().frame())
                        .orElseThrow(() -> new IllegalStateException(refusal(printable))));
            case GEOJSON -> utf8(GeoJson.write(printable.yard()));
            case KML ->
                utf8(KmlFile.of(printable.yard(), printable.plan())
                        .orElseThrow(() -> new IllegalStateException(refusal(printable))));
            case ZIP -> ProjectZip.of(printable);
        };
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
