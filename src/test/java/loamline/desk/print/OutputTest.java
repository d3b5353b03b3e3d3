package loamline.desk.print;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import loamline.desk.session.Results;
import loamline.files.YardFiles;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.sheets.Paper;
import loamline.sheets.PdfImages;
import loamline.sheets.SheetOptions;
import loamline.units.UnitSystem;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputTest {
    private static final SheetOptions OPTIONS = SheetOptions.usual(Paper.A4, UnitSystem.METRIC, "Loamline test");

    private static final Yard LOCAL =
            yard(turf("front", box(0, 0, 20, 20)), gate(0, 0)).withName("Alder Lane 12/B");

    private static Printable printable(Yard yard, Optional<Path> image) {
        return Printable.of(Results.ground(yard).planned(), OPTIONS, image).orElseThrow();
    }

    private static Yard onEarth(Yard yard) {
        return yard.withFrame(Frame.at(new LonLat(-93, 45)));
    }

    @Test
    void fileNamesAreMadeFromTheYardsName() {
        assertThat(Output.WALK_PLAN.fileName(LOCAL.name())).isEqualTo("Alder-Lane-12-B-walk-plan.pdf");
        assertThat(Output.ZIP.fileName("  ")).isEqualTo("project.zip");
    }

    @Test
    void nothingIsPrintedBeforeTheCoresArePlanned() {
        assertThat(Printable.of(Results.ground(LOCAL), OPTIONS, Optional.empty()))
                .isEmpty();
        assertThat(Printable.of(Results.ground(yard()).planned(), OPTIONS, Optional.empty()))
                .isEmpty();
    }

    @Test
    void aYardWithoutAPlaceOnTheEarthIsRefusedForPhonesAndGlobes() {
        Printable local = printable(LOCAL, Optional.empty());
        assertThat(Output.values())
                .filteredOn(output -> !output.refusal(local).isEmpty())
                .containsExactly(Output.GPX, Output.KML);
        Printable placed = printable(onEarth(LOCAL), Optional.empty());
        assertThat(Output.values()).allMatch(output -> output.refusal(placed).isEmpty());
    }

    @Test
    void everyFileBeginsAsItsKindDoes() throws IOException {
        Printable placed = printable(onEarth(LOCAL), Optional.empty());
        assertThat(beginning(Output.WALK_PLAN, placed)).startsWith("%PDF");
        assertThat(beginning(Output.MAP, placed)).contains("PNG");
        assertThat(beginning(Output.GPX, placed)).contains("<?xml");
        assertThat(beginning(Output.GEOJSON, placed)).startsWith("{");
        assertThat(beginning(Output.KML, placed)).contains("<?xml");
        assertThat(beginning(Output.ZIP, placed)).startsWith("PK");
    }

    private static String beginning(Output output, Printable printable) throws IOException {
        byte[] bytes = output.bytes(printable);
        return new String(bytes, 0, Math.min(40, bytes.length), StandardCharsets.ISO_8859_1);
    }

    @Test
    void theProjectIsPackedWithItsImageAndOpensAgain(@TempDir Path folder) throws IOException {
        Path image = folder.resolve("yard.png");
        Files.write(image, new byte[] {1, 2, 3});
        Backdrop backdrop = new Backdrop(
                image.toString(), 10, 10, new Backdrop.Placement(1, 0, 0, 0, -1, 0), 0, 1, List.of(), Extras.NONE);
        Yard traced = onEarth(LOCAL).withBackdrop(Optional.of(backdrop));
        byte[] zip = Output.ZIP.bytes(printable(traced, Optional.of(image)));
        Map<String, byte[]> files = unpacked(zip);
        assertThat(files.keySet())
                .contains("yard.loam.json", "yard.png", "cores.json", "walk-plan.pdf", "cores.gpx", "yard.kml");
        assertThat(files.get("yard.png")).containsExactly(1, 2, 3);
        Yard read = YardFiles.read(new ByteArrayInputStream(files.getOrDefault("yard.loam.json", new byte[0])))
                .value()
                .orElseThrow();
        assertThat(read.features()).isEqualTo(traced.features());
        assertThat(read.backdrop()).map(Backdrop::file).contains("yard.png");
        assertThat(Output.ZIP.bytes(printable(traced, Optional.of(image)))).isEqualTo(zip);
    }

    private static Map<String, byte[]> unpacked(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (InputStream in = new ByteArrayInputStream(zip);
                ZipInputStream entries = new ZipInputStream(in)) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                files.put(entry.getName(), entries.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void pagesCanBeLookedAtBeforeTheyArePrinted() {
        byte[] pdf = printable(LOCAL, Optional.empty()).walkPlan().pdf();
        var pages = PdfImages.of(pdf, 50);
        assertThat(pages.size()).isGreaterThan(2);
        // A4 is 210 mm wide (ISO 216), 413 px at 50 to the inch
        assertThat(Math.min(pages.get(0).getWidth(), pages.get(0).getHeight())).isBetween(412, 414);
    }
}
