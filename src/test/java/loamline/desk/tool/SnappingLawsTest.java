package loamline.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import loamline.Laws;
import loamline.desk.tool.Input.Held;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.place.Frame;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Yards of a few random beds and fences within 20 m, a row of places drawn, and a pointer among them. */
class SnappingLawsTest {
    private static final double METRES_PER_PX = 0.02;
    private static final double REACH_M = Snapping.REACH_PX * METRES_PER_PX;

    /** What a right angle may miss, as the cosine of the angle. */
    private static final double SQUARE = 1e-9;

    /** Cases to be passed over for one that a law speaks of. */
    private static final int MOST_BESIDE = 50;

    private record Case(Yard yard, List<Point> drawn, Point pointer) {
        static Case of(long seed) {
            Random random = new Random(seed);
            Yard empty = Yard.empty("", Frame.local());
            List<Feature> features = IntStream.range(0, 8)
                    .mapToObj(i -> (i % 2 == 0
                                    ? NewFeatures.area(Kind.BED, Outline.of(path(random, 4)), empty)
                                    : NewFeatures.line(Kind.FENCE, new Polyline(path(random, 3)), empty))
                            .withKey("f" + i))
                    .toList();
            Yard yard = empty.withFeatures(features);
            List<Point> drawn = path(random, random.nextInt(5));
            return new Case(yard, drawn, pointer(random, yard, drawn));
        }

        /** Near something as often as anywhere. */
        private static Point pointer(Random random, Yard yard, List<Point> drawn) {
            List<Point> corners = yard.features().stream()
                    .flatMap(feature -> feature.shape().stream())
                    .flatMap(shape -> shape.vertices())
                    .toList();
            Point near = switch (random.nextInt(5)) {
                case 0 -> corners.get(random.nextInt(corners.size()));
                case 1 -> drawn.isEmpty() ? place(random) : drawn.get(0);
                case 2 -> corners.get(0).towards(corners.get(1), random.nextDouble());
                case 3 -> drawn.size() < 2 ? place(random) : beyond(random, drawn);
                default -> place(random);
            };
            return near.plus(0.1 * random.nextGaussian(), 0.1 * random.nextGaussian());
        }

        /** A place at a right angle to the last side. */
        private static Point beyond(Random random, List<Point> drawn) {
            Point before = drawn.get(drawn.size() - 2);
            Point last = drawn.get(drawn.size() - 1);
            double share = random.nextGaussian();
            return last.plus(-share * (last.y() - before.y()), share * (last.x() - before.x()));
        }

        private static Point place(Random random) {
            return new Point(20 * random.nextDouble(), 20 * random.nextDouble());
        }

        private static List<Point> path(Random random, int count) {
            return IntStream.range(0, count).mapToObj(i -> place(random)).toList();
        }

        Snapped snapped(Held held) {
            return Snapping.over(yard).snap(pointer, held, drawn, METRES_PER_PX);
        }
    }

    @Property(seed = Laws.SEED, tries = 500)
    void aSnapMovesThePointerWithinReachOrNotAtAll(@ForAll long seed) {
        Case c = Case.of(seed);
        Snapped snapped = c.snapped(Held.NONE);

        if (snapped.word().isEmpty()) {
            assertThat(snapped).isEqualTo(Snapped.free(c.pointer()));
        } else {
            assertThat(snapped.at().distanceTo(c.pointer())).isLessThanOrEqualTo(REACH_M);
        }
    }

    @Property(seed = Laws.SEED, tries = 500)
    void aCornerWithinReachIsMetExactlyUnlessTheStartCloses(@ForAll long seed) {
        Case c = Case.of(seed);
        List<Point> corners = c.yard().features().stream()
                .flatMap(feature -> feature.shape().stream())
                .flatMap(shape -> shape.vertices())
                .toList();
        double nearestM =
                corners.stream().mapToDouble(c.pointer()::distanceTo).min().orElseThrow();
        Snapped snapped = c.snapped(Held.NONE);

        assertThat(snapped.word().equals("corner"))
                .isEqualTo(nearestM <= REACH_M && !snapped.word().equals("close"));
        if (snapped.word().equals("corner")) {
            assertThat(corners).contains(snapped.at());
            assertThat(snapped.at().distanceTo(c.pointer())).isEqualTo(nearestM);
        }
    }

    @Property(seed = Laws.SEED, tries = 500, maxDiscardRatio = MOST_BESIDE)
    void aRightAngleIsOne(@ForAll long seed) {
        Case c = Case.of(seed);
        Snapped snapped = c.snapped(Held.NONE);
        Assume.that(snapped.word().startsWith("right angle"));
        Point last = c.drawn().get(c.drawn().size() - 1);

        List<Point> side = snapped.help().stream()
                .map(guide -> ((Guide.Line) guide).points())
                .findFirst()
                .orElseThrow();
        double dx = side.get(1).x() - side.get(0).x();
        double dy = side.get(1).y() - side.get(0).y();
        double dot = dx * (snapped.at().x() - last.x()) + dy * (snapped.at().y() - last.y());
        assertThat(Math.abs(dot)).isLessThanOrEqualTo(SQUARE * Math.hypot(dx, dy) * last.distanceTo(snapped.at()));
    }

    @Property(seed = Laws.SEED, tries = 500, maxDiscardRatio = MOST_BESIDE)
    void anEdgeIsMetWithinRounding(@ForAll long seed) {
        Case c = Case.of(seed);
        Snapped snapped = c.snapped(Held.NONE);
        Assume.that(snapped.word().endsWith("edge"));

        double offM = c.yard().features().stream()
                .flatMap(feature -> feature.shape().stream())
                .mapToDouble(shape -> shape instanceof Polyline line
                        ? line.nearestTo(snapped.at()).distanceTo(snapped.at())
                        : Region.of((Outline) shape).distanceToEdge(snapped.at()))
                .min()
                .orElseThrow();
        assertThat(offM).isLessThan(1e-9);
    }

    @Property(seed = Laws.SEED, tries = 500)
    void shiftKeepsToStepsOf45Degrees(@ForAll long seed) {
        Case c = Case.of(seed);
        Assume.that(!c.drawn().isEmpty());
        Snapped snapped = c.snapped(new Held(true, false, false));

        Point last = c.drawn().get(c.drawn().size() - 1);
        double steps = Azimuth.deg(last, snapped.at()) / 45;
        assertThat(Math.abs(steps - Math.rint(steps))).isLessThan(1e-9);
    }

    @Property(seed = Laws.SEED, tries = 200)
    void theSameIsDrawnToTheSamePlace(@ForAll long seed) {
        assertThat(Case.of(seed).snapped(Held.NONE)).isEqualTo(Case.of(seed).snapped(Held.NONE));
    }
}
