package loamline.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PatternsTest {
    /** Rounding of an overlay, m. */
    private static final double ROUNDING_M = 1e-6;

    private static final View VIEW = View.of(new Box(0, 0, 20, 20), 200);
    private static final Region L_WITH_A_HOLE = Region.of(Outline.of(1, 1, 17, 2, 16, 8, 7, 8, 8, 18, 1.5, 17))
            .minus(Region.of(Outline.of(2, 2, 5, 2.5, 4, 6)));

    static Stream<BiFunction<Region, View, Path>> patterns() {
        return Stream.of(Patterns::hatch, Patterns::boards, Patterns::dots, Patterns::stipple, Patterns::waves);
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void aPatternStaysInsideItsOutline(BiFunction<Region, View, Path> pattern) {
        Path drawn = pattern.apply(L_WITH_A_HOLE, VIEW);
        Region ground = L_WITH_A_HOLE.buffer(ROUNDING_M);
        assertThat(traced(drawn)).isNotEmpty().allMatch(ground::covers);
    }

    /** Points along the drawn line: ends, and a point in the middle of every line and curve. */
    private static List<Point> traced(Path path) {
        List<Point> points = new ArrayList<>();
        for (Path.Step step : path.steps()) {
            if (step instanceof Path.Move move) {
                points.add(move.to());
            } else if (step instanceof Path.Line line) {
                points.add(points.get(points.size() - 1).towards(line.to(), 0.5));
                points.add(line.to());
            } else if (step instanceof Path.Curve curve) {
                Point ends = points.get(points.size() - 1).towards(curve.to(), 0.5);
                Point controls = curve.control1().towards(curve.control2(), 0.5);
                points.add(ends.towards(controls, 0.75));
                points.add(curve.to());
            }
        }
        return points;
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void aPatternHasNothingWhereThereIsNoGround(BiFunction<Region, View, Path> pattern) {
        assertThat(pattern.apply(Region.EMPTY, VIEW).isEmpty()).isTrue();
    }

    @Test
    void hatchRunsAtFortyFiveDegreesAtOneDistance() {
        List<Double> offs = offsets(Patterns.hatch(L_WITH_A_HOLE, VIEW));
        for (int i = 1; i < offs.size(); i++) {
            double steps = (offs.get(i) - offs.get(0)) / VIEW.metres(2.2);
            assertThat(steps).isCloseTo(Math.rint(steps), org.assertj.core.data.Offset.offset(1e-6));
        }
        assertThat(offs.stream().map(off -> Math.rint(off * 1e6)).distinct().count())
                .isGreaterThan(10);
    }

    /** How far each line at 45° lies from the origin, both ends of it. */
    private static List<Double> offsets(Path hatch) {
        return hatch.points().map(p -> (p.y() - p.x()) / Math.sqrt(2)).toList();
    }

    @Test
    void dotsStayPutWhenTheViewMoves() {
        View moved = View.of(new Box(3.3, 1.7, 23.3, 21.7), 200);
        Box both = new Box(4, 2, 19, 19);
        assertThat(middles(Patterns.dots(L_WITH_A_HOLE, moved), both))
                .isNotEmpty()
                .isEqualTo(middles(Patterns.dots(L_WITH_A_HOLE, VIEW), both));
        assertThat(middles(Patterns.stipple(L_WITH_A_HOLE, moved), both))
                .isEqualTo(middles(Patterns.stipple(L_WITH_A_HOLE, VIEW), both));
    }

    private static Set<Point> middles(Path discs, Box box) {
        return discs.steps().stream()
                .filter(step -> step instanceof Path.Move)
                .map(step -> ((Path.Move) step).to())
                .filter(box::contains)
                .collect(Collectors.toSet());
    }

    @Test
    void onlyWhatTheViewShowsIsMade() {
        Region field = Region.of(Outline.of(-5000, -5000, 5000, -5000, 5000, 5000, -5000, 5000));
        assertThat(Patterns.dots(field, VIEW).steps()).hasSizeLessThan(20_000);
    }

    @Test
    void boardsRunAlongTheLongestSide() {
        Region deck = Region.of(Outline.of(2, 2, 12, 2, 12, 6, 2, 6));
        List<Point> ends = Patterns.boards(deck, VIEW).points().toList();
        assertThat(ends.get(0).y()).isCloseTo(ends.get(1).y(), org.assertj.core.data.Offset.offset(1e-9));
    }
}
