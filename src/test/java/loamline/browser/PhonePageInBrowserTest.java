package loamline.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.cli.Demo;
import loamline.files.LogFile;
import loamline.files.Read;
import loamline.findings.CoreLog;
import loamline.findings.LogRow;
import loamline.findings.Quantity;
import loamline.findings.SoilLayer;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sheets.Paper;
import loamline.sheets.PhonePage;
import loamline.sheets.SheetOptions;
import loamline.units.UnitSystem;
import loamline.yard.PlanOptions;
import loamline.yard.Yard;
import loamline.yard.Zones;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fills in the phone page in a real browser at a phone's size, and reads its list back. */
@Tag("browser")
class PhonePageInBrowserTest {
    private static final int WIDTH = 390;
    private static final int HEIGHT = 844;
    private static final double INCH_M = 0.0254;

    @TempDir
    private Path folder;

    @Test
    void entriesAreKeptAndComeBackAsALogOfTheYard() throws IOException, InterruptedException {
        Yard yard = Demo.yard();
        CorePlan plan = CorePlanner.plan(yard, PlanOptions.USUAL);
        SheetOptions sheets = SheetOptions.usual(Paper.LETTER, UnitSystem.US, "Loamline");
        Path page = folder.resolve("phone-log.html");
        Files.writeString(page, new PhonePage(yard, Zones.of(yard), plan, sheets).html());
        Path program = Browser.installed().orElseThrow(() -> new IOException("no Chromium is installed"));
        try (Browser browser = Browser.phone(program, folder.resolve("profile"), WIDTH, HEIGHT)) {
            browser.open(page);
            assertThat(browser.run("document.documentElement.scrollWidth")).isEqualTo(Integer.toString(WIDTH));
            assertThat(smallest(browser)).as("buttons a thumb can hit, px").isGreaterThanOrEqualTo(44);
            browser.picture(pictures().resolve("phone-page.png"));
            fill(browser);
            browser.open(page);
            browser.picture(pictures().resolve("phone-page-filled.png"));
            check(plan, browser.run("document.getElementById('csv').value"));
        }
    }

    private static Path pictures() throws IOException {
        return Files.createDirectories(Path.of("target", "browser"));
    }

    private static int smallest(Browser browser) throws IOException, InterruptedException {
        return Integer.parseInt(browser.run("String(Math.floor(Math.min(...[...document.querySelectorAll('main > *"
                + " button, footer button')].filter(b => b.offsetParent).map(b => b.offsetHeight))))"));
    }

    private static void fill(Browser browser) throws IOException, InterruptedException {
        browser.tap("#refusal button[data-value='']");
        browser.type("#root_cm", "4,5");
        browser.type("#thatch_mm", "0.5");
        browser.type("#psi", "180");
        browser.type("#wdpt_s", "3");
        browser.tap("#moisture button[data-value='moist']");
        browser.tap("#quality button[data-value='7']");
        browser.type("#layers", "0-2 loam; 2-6 clay loam");
        browser.type("#note", "says \"fine\", <b>so far</b>");
        browser.tap("#next");
        browser.tap("#refusal button[data-value='stone']");
        browser.type("#depth_cm", "2");
        browser.tap("#spare");
        browser.type("#root_cm", "3");
        browser.tap("#next");
        browser.tap(".tap[data-id='B1']");
        browser.tap("#quality button[data-value='4']");
    }

    private static void check(CorePlan plan, String csv) {
        Read<List<LogRow>> read = LogFile.parse(csv);
        assertThat(read.problems()).isEmpty();
        List<LogRow> rows = read.value().orElseThrow();
        assertThat(rows).extracting(LogRow::core).containsExactly("A1", "A2", "A2s", "B1");
        LogRow first = rows.get(0);
        assertThat(first.values().get(Quantity.ROOT)).isEqualTo(4.5 * INCH_M);
        assertThat(first.values().get(Quantity.THATCH)).isEqualTo(0.5 * INCH_M);
        assertThat(first.values().get(Quantity.MOISTURE)).isEqualTo(3);
        assertThat(first.values().get(Quantity.QUALITY)).isEqualTo(7);
        assertThat(first.layers())
                .containsExactly(new SoilLayer(0, 0.0508, "loam"), new SoilLayer(0.0508, 0.1524, "clay loam"));
        assertThat(first.note()).isEqualTo("says \"fine\", <b>so far</b>");
        assertThat(first.day()).isPresent();
        assertThat(rows.get(1).refusal()).isEqualTo(Optional.of("stone"));
        CoreLog.Answer answer = CoreLog.of(plan, rows);
        assertThat(answer.log().orElseThrow().bags().get(0).replaced()).containsEntry("A2", "A2s");
    }
}
