package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Extras;
import loamline.yard.Gate;
import loamline.yard.KnownDistance;
import loamline.yard.Unknown;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProjectFileTest {
    @TempDir
    private Path folder;

    @Test
    void aNewerSchemaIsRefusedAndTheNeededProgramNamed() {
        Read<Yard> read =
                read("{\"format\":\"loamline-yard\",\"schema\":2,\"needs\":\"Loamline 3.1\"}", Migrations.KNOWN);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).singleElement().matches(Problem::isError).satisfies(p -> {
            assertThat(p.code()).isEqualTo("SCHEMA_NEWER");
            assertThat(p.message()).contains("schema 2").contains("Loamline 3.1");
        });
    }

    @Test
    void anOlderSchemaIsBroughtUpStepByStep() {
        Migrations three = new Migrations(List.of(
                tree -> {
                    tree.put("name", tree.remove("title"));
                    return tree;
                },
                tree -> {
                    tree.put("name", tree.get("name") + "!");
                    return tree;
                }));
        assertThat(three.newest()).isEqualTo(3);
        assertThat(read("{\"format\":\"loamline-yard\",\"schema\":1,\"title\":\"a\"}", three)
                        .value()
                        .orElseThrow()
                        .name())
                .isEqualTo("a!");
        assertThat(read("{\"format\":\"loamline-yard\",\"schema\":2,\"name\":\"a\"}", three)
                        .value()
                        .orElseThrow()
                        .name())
                .isEqualTo("a!");
        assertThat(read("{\"format\":\"loamline-yard\",\"schema\":3,\"name\":\"a\"}", three)
                        .value()
                        .orElseThrow()
                        .name())
                .isEqualTo("a");
    }

    @Test
    void anotherFormatIsNoProject() {
        assertThat(read("{\"schema\":1}", Migrations.KNOWN).problems())
                .singleElement()
                .returns("NOT_A_PROJECT", Problem::code);
    }

    @Test
    void placesFromTheEarthAreBroughtToTheirSteps() {
        String gate =
                "{\"format\":\"loamline-yard\",\"schema\":1,%s\"features\":[{\"key\":\"g\",\"kind\":\"gate\",\"point\":[0.12345678,0]}]}";
        assertThat(read(gate.formatted("\"origin\":[10,50],"), Migrations.KNOWN)
                        .value()
                        .orElseThrow()
                        .features())
                .containsExactly(new Gate("g", new Point(0.123457, 0), Extras.NONE));
        assertThat(read(gate.formatted(""), Migrations.KNOWN)
                        .value()
                        .orElseThrow()
                        .features())
                .containsExactly(new Gate("g", new Point(0.12345678, 0), Extras.NONE));
    }

    @Test
    void placesFarFromWhereThePlaneTouchesTheEarthAreRefused() {
        String far =
                "{\"format\":\"loamline-yard\",\"schema\":1,\"origin\":%s,\"features\":[{\"kind\":\"gate\",\"point\":[0,100001]}]}";
        assertThat(read(far.formatted("[10,50]"), Migrations.KNOWN).problems())
                .extracting(Problem::code)
                .containsExactly("POSITION_OFF");
        assertThat(read(far.formatted("[10,90]"), Migrations.KNOWN).problems())
                .extracting(Problem::code)
                .containsExactly("WRONG_TYPE");
    }

    @Test
    void aFeatureThatCannotBeReadIsToldAndKept() {
        Read<Yard> read = read(
                "{\"format\":\"loamline-yard\",\"schema\":1,\"features\":[{\"key\":\"a\",\"kind\":\"gate\",\"point\":[1]},"
                        + "{\"key\":\"b\",\"kind\":\"gate\"},{\"key\":\"c\",\"kind\":\"turf\",\"point\":[1,2]},{\"kind\":\"pond\"}]}",
                Migrations.KNOWN);
        assertThat(read.problems().stream().map(p -> p.where().pointer() + " " + p.code()))
                .containsExactly(
                        "/features/0/point POSITION_WRONG",
                        "/features/1 GEOMETRY_MISSING",
                        "/features/2 GEOMETRY_TYPE",
                        "/features/3/kind UNKNOWN_KIND");
        Yard yard = read.value().orElseThrow();
        assertThat(yard.features()).hasSize(4).allMatch(f -> f instanceof Unknown);
        assertThat(read(ProjectFile.write(yard), Migrations.KNOWN).value()).contains(yard);
    }

    @Test
    void knownDistancesAreReadAndThoseThatCannotBeAreToldAndLeftOut() {
        Read<Yard> read = read(
                "{\"format\":\"loamline-yard\",\"schema\":1,\"backdrop\":{\"file\":\"a.png\",\"widthPx\":9,\"heightPx\":9,"
                        + "\"placement\":[1,0,0,0,-1,9],\"knownDistances\":"
                        + "[[1,2,7,2,6.1],[1,2,1,2,5],[1,2,3,4,-5],[1,2,3,4],7,[1,2,3,4,\"5\"]]}}",
                Migrations.KNOWN);
        assertThat(read.value().orElseThrow().backdrop().orElseThrow().knownDistances())
                .containsExactly(new KnownDistance(new Point(1, 2), new Point(7, 2), 6.1));
        assertThat(read.problems()).hasSize(5).allMatch(p -> p.code().equals("KNOWN_DISTANCE_UNUSABLE"));
    }

    @Test
    void aBackdropThatLacksItsPlacementIsToldAndLeftOut() {
        Read<Yard> read = read(
                "{\"format\":\"loamline-yard\",\"schema\":1,\"backdrop\":{\"file\":\"a.png\",\"widthPx\":9,\"heightPx\":9,\"placement\":[1,2]}}",
                Migrations.KNOWN);
        assertThat(read.value().orElseThrow().backdrop()).isEmpty();
        assertThat(read.problems()).singleElement().returns("BACKDROP_INCOMPLETE", Problem::code);
    }

    @Test
    void savingKeepsTheLastThreeStates() throws IOException {
        Path file = folder.resolve("yard.loam.json");
        for (String name : List.of("a", "b", "c", "d", "e")) {
            YardFiles.write(Yard.empty(name, Frame.local()), file);
        }
        assertThat(nameIn(file)).isEqualTo("e");
        assertThat(Backups.of(file)).map(ProjectFileTest::nameIn).containsExactly("d", "c", "b");
    }

    @Test
    void savingTheSameAgainUsesUpNoBackup() throws IOException {
        Path file = folder.resolve("yard.loam.json");
        YardFiles.write(Yard.empty("a", Frame.local()), file);
        YardFiles.write(Yard.empty("b", Frame.local()), file);
        YardFiles.write(Yard.empty("b", Frame.local()), file);
        assertThat(Backups.of(file)).map(ProjectFileTest::nameIn).containsExactly("a");
    }

    @Test
    void exportingLeavesNoBackup() throws IOException {
        Path file = folder.resolve("yard.geojson");
        YardFiles.write(Yard.empty("a", Frame.local()), file);
        YardFiles.write(Yard.empty("b", Frame.local()), file);
        assertThat(Backups.of(file)).isEmpty();
        assertThat(nameIn(file)).isEqualTo("b");
    }

    @Test
    void aDamagedFileNamesTheNewestBackupThatCanBeRead() throws IOException {
        Path file = folder.resolve("yard.loam.json");
        for (String name : List.of("a", "b", "c")) {
            YardFiles.write(Yard.empty(name, Frame.local()), file);
        }
        Files.writeString(file, Files.readString(file).substring(0, 30));
        Files.writeString(folder.resolve("yard.loam.json~1~"), "");
        YardFiles.Opened opened = YardFiles.read(file);
        assertThat(opened.yard()).isEmpty();
        assertThat(opened.problems()).extracting(Problem::code).containsExactly("JSON_CUT_OFF", "BACKUP_FOUND");
        assertThat(opened.problems().get(1).message()).contains("yard.loam.json~2~");
        assertThat(opened.backup().map(ProjectFileTest::nameIn)).contains("a");
    }

    @Test
    void aFileThatIsGoneNamesItsBackupToo() throws IOException {
        Path file = folder.resolve("yard.loam.json");
        YardFiles.write(Yard.empty("a", Frame.local()), file);
        YardFiles.write(Yard.empty("b", Frame.local()), file);
        Files.delete(file);
        assertThat(YardFiles.read(file).backup().map(ProjectFileTest::nameIn)).contains("a");
    }

    @Test
    void theEndingDecidesHowAYardIsWritten() {
        assertThat(YardFiles.Format.of(Path.of("a/Yard.LOAM.JSON"))).contains(YardFiles.Format.PROJECT);
        assertThat(YardFiles.Format.of(Path.of("yard.geojson"))).contains(YardFiles.Format.GEOJSON);
        assertThat(YardFiles.Format.of(Path.of("yard.kml"))).isEmpty();
        assertThatThrownBy(() -> YardFiles.write(Yard.empty("", Frame.local()), folder.resolve("yard.txt")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theContentDecidesHowAFileIsRead() throws IOException {
        Yard yard = Yard.empty("a", Frame.at(new LonLat(10, 50)));
        Path file = folder.resolve("yard.txt");
        Files.writeString(file, ProjectFile.write(yard));
        assertThat(YardFiles.read(file).yard()).contains(yard);
        Files.writeString(file, GeoJson.write(yard));
        assertThat(YardFiles.read(file).yard()).contains(yard);
    }

    @Test
    void whatJsonCannotHoldIsAProgrammingError() {
        Yard yard = Yard.empty("", Frame.local())
                .withFeatures(List.of(new Gate("g", new Point(0, 0), new Extras(Map.of("depth", Double.NaN)))));
        assertThatThrownBy(() -> ProjectFile.write(yard)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String nameIn(Path file) {
        return YardFiles.read(file).yard().orElseThrow().name();
    }

    private static Read<Yard> read(String text, Migrations migrations) {
        try {
            return ProjectFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), migrations);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
