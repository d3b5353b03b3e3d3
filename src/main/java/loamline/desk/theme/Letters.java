package loamline.desk.theme;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** The family that the window is set in, from the class path, so that text is as wide on every machine. */
final class Letters {
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    /** Digits of all cuts are equally wide, so that numbers stand in columns. */
    private static final List<String> CUTS =
            List.of("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf", "DejaVuSerifCondensed.ttf");

    private Letters() {}

    /** Makes the cuts known to the toolkit. */
    static void load() {
        for (String cut : CUTS) {
            try (InputStream in = Letters.class.getResourceAsStream(FOLDER + cut)) {
                if (in == null || Font.loadFont(in, Font.getDefault().getSize()) == null) {
                    throw new IOException("no " + FOLDER + cut + " on the class path");
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
