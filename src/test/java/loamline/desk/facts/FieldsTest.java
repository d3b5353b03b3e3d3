package loamline.desk.facts;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.building;
import static loamline.yard.YardFixtures.cover;
import static loamline.yard.YardFixtures.gate;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.units.UnitSystem;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Building;
import loamline.yard.Core;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.HeadClass;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.Panel;
import loamline.yard.Profile;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FieldsTest {
    private static final Point AT = new Point(1, 2);
    private static final Outline GROUND = Outline.of(box(0, 0, 4, 4));
    private static final Polyline LINE = new Polyline(List.of(AT, new Point(9, 2)));
    private static final Tree TREE = new Tree(
            "tree",
            OptionalDouble.of(3),
            OptionalDouble.of(8),
            0.2,
            false,
            0.1,
            OptionalDouble.empty(),
            false,
            AT,
            Extras.NONE);
    private static final Head HEAD = new Head(
            "head",
            "h1",
            "1",
            Optional.of(HeadClass.SPRAY),
            OptionalDouble.of(4),
            0,
            90,
            OptionalDouble.empty(),
            Profile.Named.CONE,
            0,
            AT,
            Extras.NONE);
    private static final Barrier FENCE = new Barrier("fence", Kind.FENCE, 1.8, List.of(), true, LINE, Extras.NONE);

    static List<Feature> everySort() {
        return List.of(
                new Boundary("b", "lot", GROUND, Extras.NONE),
                turf("front", box(0, 0, 4, 4)),
                cover(Kind.BED, box(0, 0, 4, 4)),
                building(box(0, 0, 4, 4)),
                FENCE,
                TREE,
                HEAD,
                new KeepAway("k", 1, "pet spot", AT, Extras.NONE),
                new Trouble("t", "thin", OptionalInt.of(4), GROUND, Extras.NONE),
                new Core("c", "A1", "A", "front", AT, false, Extras.NONE),
                new Panel("p", 1.2, 0.9, 0, LINE, Extras.NONE));
    }

    private static FieldSpec field(Feature feature, String label) {
        return Fields.of(feature).stream()
                .filter(spec -> spec.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Feature set(Feature feature, String label, String text) {
        FieldSpec.Outcome outcome = field(feature, label).read(feature, text, UnitSystem.US);
        assertThat(outcome).isInstanceOf(FieldSpec.Outcome.Changed.class);
        return ((FieldSpec.Outcome.Changed) outcome).after();
    }

    private static String refusal(Feature feature, String label, String text) {
        FieldSpec.Outcome outcome = field(feature, label).read(feature, text, UnitSystem.US);
        assertThat(outcome).isInstanceOf(FieldSpec.Outcome.Refused.class);
        return ((FieldSpec.Outcome.Refused) outcome).words();
    }

    @ParameterizedTest
    @MethodSource("everySort")
    void whatAFieldShowsReadsBackAsItWas(Feature feature) {
        assertThat(Fields.of(feature)).isNotEmpty();
        for (UnitSystem units : UnitSystem.values()) {
            for (FieldSpec spec : Fields.of(feature)) {
                FieldSpec.Outcome same = spec.read(feature, spec.shown(feature, units), units);
                assertThat(same).as(spec.label()).isEqualTo(new FieldSpec.Outcome.Changed(feature));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everySort")
    void aTextThatIsTakenIsShownAgainAndTouchesNothingElse(Feature feature) {
        for (FieldSpec spec : Fields.of(feature)) {
            List<String> choices = spec.entry().choices();
            String text = choices.isEmpty() ? spec.entry() instanceof Entry.Text ? "back" : "1" : last(choices);
            FieldSpec.Outcome outcome = spec.read(feature, text, UnitSystem.US);
            assertThat(outcome).as(spec.label()).isInstanceOf(FieldSpec.Outcome.Changed.class);
            Feature after = ((FieldSpec.Outcome.Changed) outcome).after();
            assertThat(spec.shown(after, UnitSystem.US)).startsWith(text);
            Fields.of(feature).stream()
                    .filter(other -> !other.equals(spec))
                    .forEach(other -> assertThat(other.shown(after, UnitSystem.US))
                            .isEqualTo(other.shown(feature, UnitSystem.US)));
        }
    }

    private static String last(List<String> texts) {
        return texts.get(texts.size() - 1);
    }

    @ParameterizedTest
    @CsvSource({"12.5 ft,3.81", "12,3.6576", "3.8 m,3.8", "12' 6,3.81", "380 cm,3.8"})
    void aHeightIsReadInEitherSystem(String text, double heightM) {
        Building house = (Building) set(building(box(0, 0, 4, 4)), "Height", text);
        assertThat(house.heightM()).isCloseTo(heightM, within(1e-12));
    }

    @Test
    void flowArcAndSharesAreReadInTheirUnits() {
        assertThat(((Head) set(HEAD, "Flow", "3 gal/min")).flowLpm().orElseThrow())
                .isCloseTo(3 * 3.785411784, within(1e-12));
        assertThat(((Head) set(HEAD, "Arc", "180°")).arcSweepDeg()).isEqualTo(180);
        assertThat(((Tree) set(TREE, "Light through", "35 %")).transmission()).isCloseTo(0.35, within(1e-12));
        assertThat(((Turf) set(turf("a", box(0, 0, 4, 4)), "Slope", "8"))
                        .slopePct()
                        .orElseThrow())
                .isCloseTo(8, within(1e-12));
        assertThat(((Head) set(HEAD, "Class", "rotor")).headClass()).contains(HeadClass.ROTOR);
        assertThat(((Tree) set(TREE, "Foliage", "evergreen")).evergreen()).isTrue();
    }

    @Test
    void aBlankTextTakesBackWhatMayBeUnknown() {
        assertThat(((Tree) set(TREE, "Height", " ")).heightM()).isEmpty();
        assertThat(((Head) set(HEAD, "Class", "")).headClass()).isEmpty();
        assertThat(((Head) set(HEAD, "Valve", "")).valve()).isEmpty();
        assertThat(refusal(building(box(0, 0, 4, 4)), "Height", "")).isEqualTo("Height cannot be blank.");
        assertThat(refusal(turf("a", box(0, 0, 4, 4)), "Zone", " ")).isEqualTo("Zone cannot be blank.");
    }

    @Test
    void whatCannotBeIsRefusedWithWhatCould() {
        assertThat(refusal(TREE, "Height", "0")).isEqualTo("Write a length above 0.");
        assertThat(refusal(HEAD, "Arc", "400")).isEqualTo("Write an angle from 1° to 360°.");
        assertThat(refusal(building(box(0, 0, 4, 4)), "Height", "-3")).isEqualTo("Write a length of 0 ft or more.");
        assertThat(refusal(TREE, "Height", "tall")).contains("Write a length such as");
        assertThat(refusal(everySort().get(8), "Quality", "10")).isEqualTo("Write a whole number from 1 to 9.");
        assertThat(refusal(HEAD, "Profile", "cube")).startsWith("Choose one of: cone, uniform");
    }

    @Test
    void aMeasuredProfileIsToldAndStaysUntilAnotherIsChosen() {
        Head measured = (Head) RecordCopy.with(HEAD, "profile", new Profile.Measured(List.of(1.0, 0.5, 0.0)));
        assertThat(field(measured, "Profile").shown(measured, UnitSystem.US)).isEqualTo("measured, 3 depths");
        assertThat(set(measured, "Profile", "measured, 3 depths")).isEqualTo(measured);
        assertThat(((Head) set(measured, "Profile", "ring")).profile()).isEqualTo(Profile.Named.RING);
    }

    @Test
    void featuresOfOneSortShareTheirFieldsAndOthersNone() {
        assertThat(Fields.common(List.of(HEAD, HEAD.withKey("other")))).isEqualTo(Fields.of(HEAD));
        assertThat(Fields.common(List.of(HEAD, TREE))).isEmpty();
        assertThat(Fields.common(List.of())).isEmpty();
        assertThat(Fields.of(gate(0, 0))).isEmpty();
    }

    @Test
    void anEditIsNamedAfterWhatItSets() {
        Building house = (Building) set(building(box(0, 0, 4, 4)), "Name", "House");
        Yard yard = yard(house);
        Field height = Field.of(field(house, "Height"), List.of(house), UnitSystem.US);
        Field.Answer answer = height.answer("12 ft", yard, UnitSystem.US);
        assertThat(answer.edit()).hasValueSatisfying(step -> {
            assertThat(step.label()).isEqualTo("set height of House to 12 ft");
            assertThat(step.after()
                            .all(Building.class)
                            .findFirst()
                            .orElseThrow()
                            .heightM())
                    .isCloseTo(3.6576, within(1e-12));
        });
        assertThat(height.answer(height.shown(), yard, UnitSystem.US).edit()).isEmpty();
    }

    @Test
    void severalFeaturesChangeTogetherOrNotAtAll() {
        Barrier low = (Barrier) RecordCopy.with(FENCE.withKey("low"), "heightM", 0.9);
        Yard yard = yard(FENCE, low);
        Field height = Field.of(field(FENCE, "Height"), List.of(FENCE, low), UnitSystem.METRIC);
        assertThat(height.mixed()).isTrue();
        assertThat(height.shown()).isEmpty();
        assertThat(height.answer("2 m", yard, UnitSystem.METRIC).edit()).hasValueSatisfying(step -> {
            assertThat(step.label()).isEqualTo("set height of 2 features to 2 m");
            assertThat(step.after().all(Barrier.class)).allMatch(fence -> fence.heightM() == 2);
        });
        assertThat(height.answer("x", yard, UnitSystem.METRIC).edit()).isEmpty();
        assertThat(height.answer("x", yard, UnitSystem.METRIC).complaint()).isNotBlank();
    }
}
