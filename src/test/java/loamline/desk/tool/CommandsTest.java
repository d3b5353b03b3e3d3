package loamline.desk.tool;

import static loamline.desk.tool.Desk.key;
import static loamline.desk.tool.Desk.press;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loamline.desk.tool.Input.KeyName;
import loamline.geometry.Point;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Turf;
import org.junit.jupiter.api.Test;

class CommandsTest {
    private final Desk desk = new Desk(SmallYard.YARD);

    private List<String> keys() {
        return desk.yard().features().stream().map(Feature::key).toList();
    }

    @Test
    void shortcutsAreGivenOnce() {
        assertThat(Commands.all().stream().map(Command::shortcut).filter(s -> !s.isBlank()))
                .doesNotHaveDuplicates();
        assertThat(Commands.all().stream().map(Command::label)).doesNotHaveDuplicates();
    }

    @Test
    void withNothingSelectedOnlySelectingIsLeft() {
        assertThat(Commands.all().stream().filter(command -> command.isEnabled(desk.context())))
                .containsExactly(Commands.SELECT_ALL);
    }

    @Test
    void whatIsUnknownIsNeverTouched() {
        desk.select("odd");
        assertThat(Commands.all().stream().filter(command -> command.isEnabled(desk.context())))
                .containsExactly(Commands.SELECT_ALL);
        desk.run(Commands.SELECT_ALL);
        assertThat(desk.selection.keys()).hasSize(7).doesNotContain("odd");
    }

    @Test
    void copiedThingsArePastedAndSelected() {
        desk.select("head", "tree").run(Commands.COPY).run(Commands.PASTE);
        assertThat(desk.label()).isEqualTo("paste 2 things");
        assertThat(desk.selection.keys()).containsExactly("f1", "f2");
        assertThat(desk.yard().feature("f2").orElseThrow().shape()).contains(new Point(25.5, 24.5));
    }

    @Test
    void cutThingsCanBePasted() {
        desk.select("tree").run(Commands.CUT_OUT);
        assertThat(keys()).doesNotContain("tree");
        desk.run(Commands.PASTE);
        assertThat(keys()).hasSize(8);
        assertThat(desk.label()).isEqualTo("paste tree");
    }

    @Test
    void duplicatesLeaveTheClipboardAlone() {
        desk.select("head").run(Commands.DUPLICATE);
        assertThat(desk.label()).isEqualTo("duplicate head h3");
        assertThat(desk.copied).isEmpty();
    }

    @Test
    void theSelectionGrowsToAllOfItsKind() {
        desk.select("head").run(Commands.DUPLICATE).select("head").run(Commands.SELECT_KIND);
        assertThat(desk.selection.keys()).containsExactly("head", "f1");
    }

    @Test
    void aLineCutsTheSelectionAndSelectsThePieces() {
        desk.select("lawn").run(Commands.CUT_ALONG).send(press(0, 5), press(13, 5), key(KeyName.ENTER));
        assertThat(desk.label()).isEqualTo("cut Back lawn");
        assertThat(desk.yard().all(Turf.class).map(Turf::zone)).containsExactly("Back lawn a", "Back lawn b");
        assertThat(desk.selection.keys()).containsExactly("lawn", "f1");
        assertThat(desk.tool).isInstanceOf(PointerTool.class);
        desk.run(Commands.JOIN);
        assertThat(desk.yard().all(Turf.class)).hasSize(1);
        assertThat(desk.label()).isEqualTo("join 2 things");
    }

    @Test
    void aCutThatDividesNothingSaysSoAndCanGoOn() {
        desk.select("lawn").run(Commands.CUT_ALONG).send(press(0, 5), press(5, 5), key(KeyName.ENTER));
        assertThat(desk.said).startsWith("The line divides nothing");
        desk.send(press(20, 5), key(KeyName.ENTER));
        assertThat(desk.label()).isEqualTo("cut Back lawn");
    }

    @Test
    void escapeTakesBackAPlaceThenTheTool() {
        desk.select("lawn").run(Commands.CUT_ALONG).send(press(0, 5), key(KeyName.ESCAPE));
        assertThat(desk.tool).isEqualTo(LineTool.cutting());
        desk.send(key(KeyName.ESCAPE));
        assertThat(desk.tool).isInstanceOf(PointerTool.class);
    }

    @Test
    void theSecondPlaceMirrors() {
        desk.select("tree").run(Commands.MIRROR_ACROSS).send(press(20, 0), press(20, 10));
        assertThat(desk.yard().feature("tree").orElseThrow().shape()).contains(new Point(15, 25));
        assertThat(desk.label()).isEqualTo("mirror tree");
    }

    @Test
    void theThirdPlaceTurns() {
        desk.select("tree").run(Commands.TURN_ABOUT).send(press(25, 15), press(25, 25), press(15, 15));
        Point at = (Point) desk.yard().feature("tree").orElseThrow().shape().orElseThrow();
        assertThat(at.distanceTo(new Point(15, 15))).isLessThan(1e-9);
        assertThat(desk.label()).isEqualTo("turn tree");
    }

    @Test
    void mirroringSidewaysAndTurningKeepTheMiddle() {
        desk.select("bed", "head").run(Commands.MIRROR_SIDEWAYS);
        assertThat(desk.yard().feature("head").orElseThrow().shape()).contains(new Point(20, 4));
        desk.run(Commands.MIRROR_SIDEWAYS);
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
        desk.run(Commands.TURN_RIGHT).run(Commands.TURN_LEFT);
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
    }

    @Test
    void namesAndKindsChange() {
        desk.select("lawn").run(Commands.rename(" Side ")).run(Commands.changeTo(Kind.BED));
        assertThat(desk.label()).isEqualTo("change to bed: Side");
        assertThat(desk.yard().feature("lawn").orElseThrow().kind()).contains(Kind.BED);
        assertThat(Commands.changeTo(Kind.BED).isEnabled(desk.context())).isFalse();
        assertThat(Commands.changeTo(Kind.TURF).isEnabled(desk.select("tree").context()))
                .isFalse();
    }

    @Test
    void orderChangesByOnePlace() {
        desk.select("lawn").run(Commands.RAISE);
        assertThat(keys()).startsWith("lot", "bed", "lawn");
        desk.run(Commands.LOWER);
        assertThat(desk.yard()).isEqualTo(SmallYard.YARD);
    }
}
