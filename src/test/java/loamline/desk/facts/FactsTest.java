package loamline.desk.facts;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.desk.sheet.Steps;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import org.junit.jupiter.api.Test;

class FactsTest {
    private static final Results RESULTS = Results.ground(
                    yard(turf("front", box(0, 0, 20, 20)), building(box(5, 5, 10, 10)), gate(0, 0)))
            .planned();

    @Test
    void theSheetSaysWhatWasFound() {
        assertThat(Steps.of(RESULTS, UnitSystem.METRIC))
                .extracting(Steps.Line::title)
                .containsExactly("Trace", "Zones", "Cores", "Print");
        assertThat(Steps.of(RESULTS, UnitSystem.METRIC).get(0).result())
                .startsWith("375 ")
                .contains("m² turf in 1 part");
        assertThat(Steps.of(RESULTS, UnitSystem.METRIC).get(2).result())
                .startsWith("12 cores, ")
                .endsWith("shortest possible");
        assertThat(Steps.of(RESULTS, UnitSystem.US)).allMatch(line -> line.state() == Steps.State.DONE);
    }

    @Test
    void anEmptyYardSaysWhatIsMissing() {
        Results empty = Results.ground(yard()).planned();
        assertThat(Steps.of(empty, UnitSystem.US).get(0).result()).isEqualTo("No turf yet");
        assertThat(Steps.of(empty, UnitSystem.US).get(0).state()).isEqualTo(Steps.State.NEEDS_YOU);
        assertThat(Facts.of(empty, Selection.NOTHING, UnitSystem.US).rows()).isEmpty();
    }

    @Test
    void aCoreIsPickedBeforeItsZone() {
        var core = RESULTS.plan().orElseThrow().cores().get(0);
        Selection picked = Selection.at(core.at().plus(0.1, 0), 0.5, RESULTS);
        assertThat(picked.core()).isEqualTo(core.id());
        assertThat(Selection.at(new Point(0.2, 19.8), 0.1, RESULTS).zone()).isEqualTo("front");
        assertThat(Selection.at(new Point(-5, -5), 0.1, RESULTS)).isEqualTo(Selection.NOTHING);
    }

    @Test
    void aCoreTellsWhyItStandsThere() {
        var core = RESULTS.plan().orElseThrow().cores().get(0);
        Facts facts = Facts.of(RESULTS, Selection.ofCore(core.id()), UnitSystem.METRIC);
        assertThat(facts.title()).isEqualTo("Core A1");
        assertThat(facts.rows().get(0)).isEqualTo(new Facts.Row("Stands for", "31.3", "m²"));
        assertThat(facts.why()).hasValueSatisfying(why -> {
            assertThat(why.inputs()).contains("n = 12");
            assertThat(why.sources()).contains("Walvoort");
        });
    }

    @Test
    void aZoneTellsWhatWasTakenOut() {
        Facts facts = Facts.of(RESULTS, Selection.ofZone("front"), UnitSystem.METRIC);
        assertThat(facts.rows()).extracting(Facts.Row::name).contains("Net turf", "Outlined", "less building");
        assertThat(facts.why())
                .hasValueSatisfying(why -> assertThat(why.formula()).contains("gross"));
    }
}
