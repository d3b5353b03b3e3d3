package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DemoTest {
    @Test
    void withoutAWindowAllThatIsComputedIsWrittenAndSaidWhere() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertThat(Demo.write(new PrintWriter(out, true), new PrintWriter(err, true)))
                .isEqualTo(LoamlineCommand.OK);
        Path demo = Path.of("target", "demo");
        assertThat(out.toString()).contains(demo.toAbsolutePath().toString(), "walk-plan.pdf");
        assertThat(err.toString()).isEmpty();
        for (String file : new String[] {
            "plover-court.tif",
            "zones/zones.json",
            "cores/cores.json",
            "water/water.json",
            "sun/sun.json",
            "handout/walk-plan.pdf",
            "handout/findings.pdf",
            "handout/client-plan.pdf"
        }) {
            assertThat(demo.resolve("plover-court").resolve(file)).isNotEmptyFile();
        }
        assertThat(demo.resolve("tansy-hill/handout/water-map.png")).isNotEmptyFile();
    }
}
