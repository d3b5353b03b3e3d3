package loamline.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loamline.Laws;
import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ColumnTest {
    private static final PaperRect PAPER = Paper.A4.upright();
    private static final double BODY_MM = Page.body(PAPER).heightMm();

    /** A block of a height, known by its name. */
    private record Brick(String name, double mm) implements Block {
        @Override
        public double heightMm(double widthMm) {
            return mm;
        }

        @Override
        public void draw(Canvas canvas, PaperRect room) {}
    }

    private static List<Block> rows(int count, double mm) {
        return new ArrayList<>(Collections.nCopies(count, new Brick("row", mm)));
    }

    private static List<String> names(Page page) {
        return page.parts().stream().map(part -> ((Brick) part.block()).name()).toList();
    }

    @Test
    void aLowTableIsNotBrokenAndAHighOneKeepsThreeRowsUnderItsHead() {
        List<Page> low = new Column()
                .add(0, new Brick("fill", BODY_MM - 50))
                .add(0, new Brick("head", 6), rows(10, 5))
                .pages(PAPER, "", "");
        assertThat(names(low.get(0))).containsExactly("fill");
        List<Page> high = new Column()
                .add(0, new Brick("fill", BODY_MM - 18))
                .add(0, new Brick("head", 6), rows(20, 5))
                .pages(PAPER, "", "");
        assertThat(names(high.get(0))).containsExactly("fill");
        List<Page> three = new Column()
                .add(0, new Brick("fill", BODY_MM - 22))
                .add(0, new Brick("head", 6), rows(20, 5))
                .pages(PAPER, "", "");
        assertThat(names(three.get(0))).containsExactly("fill", "head", "row", "row", "row");
    }

    @Property(seed = Laws.SEED, tries = 200)
    void nothingIsLostAndNothingRunsOverAPage(
            @ForAll @IntRange(max = 60) int first,
            @ForAll @IntRange(max = 60) int second,
            @ForAll @IntRange(min = 4, max = 40) int rowMm) {
        List<Page> pages = new Column()
                .add(0, new Brick("title", 10))
                .add(5, new Brick("head", 6), rows(first, rowMm))
                .add(5, new Brick("head", 6), rows(second, rowMm))
                .pages(PAPER, "", "");
        assertThat(pages.stream().flatMap(page -> names(page).stream()).filter("row"::equals))
                .hasSize(first + second);
        for (Page page : pages) {
            double bottom = Page.body(PAPER).topMm();
            for (Page.Placed part : page.parts()) {
                assertThat(part.room().topMm()).isGreaterThanOrEqualTo(bottom - 1e-9);
                bottom = part.room().bottomMm();
            }
            assertThat(bottom).isLessThanOrEqualTo(Page.body(PAPER).bottomMm() + 1e-5);
        }
    }

    @Test
    void theHeadComesBackOnEveryPage() {
        List<Page> pages =
                new Column().add(0, new Brick("head", 6), rows(40, 10)).pages(PAPER, "", "");
        assertThat(pages).hasSize(2);
        assertThat(pages).allMatch(page -> names(page).get(0).equals("head"));
    }

    @Test
    void aHeadIsNotLeftAloneAtTheFoot() {
        List<Page> pages = new Column()
                .add(0, new Brick("tall", BODY_MM - 10))
                .add(0, new Brick("head", 6), rows(2, 10))
                .pages(PAPER, "", "");
        assertThat(names(pages.get(0))).containsExactly("tall");
        assertThat(names(pages.get(1))).containsExactly("head", "row", "row");
    }

    @Test
    void noGapStandsAtTheTopOfAPage() {
        List<Page> pages = new Column()
                .add(0, new Brick("tall", BODY_MM))
                .add(20, new Brick("next", 10))
                .pages(PAPER, "", "");
        assertThat(pages.get(1).parts().get(0).room().topMm())
                .isEqualTo(Page.body(PAPER).topMm());
    }

    @Test
    void aFillerTakesWhatIsLeftIfThatIsWorthIt() {
        Column roomy =
                new Column().add(0, new Brick("text", 100)).fill(5, 30, new Brick("head", 6), new Brick("lines", 0));
        List<Page.Placed> parts = roomy.pages(PAPER, "", "").get(0).parts();
        assertThat(parts.get(2).room().heightMm()).isCloseTo(BODY_MM - 100 - 5 - 6, offset(1e-9));
        Column full = new Column()
                .add(0, new Brick("text", BODY_MM - 20))
                .fill(5, 30, new Brick("head", 6), new Brick("lines", 0));
        assertThat(full.pages(PAPER, "", "").get(0).parts()).hasSize(1);
    }
}
