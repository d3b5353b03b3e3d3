package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import loamline.Laws;
import loamline.geometry.Point;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {
    private static final TextMeasure TEXT = new EvenText();
    private static final PaperRect PAPER = new PaperRect(0, 0, 100, 100);
    private static final Ink INK = Ink.of(0);

    private static Label.Form form(String words, double sizePt, double price) {
        return new Label.Form(List.of(new Label.Line(words, Type.regular(sizePt), INK)), price);
    }

    private static Label label(int rank, String words, Label.Home home, Label.Place... places) {
        return new Label(rank, List.of(form(words, 8, 0), form(words, 5, 0.5)), List.of(places), home);
    }

    private static Label.Place at(double x, double y, double price) {
        return new Label.Place(new Point(x, y), price);
    }

    private static LabelPlacer placer(List<PaperRect> taken, List<LabelPlacer.Crossable> crossable) {
        return new LabelPlacer(PAPER, TEXT, taken, crossable);
    }

    @Provide
    Arbitrary<List<Label>> labels() {
        Arbitrary<Point> points =
                Arbitraries.integers().between(0, 100).tuple2().map(xy -> new Point(xy.get1(), xy.get2()));
        Arbitrary<List<Label.Place>> places =
                points.map(p -> new Label.Place(p, 0.1)).list().ofMinSize(1).ofMaxSize(6);
        return Arbitraries.integers()
                .between(1, 12)
                .flatMap(letters -> places.map(p -> Tuple.of(letters, p)))
                .map(t -> new Label(
                        t.get1() % 3, List.of(form("x".repeat(t.get1()), 8, 0)), t.get2(), Label.Home.ANYWHERE))
                .list()
                .ofMaxSize(25);
    }

    @Property(seed = Laws.SEED, tries = 300)
    void labelsNeverTouchEachOtherOrACoreOrLeaveThePaper(@ForAll("labels") List<Label> labels) {
        List<PaperRect> all = new ArrayList<>(List.of(new PaperRect(40, 40, 20, 20), new PaperRect(5, 70, 6, 6)));
        for (LabelPlacer.Placed placed : placer(all, List.of()).place(labels)) {
            assertThat(PAPER.contains(placed.room())).isTrue();
            assertThat(all).noneMatch(placed.room()::overlaps);
            all.add(placed.room());
        }
    }

    @Test
    void theHigherRankChoosesFirst() {
        Label second = label(1, "second", Label.Home.ANYWHERE, at(50, 50, 0), at(50, 80, 0.1));
        Label first = label(0, "first", Label.Home.ANYWHERE, at(50, 50, 0));
        List<LabelPlacer.Placed> placed = placer(List.of(), List.of()).place(List.of(second, first));
        assertThat(placed.get(0).lines().get(0).words()).isEqualTo("first");
        assertThat(placed.get(1).room().centre()).isEqualTo(new Point(50, 80));
    }

    @Test
    void aLabelWithoutRoomIsLeftOut() {
        Label label = label(0, "name", Label.Home.ANYWHERE, at(50, 50, 0));
        assertThat(placer(List.of(new PaperRect(45, 45, 10, 10)), List.of()).place(List.of(label)))
                .isEmpty();
    }

    @Test
    void aLabelThatIsTooLargeIsSetSmaller() {
        Label label = label(0, "a name", Label.Home.ANYWHERE, at(50, 50, 0));
        List<PaperRect> walls = List.of(new PaperRect(0, 0, 45.5, 100), new PaperRect(54.5, 0, 45.5, 100));
        assertThat(placer(walls, List.of()).place(List.of(label)))
                .singleElement()
                .satisfies(placed ->
                        assertThat(placed.lines().get(0).type().sizePt()).isEqualTo(5));
    }

    @Test
    void aDetourIsTakenWhenCrossingCostsMore() {
        Label label = label(0, "name", Label.Home.ANYWHERE, at(50, 50, 0), at(50, 80, 0.2));
        PaperRect walk = new PaperRect(49, 49, 2, 2);
        assertThat(middle(label, new LabelPlacer.Crossable(walk, 0.3))).isEqualTo(new Point(50, 80));
        assertThat(middle(label, new LabelPlacer.Crossable(walk, 0.1))).isEqualTo(new Point(50, 50));
    }

    private static Point middle(Label label, LabelPlacer.Crossable crossable) {
        return placer(List.of(), List.of(crossable))
                .place(List.of(label))
                .get(0)
                .room()
                .centre();
    }

    @Test
    void aLabelStaysOnItsOwnGroundIfItCan() {
        Label label = label(0, "name", mm -> mm.y() > 60, at(50, 50, 0), at(50, 80, 0.4));
        assertThat(placer(List.of(), List.of())
                        .place(List.of(label))
                        .get(0)
                        .room()
                        .centre())
                .isEqualTo(new Point(50, 80));
    }
}
