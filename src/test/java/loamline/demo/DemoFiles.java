package loamline.demo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.files.GeoJson;
import loamline.files.ProjectFile;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Yard;

/**
 * What is written of a demo yard.
 *
 * @param project text of {@code *.loam.json}, with the picture underneath and its tables
 * @param geoJson text of {@code *.geojson}, outlines only
 * @param picture what {@code *.tif} shows
 * @param grid where it lies
 */
record DemoFiles(String project, String geoJson, BufferedImage picture, Grid grid) {
    private static final Path FOLDER = Path.of("maps");

    /** All files of a yard, in memory. */
    static DemoFiles of(DemoYard demo) {
        Grid grid = Grid.of(demo);
        Backdrop backdrop = new Backdrop(
                demo.file() + ".tif", grid.width(), grid.height(), grid.placement(), 0, 1, List.of(), Extras.NONE);
        Yard yard = demo.yard();
        return new DemoFiles(
                ProjectFile.write(DemoTables.attached(demo).withBackdrop(Optional.of(backdrop))),
                GeoJson.write(yard),
                AerialPainter.paint(demo, grid.width(), grid.height(), grid.toPixel()),
                grid);
    }

    static Path projectPath(DemoYard demo) {
        return FOLDER.resolve(demo.file() + ProjectFile.ENDING);
    }

    static Path geoJsonPath(DemoYard demo) {
        return FOLDER.resolve(demo.file() + ".geojson");
    }

    static Path picturePath(DemoYard demo) {
        return FOLDER.resolve(demo.file() + ".tif");
    }

    /** Writes the files of a yard over what is there. */
    void write(DemoYard demo) throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(projectPath(demo), project);
        Files.writeString(geoJsonPath(demo), geoJson);
        Files.write(picturePath(demo), GeoTiff.bytes(picture, grid));
    }
}
