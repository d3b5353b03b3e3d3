package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinesTest {
    private static final Region SQUARE = Region.of(Outline.of(0, 0, 4, 0, 4, 4, 0, 4));
    private static final Region RIGHT_OF_IT = Region.of(Outline.of(4, 0, 8, 0, 8, 4, 4, 4));

    private static Polyline line(double x0, double y0, double x1, double y1) {
        return new Polyline(List.of(new Point(x0, y0), new Point(x1, y1)));
    }

    private static double lengthM(List<Polyline> lines) {
        return lines.stream().mapToDouble(Polyline::lengthM).sum();
    }

    @Test
    void aLineIsCutWhereItLeavesTheGround() {
        assertThat(Lines.within(List.of(line(-1, 2, 5, 2)), SQUARE)).containsExactly(line(0, 2, 4, 2));
    }

    @Test
    void aHoleSplitsALineInTwo() {
        Region ring = SQUARE.minus(Region.of(Outline.of(1, 1, 3, 1, 3, 3, 1, 3)));
        assertThat(lengthM(Lines.within(List.of(line(-1, 2, 5, 2)), ring))).isEqualTo(2);
        assertThat(Lines.within(List.of(line(-1, 2, 5, 2)), ring)).hasSize(2);
    }

    @Test
    void whatIsInsideAndWhatIsOutsideMakeTheWholeLine() {
        List<Polyline> across = List.of(line(-1, -1, 6, 5));
        double insideM = lengthM(Lines.within(across, SQUARE));
        double outsideM = lengthM(Lines.outside(across, SQUARE));
        assertThat(insideM + outsideM).isCloseTo(lengthM(across), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(insideM).isPositive();
        assertThat(outsideM).isPositive();
    }

    @Test
    void touchingAtAPointIsDropped() {
        assertThat(Lines.within(List.of(line(-1, 1, 1, -1)), SQUARE)).isEmpty();
    }

    @Test
    void neighboursShareTheirBorderOnce() {
        assertThat(lengthM(Lines.borders(List.of(SQUARE, RIGHT_OF_IT)))).isEqualTo(16 + 16 - 4);
    }

    @Test
    void aBorderIsJoinedUpToTheNextBranch() {
        assertThat(Lines.borders(List.of(SQUARE))).hasSize(1);
        assertThat(Lines.borders(List.of(SQUARE, RIGHT_OF_IT))).hasSize(3);
    }

    @Test
    void nothingGivesNothing() {
        assertThat(Lines.borders(List.of())).isEmpty();
        assertThat(Lines.within(List.of(), SQUARE)).isEmpty();
        assertThat(Lines.within(List.of(line(0, 0, 1, 1)), Region.EMPTY)).isEmpty();
        assertThat(Lines.borders(List.of(Region.EMPTY))).isEmpty();
    }
}
