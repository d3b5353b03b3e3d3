package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loamline.account.Problem;
import loamline.season.Target;
import org.junit.jupiter.api.Test;

/** Price lists, ledgers, targets and the calendar, sound and not. */
class SeasonInputFilesTest {
    private static final String PRODUCTS = "name,n,p2o5,k2o,slow_n_pct,bag_kg,price\n";

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(p -> p.code() + p.where().suffix()).toList();
    }

    @Test
    void everyBadRowOfAPriceListIsListedWithItsLineAndGoodRowsStay() {
        ProductFile list = ProductFile.parse(utf8(PRODUCTS
                + "good,24,0,8,45,22.68,38.5\n"
                + "free,24,0,8,45,22.68,0\n"
                + "heavy,60,30,20,0,20,10\n"
                + "empty,24,0,8,0,0,10\n"
                + "good,24,0,8,45,10,20\n"
                + "words,many,0,8,0,10,20\n"));
        assertThat(list.products()).hasSize(1);
        assertThat(codes(list.problems()))
                .contains("PRODUCT_PRICE:3", "PRODUCT_PERCENT:4", "PRODUCT_BAG:5", "PRODUCT_TWICE:6");
        assertThat(list.problems()).anyMatch(p -> p.where().line().equals(OptionalInt.of(7)));
    }

    @Test
    void semicolonsAndDecimalCommasAreUnderstood() {
        ProductFile list = ProductFile.parse(utf8("Name;N;Bag_kg;Price\nslow;24,5;22,68;38,50\n"));
        assertThat(list.products().get(0).percent().n()).isEqualTo(24.5);
        assertThat(list.products().get(0).price()).isEqualTo(38.5);
    }

    @Test
    void tenThousandRowsAreRead() {
        String rows = IntStream.range(0, 10_000)
                .mapToObj(i -> "2027-05-01,p" + i + ",20,0,0,10,5,100,")
                .collect(Collectors.joining("\n"));
        ServiceFile ledger =
                ServiceFile.parse(utf8("date,product,n,p2o5,k2o,slow_n_pct,kg,area_m2,rate_g_m2_n\n" + rows));
        assertThat(ledger.visits()).hasSize(10_000);
        assertThat(ledger.problems()).isEmpty();
    }

    @Test
    void aSeedMixMustSumToAHundred() {
        String head = "zone,grass,seed_mix,overseed\n";
        TargetFile file = TargetFile.parse(utf8(head
                + "A,tall fescue,tall fescue 90 + Kentucky bluegrass 10,45\n"
                + "B,tall fescue,tall fescue 90 + Kentucky bluegrass 20,yes\n"
                + "C,tall fescue,fine fescue,new\n"));
        assertThat(file.targets()).extracting(Target::zone).containsExactly("A", "C");
        assertThat(file.targets().get(0).seed().bareShare()).hasValue(0.45);
        assertThat(file.targets().get(1).seed().bareShare()).hasValue(1);
        assertThat(codes(file.problems())).containsExactly("SEED_MIX_SUM:3");
    }

    @Test
    void linesOfACalendarAreFoldedAndItsWordsEscaped() {
        String title = "Fertilize; lawn, back\\front — größer als je zuvor, ".repeat(4);
        String text = CalendarText.of(
                "Loamline",
                List.of(new CalendarText.Event("1@loamline", LocalDate.of(2027, 12, 31), title, "", "a\nb")));
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        }
        assertThat(text.replace("\r\n", "")).doesNotContain("\n");
        String unfolded = text.replace("\r\n ", "");
        assertThat(unfolded).contains("DTSTART;VALUE=DATE:20271231\r\nDTEND;VALUE=DATE:20280101\r\n");
        String summary = unfolded.lines()
                .filter(l -> l.startsWith("SUMMARY:"))
                .findFirst()
                .orElseThrow();
        assertThat(summary.substring(8).replace("\\;", ";").replace("\\,", ",").replace("\\\\", "\\"))
                .isEqualTo(title);
        assertThat(unfolded).contains("DESCRIPTION:a\\nb\r\n").endsWith("END:VCALENDAR\r\n");
    }
}
