package loamline.files;

import static loamline.files.Inputs.bytes;
import static loamline.files.Inputs.collection;
import static loamline.files.Inputs.geometry;
import static loamline.files.Inputs.inTime;
import static loamline.files.Inputs.read;
import static loamline.files.Inputs.reports;
import static loamline.files.Inputs.turf;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.io.SequenceInputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Size costs neither patience nor memory, and what is no file is not opened. */
class InputLimitsTest {
    @Test
    void anOutlineOfAHundredThousandCornersIsFast() {
        String ring = IntStream.range(0, 100_000)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "[%.9f,%.9f]",
                        -82.99 + 1e-4 * Math.cos(i * 2e-5 * Math.PI),
                        39.96 + 1e-4 * Math.sin(i * 2e-5 * Math.PI)))
                .collect(Collectors.joining(","));
        byte[] content = collection(turf(geometry("Polygon", "[[" + ring + "]]")));
        Yard yard = inTime(() -> read(content).value().orElseThrow());
        assertThat(yard.features().get(0).shape().orElseThrow().vertices()).hasSize(100_000);
        assertThat(inTime(() -> read(bytes(GeoJson.write(yard))).value())).contains(yard);
    }

    @Test
    void aGigabyteOfBracketsIsRefusedAtTheFirstHundred() {
        InputStream endless = new SequenceInputStream(new ByteArrayInputStream(bytes("{\"a\":")), new Endless('['));
        Read<Yard> read = inTime(() -> YardFiles.read(endless));
        assertThat(reports(read)).containsExactly("error f:1 JSON_TOO_DEEP");
    }

    @Test
    void endlessValuesTextsAndBlanksAreRefused() {
        for (char filler : new char[] {'1', 'x', ' '}) {
            String start = filler == 'x' ? "{\"a\":\"" : "{\"a\":";
            InputStream endless = new SequenceInputStream(new ByteArrayInputStream(bytes(start)), new Endless(filler));
            Read<Yard> read = inTime(() -> YardFiles.read(endless));
            assertThat(reports(read)).containsExactly("error f:1 JSON_TOO_LARGE");
        }
    }

    @Test
    void moreValuesThanAnyYardNeedsAreRefused() {
        byte[] content = bytes("{\"a\":[" + "{},".repeat((int) JsonTree.MAX_TOKENS / 2) + "1]}");
        assertThat(reports(inTime(() -> read(content)))).containsExactly("error f:1 JSON_TOO_LARGE");
    }

    @Test
    void foldersMissingFilesAndDevicesAreNamed(@TempDir Path folder) {
        assertThat(YardFiles.read(folder).problems()).singleElement().returns("FILE_IS_FOLDER", Problem::code);
        assertThat(YardFiles.read(folder.resolve("no.geojson")).problems())
                .singleElement()
                .returns("FILE_NOT_FOUND", Problem::code);
        Path device = Path.of("/dev/zero");
        if (Files.exists(device)) {
            assertThat(YardFiles.read(device).problems()).singleElement().returns("FILE_NOT_REGULAR", Problem::code);
        }
    }

    @Test
    void aFileBeyondTheLimitIsNotOpened(@TempDir Path folder) throws IOException {
        Path huge = folder.resolve("huge.geojson");
        try (var file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(JsonTree.MAX_BYTES + 1); // sparse
        }
        assertThat(YardFiles.read(huge).problems()).singleElement().returns("FILE_TOO_LARGE", Problem::code);
    }

    @Test
    void whatTheDiskSaysIsPutInWords() {
        assertThat(FileTrouble.of(new AccessDeniedException("f")).code()).isEqualTo("FILE_NO_PERMISSION");
        assertThat(FileTrouble.of(new NoSuchFileException("f")).code()).isEqualTo("FILE_NOT_FOUND");
        assertThat(FileTrouble.of(new FileSystemException("f", null, "No space left on device"))
                        .message())
                .contains("No space left");
        assertThat(FileTrouble.of(new IOException()).message()).contains("IOException");
    }

    private static final class Endless extends InputStream {
        private final char filler;

        private Endless(char filler) {
            this.filler = filler;
        }

        @Override
        public int read() {
            return filler;
        }

        @Override
        public int read(byte[] into, int from, int length) {
            Arrays.fill(into, from, from + length, (byte) filler);
            return length;
        }
    }
}
