package loamline.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.geometry.Repair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold whatever the picture shows. */
class TraceTest {
    private static final int WIDTH = 160;
    private static final int HEIGHT = 120;
    private static final double HOLE_PX2 = 60;
    private static final int STEPS = 25;

    /** Rounding of positions, px. */
    private static final double ROUNDING_PX = 1e-9;

    /** A lawn with a bed in it, a drive, and gravel all round. */
    private static Canvas yard() {
        return new Canvas(WIDTH, HEIGHT)
                .fill(Canvas.box(0, 0, WIDTH, HEIGHT), 0x9A9184, Canvas.grain(0.2, 1))
                .fill(Canvas.box(20, 20, 100, 90), 0x5E7F42, Canvas.grain(0.2, 2))
                .fill(Canvas.oval(55, 50, 14, 10), 0x5A4030, Canvas.grain(0.2, 3))
                .fill(Canvas.box(100, 40, 130, 90), 0xC8C4BC, Canvas.grain(0.05, 4));
    }

    private static final Mosaic YARD = Mosaic.of(yard().picture());

    private static Proposal at(Mosaic mosaic, double tolerance, int x, int y) {
        return mosaic.trace(List.of(new Pixel(x, y))).at(tolerance, HOLE_PX2);
    }

    private static Point middle(int x, int y) {
        return new Point(x + 0.5, y + 0.5);
    }

    @ParameterizedTest
    @CsvSource({"30, 30", "99, 60", "55, 50", "110, 70", "0, 0", "159, 119", "69, 50"})
    void theOutlineHoldsTheClick(int x, int y) {
        for (double tolerance = 0; tolerance <= 1; tolerance += 0.125) {
            Outline outline = at(YARD, tolerance, x, y).outline();
            assertThat(Region.of(outline).covers(middle(x, y))).isTrue();
            assertThat(Repair.of(outline).notes()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"30, 30", "55, 50", "110, 70", "5, 100"})
    void moreToleranceNeverGivesLess(int x, int y) {
        Trace trace = YARD.trace(List.of(new Pixel(x, y)));
        Cells before = trace.cells(0, HOLE_PX2);
        double area = 0;
        for (int step = 1; step <= STEPS; step++) {
            Cells cells = trace.cells(step / (double) STEPS, HOLE_PX2);
            Cells less = before;
            assertThat(IntStream.range(0, WIDTH * HEIGHT).filter(i -> holds(less, i) && !holds(cells, i)))
                    .isEmpty();
            Proposal proposal = trace.at(step / (double) STEPS, HOLE_PX2);
            assertThat(proposal.areaPx2()).isEqualTo(cells.count()).isGreaterThanOrEqualTo(area);
            area = proposal.areaPx2();
            before = cells;
        }
        assertThat(area).isEqualTo(WIDTH * HEIGHT);
    }

    private static boolean holds(Cells cells, int index) {
        int row = index / WIDTH;
        return cells.has(index % WIDTH - cells.left(), row - cells.top());
    }

    @Test
    void theOutlineEnclosesTheAreaFound() {
        Proposal lawn = at(YARD, 0.5, 30, 30);
        assertThat(Region.of(lawn.outline()).areaM2()).isCloseTo(lawn.areaPx2(), within(1e-2));
    }

    @Test
    void groundThatIsClosedIsNeverEntered() {
        BitSet closed = new BitSet();
        IntStream.range(0, WIDTH * HEIGHT).filter(i -> i % WIDTH < 40).forEach(closed::set);
        Mosaic mosaic = Mosaic.of(yard().picture().closedTo(closed));
        for (double tolerance : new double[] {0.5, 1}) {
            Cells cells = mosaic.trace(List.of(new Pixel(80, 80))).cells(tolerance, Double.MAX_VALUE);
            assertThat(cells.count()).isPositive();
            assertThat(IntStream.range(0, WIDTH * HEIGHT)
                            .filter(i -> holds(cells, i))
                            .map(i -> i % WIDTH)
                            .min())
                    .hasValue(40);
        }
        assertThat(at(mosaic, 0.5, 80, 80).border().limit())
                .isCloseTo(70 / 356.0, within(0.03)); // 260 round the lawn, 96 round the bed
        Proposal closedClick = at(mosaic, 0.5, 30, 30);
        assertThat(closedClick.outline().parts()).isEmpty();
        assertThat(closedClick.confidence()).isZero();
        assertThat(closedClick.doubts()).extracting(Doubt::kind).containsExactly(Doubt.Kind.CLOSED);
    }

    @Test
    void transparentPixelsAreNoData() {
        int[] pixels = yard().pixels();
        IntStream.range(0, pixels.length).filter(i -> i % WIDTH >= 70).forEach(i -> pixels[i] &= 0x7FFFFFFF);
        Mosaic mosaic = Mosaic.of(Picture.of(WIDTH, HEIGHT, pixels));
        Proposal lawn = at(mosaic, 0.5, 30, 30);
        assertThat(lawn.outline().vertices().mapToDouble(Point::x).max().orElseThrow())
                .isCloseTo(70, within(0.5));
        assertThat(lawn.doubts())
                .anyMatch(d -> d.kind() == Doubt.Kind.CUT_OFF && d.side().orElseThrow() == Doubt.Side.RIGHT);
        assertThat(at(mosaic, 0.5, 100, 30).doubts())
                .extracting(Doubt::sentence)
                .containsExactly("The picture shows nothing where you clicked.");
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "0, 1", "17, 5", "29, 30"})
    void aPictureThatIsShiftedGivesTheSameOutlineShifted(int dx, int dy) {
        List<Point> here = framed(0, 0);
        List<Point> there = framed(dx, dy);
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            assertThat(there.get(i).distanceTo(here.get(i).plus(dx, dy))).isLessThan(ROUNDING_PX);
        }
    }

    /** The lawn's outline where the yard lies at some place in a larger picture without data. */
    private static List<Point> framed(int dx, int dy) {
        int[] pixels = new int[(WIDTH + 30) * (HEIGHT + 30)];
        int[] yard = yard().pixels();
        for (int y = 0; y < HEIGHT; y++) {
            System.arraycopy(yard, y * WIDTH, pixels, (y + dy) * (WIDTH + 30) + dx, WIDTH);
        }
        Mosaic mosaic = Mosaic.of(Picture.of(WIDTH + 30, HEIGHT + 30, pixels));
        return at(mosaic, 0.5, 30 + dx, 30 + dy).outline().vertices().toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void aPictureOfOneColourIsFoundWhole(double tolerance) {
        Canvas even = new Canvas(40, 30).fill(Canvas.box(0, 0, 40, 30), 0x446633, (x, y) -> 1);
        Proposal all = at(Mosaic.of(even.picture()), tolerance, 7, 9);
        assertThat(all.areaPx2()).isEqualTo(40 * 30);
        List<Point> corners = all.outline().vertices().toList();
        List<Point> truth = Canvas.box(0, 0, 40, 30).vertices().toList();
        assertThat(corners).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(corners.get(i).distanceTo(truth.get(i))).isLessThan(ROUNDING_PX);
        }
        assertThat(all.border().pictureEdge()).isEqualTo(1);
        assertThat(all.confidence()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void aPictureOfOnePixelIsThatPixel(double tolerance) {
        Proposal pixel = at(Mosaic.of(Picture.of(1, 1, new int[] {0xFF336699})), tolerance, 0, 0);
        assertThat(pixel.outline()).isEqualTo(Canvas.box(0, 0, 1, 1));
        assertThat(pixel.areaPx2()).isEqualTo(1);
    }

    @Test
    void clicksAddUpAndTheirOrderDoesNotMatter() {
        Pixel lawn = new Pixel(30, 30);
        Pixel drive = new Pixel(110, 70);
        Proposal both = YARD.trace(List.of(lawn, drive)).at(0.5, 0);
        assertThat(both.areaPx2()).isGreaterThan(at(YARD, 0.5, 30, 30).areaPx2() + 1300);
        assertThat(YARD.trace(List.of(drive, lawn)).at(0.5, 0)).isEqualTo(both);
        assertThat(YARD.trace(List.of(lawn, lawn)).at(0.5, 0))
                .isEqualTo(YARD.trace(List.of(lawn)).at(0.5, 0));
    }

    @Test
    void aBedInTheLawnIsAHoleUnlessItIsSmallerThanAsked() {
        Trace lawn = YARD.trace(List.of(new Pixel(30, 30)));
        assertThat(lawn.at(0.5, 0).outline().parts().get(0).holes()).hasSize(1);
        assertThat(lawn.at(0.5, 1000).outline().parts().get(0).holes()).isEmpty();
    }

    @Test
    void aClickOutsideIsRefused() {
        for (Pixel outside : List.of(new Pixel(-1, 0), new Pixel(0, -1), new Pixel(WIDTH, 0), new Pixel(0, HEIGHT))) {
            assertThatThrownBy(() -> YARD.trace(List.of(outside)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("outside the picture of 160 x 120");
        }
        assertThatThrownBy(() -> YARD.trace(List.of())).isInstanceOf(IllegalArgumentException.class);
        Trace trace = YARD.trace(List.of(new Pixel(0, 0)));
        for (double tolerance : new double[] {-0.01, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> trace.at(tolerance, 0)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aPictureNeedsAsManyPixelsAsItSays() {
        assertThatThrownBy(() -> Picture.of(3, 2, new int[5])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Picture.of(0, 2, new int[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Picture.of(100_000, 100_000, new int[0])).isInstanceOf(IllegalArgumentException.class);
    }
}
