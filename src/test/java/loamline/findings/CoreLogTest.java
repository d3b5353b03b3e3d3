package loamline.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.account.Problem;
import loamline.files.LogFile;
import loamline.geometry.Point;
import loamline.sampling.CorePlan;
import loamline.yard.Probe;
import org.junit.jupiter.api.Test;

class CoreLogTest {
    /** A bag of three cores, each with one spare. */
    private static CorePlan plan() {
        List<CorePlan.PlannedCore> cores = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            cores.add(core("A" + i, 10 * i, Optional.empty()));
        }
        for (int i = 1; i <= 3; i++) {
            cores.add(core("A" + i + "s", 10 * i + 1, Optional.of("A" + i)));
        }
        OptionalDouble none = OptionalDouble.empty();
        CorePlan.Composite bag =
                new CorePlan.Composite("A", List.of("Lawn"), 3, 100, 90, none, none, List.of(), Probe.USUAL, 0);
        return new CorePlan(1, List.of(bag), cores, List.of(), List.of(), List.of(), Map.of());
    }

    private static CorePlan.PlannedCore core(String id, double x, Optional<String> spareOf) {
        return new CorePlan.PlannedCore(id, "A", "Lawn", new Point(x, 0), 1, spareOf, OptionalInt.empty());
    }

    private static CoreLog.Answer read(String... rows) {
        String text = "core,time,refusal,root_cm,note,x_m,y_m\n" + String.join("\n", rows);
        return CoreLog.of(plan(), LogFile.parse(text).value().orElseThrow());
    }

    private static List<String> codes(CoreLog.Answer answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    private static BagBalance bag(String... rows) {
        return read(rows).log().orElseThrow().bags().get(0);
    }

    @Test
    void aSpareStandsForARefusedCore() {
        BagBalance bag = bag("A1", "A2,,stone", "a2s", "A3");
        assertThat(bag.isBalanced()).isTrue();
        assertThat(bag.inBag()).containsExactly("A1", "A2s", "A3");
        assertThat(bag.replaced()).containsExactly(Map.entry("A2", "A2s"));
    }

    @Test
    void aRefusedCoreWithoutASpareAsksForIt() {
        CoreLog.Answer answer = read("A1", "A2,,stone", "A3");
        assertThat(answer.log().orElseThrow().bags().get(0).next()).containsExactly("A2s");
        assertThat(codes(answer)).containsExactly("BAG_SPARE_DUE");
    }

    @Test
    void aSpareThatWasRefusedTooLeavesAGap() {
        assertThat(bag("A1", "A2,,stone", "A2s,,stone", "A3").missing()).containsExactly("A2");
    }

    @Test
    void aSpareBesideItsCoreIsKeptOutOfTheBag() {
        BagBalance bag = bag("A1", "A1s", "A2", "A3");
        assertThat(bag.surplus()).containsExactly("A1s");
        assertThat(bag.isBalanced()).isFalse();
    }

    @Test
    void severalReadingsOfACoreAreTheirMeanAndASecondTryCounts() {
        LoggedCore core = read("A1,,stone,4", "A1,,,6", "A2", "A3")
                .log()
                .orElseThrow()
                .cores()
                .get(0);
        assertThat(core.isRefused()).isFalse();
        assertThat(core.value(Quantity.ROOT)).hasValue(0.05);
    }

    @Test
    void seasonsAreKeptApartAndTheNewestIsRead() {
        CoreLog log = read("A1,2026-05-01,,9", "A2,2026-05-02,,9", "A1,2027-05-01,,4", "A2,2027-05-03", "A3")
                .log()
                .orElseThrow();
        assertThat(log.visit().rows()).hasSize(3);
        assertThat(log.cores().get(0).value(Quantity.ROOT)).hasValue(0.04);
        assertThat(log.earlier()).hasSize(1);
        assertThat(log.earlier().get(0).cores()).hasSize(2);
    }

    @Test
    void anotherYardsLogIsRefusedWithTheReason() {
        CoreLog.Answer answer = read("C7", "C8", "A1");
        assertThat(answer.log()).isEmpty();
        assertThat(codes(answer)).containsExactly("LOG_CORE_UNKNOWN", "LOG_CORE_UNKNOWN", "LOG_OTHER_YARD");
        assertThat(answer.problems().get(2).message()).contains("1 of 3 rows", "begin A1");
    }

    @Test
    void theSameIdsInOtherPlacesAreAnotherYardsToo() {
        CoreLog.Answer answer = read("A1,,,,,60,5", "A2,,,,,70,5", "A3,,,,,80,5");
        assertThat(answer.log()).isEmpty();
        assertThat(codes(answer)).contains("LOG_CORE_ELSEWHERE", "LOG_OTHER_YARD");
    }

    @Test
    void oneWrongIdIsLeftOut() {
        CoreLog.Answer answer = read("A1", "A9", "A2");
        assertThat(answer.log().orElseThrow().logged()).isEqualTo(2);
        assertThat(codes(answer)).containsExactly("LOG_CORE_UNKNOWN", "BAG_NOT_LOGGED");
    }
}
