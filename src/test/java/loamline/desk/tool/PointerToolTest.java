package loamline.desk.tool;

import static loamline.desk.tool.Desk.drag;
import static loamline.desk.tool.Desk.key;
import static loamline.desk.tool.Desk.press;
import static loamline.desk.tool.Desk.release;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import loamline.desk.tool.Input.Held;
import loamline.desk.tool.Input.KeyName;
import loamline.geometry.Corner;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PointerToolTest {
    private static final Held SHIFT = new Held(true, false, false);
    private static final Held ALT = new Held(false, false, true);
    private final Desk desk = new Desk(SmallYard.YARD);

    private Feature feature(String key) {
        return desk.yard().feature(key).orElseThrow();
    }

    private Point corner(String key, int ring, int index) {
        return new Corner(ring, index).at(feature(key).shape().orElseThrow());
    }

    @ParameterizedTest(name = "at {0}, {1}: {2}")
    @CsvSource({
        "3, 10, lawn",
        "4.05, 4, head",
        "9.5, 8.5, ''",
        "15, 3, bed",
        "17, 3, ''",
        "5, 20.05, fence",
        "25, 25, tree",
        "20, 15, ''",
        "30, 15, lot",
    })
    void aClickSelectsWhatLiesOnTop(double x, double y, String expected) {
        desk.click(x, y);
        assertThat(String.join(" ", desk.selection.keys())).isEqualTo(expected);
        assertThat(desk.used).isEqualTo(!expected.isEmpty());
    }

    @Test
    void aClickWithShiftAddsAndTakesAway() {
        desk.select("lawn").send(press(25, 25, SHIFT), release(25, 25));
        assertThat(desk.selection.keys()).containsExactly("lawn", "tree");
        desk.send(press(3, 10, SHIFT), release(3, 10));
        assertThat(desk.selection.keys()).containsExactly("tree");
    }

    @Test
    void aDragWithShiftSelectsWhatLiesWhollyInTheBox() {
        desk.send(press(1, 1, SHIFT), drag(10, 10), release(21, 13));
        assertThat(desk.selection.keys()).containsExactly("lawn", "bed", "head");
        assertThat(desk.history.steps()).isEmpty();
    }

    @Test
    void aDragOfWhatIsNotSelectedIsLeftToTheMap() {
        desk.send(press(3, 10), drag(5, 15));
        assertThat(desk.used).isFalse();
        assertThat(desk.shown).isEqualTo(SmallYard.YARD);
    }

    @Test
    void aDragMovesAllThatIsSelectedAsOneEdit() {
        desk.select("head", "tree", "spot").send(press(25, 25), drag(26, 25));
        assertThat(desk.history.steps()).isEmpty();
        assertThat(desk.shown).isNotEqualTo(SmallYard.YARD);
        desk.send(drag(26, 26), release(27, 24));
        assertThat(desk.label()).isEqualTo("move 3 things");
        assertThat(desk.history.steps()).hasSize(1);
        assertThat(corner("head", 0, 0)).isEqualTo(new Point(6, 3));
        assertThat(corner("spot", 0, 0)).isEqualTo(new Point(27, 4));
    }

    @Test
    void escapeDropsADragAndTheRestOfItDoesNothing() {
        desk.select("head", "tree").send(press(25, 25), drag(27, 25), key(KeyName.ESCAPE));
        assertThat(desk.shown).isEqualTo(SmallYard.YARD);
        desk.send(drag(28, 28), release(28, 28));
        assertThat(desk.used).isTrue();
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
        assertThat(desk.selection.keys()).containsExactly("head", "tree");
    }

    @Test
    void aClickOnOneOfManySelectsItAlone() {
        desk.select("lawn", "tree").click(25, 25);
        assertThat(desk.selection.keys()).containsExactly("tree");
    }

    @Test
    void aSlipOfTheMouseMovesNothing() {
        desk.select("lawn").send(press(3, 10), drag(3.03, 10), release(3.03, 10));
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
    }

    @ParameterizedTest(name = "{0}: {7}")
    @CsvSource({
        "lawn, 2, 2, 1, 3, 0, 0, move corner of Back lawn",
        "lawn, 8, 8, 7, 7, 1, 0, move corner of Back lawn",
        "bed, 18, 2, 17, 1, 1, 0, move corner of bed",
        "fence, 12, 20, 13, 19, 0, 1, move corner of fence",
        "lawn, 7, 2, 7, 1, 0, 1, add corner to Back lawn",
        "lawn, 9, 8, 9, 7, 1, 1, add corner to Back lawn",
        "fence, 12, 24, 14, 24, 0, 2, add corner to fence",
    })
    void aGripReshapes(String key, double x, double y, double toX, double toY, int ring, int index, String label) {
        desk.select(key).pull(x, y, toX, toY);
        assertThat(corner(key, ring, index)).isEqualTo(new Point(toX, toY));
        assertThat(desk.label()).isEqualTo(label);
        assertThat(desk.history.steps()).hasSize(1);
    }

    @Test
    void gripsChangeSizes() {
        desk.select("tree").pull(27, 25, 28.5, 25);
        assertThat(((Tree) feature("tree")).crownRadiusM()).hasValue(3.5);
        assertThat(desk.label()).isEqualTo("change crown of tree");
        desk.select("spot").pull(26, 5, 25, 7);
        assertThat(((KeepAway) feature("spot")).radiusM()).isEqualTo(2);
        double rim = 4 + 3 * Math.sqrt(0.5);
        desk.select("head").pull(rim, rim, 4, 9);
        assertThat(((Head) feature("head")).radiusM()).hasValue(5);
        assertThat(desk.label()).isEqualTo("change radius of head h3");
    }

    @Test
    void gripsTurnTheEdgesOfAnArc() {
        desk.select("head").pull(7, 4, 4, 1);
        assertThat(((Head) feature("head")).arcSweepDeg()).isEqualTo(180);
        assertThat(desk.label()).isEqualTo("widen arc of head h3");
        desk.pull(4, 7, 7, 4);
        assertThat(((Head) feature("head")).arcStartDeg()).isEqualTo(90);
        assertThat(((Head) feature("head")).arcSweepDeg()).isEqualTo(90);
        assertThat(desk.label()).isEqualTo("narrow arc of head h3");
        desk.pull(4, 1, 7, 4);
        assertThat(((Head) feature("head")).arcSweepDeg()).isEqualTo(360);
    }

    @Test
    void aGateSlidesAlongItsFence() {
        desk.select("fence").pull(6, 20, 15, 23);
        assertThat(((Barrier) feature("fence")).gates().get(0).atM()).isEqualTo(13);
        assertThat(desk.label()).isEqualTo("move gate of fence");
    }

    @Test
    void altClickRemovesACornerButNeverTooMany() {
        desk.select("fence").send(press(12, 20, ALT), release(12, 20));
        assertThat(desk.label()).isEqualTo("remove corner of fence");
        desk.send(press(2, 20, ALT), release(2, 20));
        assertThat(desk.said).isEqualTo("A line keeps at least 2 corners.");
        desk.select("lawn").send(press(8, 8, ALT), release(8, 8));
        assertThat(desk.said).isEqualTo("An outline keeps at least 3 corners.");
        assertThat(desk.history.steps()).hasSize(1);
    }

    @Test
    void deleteRemovesTheHotCornerElseTheSelection() {
        desk.select("lawn").click(12, 12).send(key(KeyName.DELETE));
        assertThat(desk.label()).isEqualTo("remove corner of Back lawn");
        assertThat(((Outline) feature("lawn").shape().orElseThrow())
                        .parts()
                        .get(0)
                        .shell())
                .hasSize(3);
        desk.send(key(KeyName.DELETE));
        assertThat(desk.label()).isEqualTo("remove Back lawn");
        assertThat(desk.yard().feature("lawn")).isEmpty();
    }

    @Test
    void deleteNeverRemovesWhatIsUnknown() {
        desk.select("odd").send(key(KeyName.DELETE), key(KeyName.LEFT));
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
    }

    @Test
    void arrowsNudgeByATenthOfAFootEachAnEdit() {
        desk.select("head").send(key(KeyName.RIGHT), key(KeyName.RIGHT), new Input.Key(KeyName.UP, SHIFT));
        assertThat(desk.history.steps()).hasSize(3);
        assertThat(desk.label()).isEqualTo("nudge head h3 north");
        assertThat(corner("head", 0, 0).x()).isEqualTo(4.06096, offset(1e-12)); // within rounding of a double
        assertThat(corner("head", 0, 0).y()).isEqualTo(4.3048, offset(1e-12));
    }

    @Test
    void escapeLetsGoOfTheHotCornerThenOfTheSelectionThenPasses() {
        desk.select("lawn").click(12, 12).send(key(KeyName.ESCAPE));
        assertThat(desk.selection.keys()).containsExactly("lawn");
        desk.send(key(KeyName.ESCAPE));
        assertThat(desk.selection.keys()).isEmpty();
        desk.send(key(KeyName.ESCAPE));
        assertThat(desk.used).isFalse();
    }

    @Test
    void onlyOneThingAtATimeShowsGripsAndTheHotCornerAmongThem() {
        assertThat(desk.select("lawn", "bed").tool.guides(desk.around())).isEmpty();
        desk.select("lawn").click(2, 2);
        List<Guide> guides = desk.tool.guides(desk.around());
        assertThat(guides).hasSize(2 * (4 + 3));
        assertThat(guides).contains(new Guide.Grip(new Point(2, 2), false, true));
    }

    @Test
    void aPlaceBeingDraggedIsSnapped() {
        desk.tool = PointerTool.with((at, held, around) -> new Point(Math.rint(at.x()), Math.rint(at.y())));
        desk.select("lawn").pull(2, 2, 1.3, 2.8);
        assertThat(corner("lawn", 0, 0)).isEqualTo(new Point(1, 3));
    }
}
