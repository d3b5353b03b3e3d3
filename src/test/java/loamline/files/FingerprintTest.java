package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import loamline.files.YardFiles.Format;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FingerprintTest {
    @TempDir
    Path folder;

    @Test
    void theFingerprintIsTheStandardsDigest() throws IOException {
        Path file = Files.writeString(folder.resolve("abc"), "abc");
        // FIPS 180-4, SHA-256 of "abc"
        Fingerprint abc = new Fingerprint("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Fingerprint.of(file)).isEqualTo(abc);
        assertThat(Fingerprint.of("abc".getBytes(StandardCharsets.UTF_8))).isEqualTo(abc);
    }

    @Test
    void writingAYardTellsWhatTheFileHolds() throws IOException {
        Yard yard = Yard.empty("a", Frame.local());
        for (String name : new String[] {"a.loam.json", "a.loam.json", "a.geojson"}) {
            assertThat(YardFiles.write(yard, folder.resolve(name))).isEqualTo(Fingerprint.of(folder.resolve(name)));
        }
    }

    @Test
    void geoJsonKeepsAPlacedYardWhole() {
        Yard yard = Yard.empty("a", Frame.at(new LonLat(8, 50)))
                .withFeatures(YardFixtures.yard(YardFixtures.gate(1, 2.0000004)).features());
        assertThat(YardFiles.keepsAll(yard, Format.GEOJSON)).isTrue();
    }

    @Test
    void geoJsonDoesNotKeepWhatLiesTooFarOffForLongitudeAndLatitude() {
        Yard yard = Yard.empty("a", Frame.at(new LonLat(8, 50)))
                .withFeatures(YardFixtures.yard(YardFixtures.gate(2e7, 3)).features());
        assertThat(YardFiles.keepsAll(yard, Format.GEOJSON)).isFalse();
        assertThat(YardFiles.keepsAll(yard, Format.PROJECT)).isTrue();
    }

    @Test
    void jsonOfOurOwnComesBackAndDamagedJsonIsNone() throws IOException {
        Path file = folder.resolve("new/folder/settings.json");
        JsonFile.write(file, Map.of("a", 1L));
        assertThat(JsonFile.read(file)).contains(Map.of("a", 1L));
        Files.writeString(file, "{\"a\": ");
        assertThat(JsonFile.read(file)).isEmpty();
        assertThat(JsonFile.read(folder)).isEmpty();
        assertThat(JsonFile.read(folder.resolve("none"))).isEmpty();
    }
}
