package loamline.desk.facts;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.geometry.Point;
import loamline.units.UnitSystem;
import loamline.yard.Feature;
import org.junit.jupiter.api.Test;

class FactsTest {
    private static final Results RESULTS = Results.ground(
                    yard(turf("front", box(0, 0, 20, 20)), building(box(5, 5, 10, 10)), gate(0, 0)))
            .planned();

    @Test
    void anEmptyYardHasNoFacts() {
        Results empty = Results.ground(yard()).planned();
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
        Row standsFor = facts.rows().get(0);
        assertThat(standsFor.name() + " " + standsFor.value() + " " + standsFor.unit())
                .isEqualTo("Stands for 31.3 m²");
        assertThat(standsFor.why()).hasValueSatisfying(why -> {
            assertThat(why.inputs()).contains("n = 12");
            assertThat(why.sources()).contains("Walvoort");
        });
    }

    @Test
    void aZoneTellsWhatWasTakenOutAndWhyItsNumbersAreSo() {
        Facts facts = Facts.of(RESULTS, Selection.ofZone("front"), UnitSystem.METRIC);
        assertThat(facts.rows())
                .extracting(Row::name)
                .contains("Net turf", "Standard error", "Outlined", "less building");
        assertThat(facts.rows().get(0).why())
                .hasValueSatisfying(why -> assertThat(why.formula()).contains("gross"));
        assertThat(facts.rows().get(1).why())
                .hasValueSatisfying(why -> assertThat(why.inputs()).contains("pointM = 0.15"));
    }

    @Test
    void turfTellsItsOutlineItsNetAndItsEdge() {
        Facts facts = ofFeature(0);
        assertThat(facts.title()).isEqualTo("front");
        assertThat(facts.where()).isEqualTo("turf");
        assertThat(facts.rows()).extracting(Row::name).containsExactly("Outlined", "Net turf", "Edge");
        assertThat(facts.rows()).extracting(Row::value).containsExactly("400", "375", "80.0");
        assertThat(facts.rows().get(1).why())
                .hasValueSatisfying(why -> assertThat(why.inputs()).isEqualTo("outlined_m2 = 400, building_m2 = 25"));
        assertThat(facts.fields()).extracting(Field::shown).containsExactly("front", "", "", "", "");
    }

    @Test
    void aBuildingWithoutANameIsCalledWhatItIs() {
        assertThat(ofFeature(1).title()).isEqualTo("Building");
        assertThat(ofFeature(1).where()).isEmpty();
    }

    @Test
    void severalFeaturesTellWhatTheyCoverTogetherAndWhatTheyShare() {
        Facts facts = Facts.of(
                RESULTS,
                Selection.ofFeatures(
                        RESULTS.yard().features().stream().map(Feature::key).toList()),
                UnitSystem.METRIC);
        assertThat(facts.title()).isEqualTo("3 features");
        assertThat(facts.where()).isEqualTo("1 turf · 1 building · 1 gate");
        assertThat(facts.rows()).extracting(Row::name, Row::value).containsExactly(tuple("Ground", "400"));
        assertThat(facts.fields()).isEmpty();
    }

    private static Facts ofFeature(int index) {
        String key = RESULTS.yard().features().get(index).key();
        return Facts.of(RESULTS, Selection.ofFeatures(List.of(key)), UnitSystem.METRIC);
    }
}
