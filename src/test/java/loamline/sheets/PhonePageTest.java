package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.units.UnitSystem;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** What the file holds; a real browser fills it in under the profile {@code browser}. */
class PhonePageTest {
    private static String html(String name) {
        CorePlan plan = new CorePlan(
                1,
                List.of(),
                List.of(core("A1", Optional.empty()), core("A1s", Optional.of("A1"))),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
        SheetOptions options = SheetOptions.usual(Paper.LETTER, UnitSystem.US, "Loamline");
        return new PhonePage(Yard.empty(name, Frame.local()), List.of(), plan, options).html();
    }

    private static CorePlan.PlannedCore core(String id, Optional<String> spareOf) {
        return new CorePlan.PlannedCore(id, "A", "Lawn", new Point(3, 4), 1, spareOf, OptionalInt.empty());
    }

    @Test
    void itNeedsNoOtherFile() {
        assertThat(html("Yard")).doesNotContain("src=", "<link", "@import", "url(", "fetch(", "%DATA%", "%MAP%");
        String addresses = html("Yard").replace("http://www.w3.org/2000/svg", "");
        assertThat(addresses).doesNotContain("http:", "https:");
    }

    @Test
    void everyCoreAndSpareHasItsPlace() {
        assertThat(html("Yard")).contains("\"id\":\"A1\"", "\"spareOf\":\"A1\"", "\"xM\":3.000", "\"yM\":4.000");
    }

    @Test
    void theListHasTheColumnsOfTheLog() {
        Matcher columns = Pattern.compile("const COLUMNS = \\[([^\\]]*)\\]").matcher(html("Yard"));
        assertThat(columns.find()).isTrue();
        assertThat(columns.group(1).replaceAll("[\"\\s]", ""))
                .startsWith(
                        "core,time,depth_cm,refusal,root_cm,thatch_mm,topsoil_cm,moisture,vwc_pct,psi,wdpt_s,colour,"
                                + "quality,layers,note");
    }

    @Test
    void aNameCannotEndTheScriptOrFillAPlaceOfTheTemplate() {
        String html = html("</script><b>%DATA%\" + alert(1)");
        assertThat(html.split("</script>", -1)).hasSize(2);
        assertThat(html).contains("&lt;/script&gt;", "\\u003c/script\\u003e");
    }
}
