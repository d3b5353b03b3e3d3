package loamline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutTest {
    private static final Outline SQUARE = Outline.of(0, 0, 10, 0, 10, 10, 0, 10);
    private static final Outline WITH_HOLE = new Outline(
            List.of(new Outline.Part(points(0, 0, 10, 0, 10, 10, 0, 10), List.of(points(4, 4, 6, 4, 6, 6, 4, 6)))));

    private static List<Point> points(double... xy) {
        return Outline.of(xy).vertices().toList();
    }

    private static Polyline line(String xy) {
        double[] numbers =
                List.of(xy.split(" ")).stream().mapToDouble(Double::parseDouble).toArray();
        return new Polyline(points(numbers));
    }

    private static String areas(Outline outline, String along) {
        return Cut.of(Region.of(outline), line(along)).stream()
                .map(piece -> String.valueOf(Math.rint(piece.areaM2() * 1e6) / 1e6))
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "straight across, -1 3 11 3, 70.0 30.0",
        "from corner to corner, 0 0 10 10, 50.0 50.0",
        "from corner to corner and beyond, -5 -5 15 15, 50.0 50.0",
        "along an edge, 0 0 10 0, 100.0",
        "along an edge and beyond, -3 0 13 0, 100.0",
        "within a hair of an edge, -1 0.0000001 11 0.0000002, 100.0",
        "touching a corner, -5 5 0 10 5 15, 100.0",
        "past it, 20 0 20 10, 100.0",
        "ending inside, -1 5 5 5, 100.0",
        "crossing itself into a loop inside, -1 5 6 5 6 8 4 8 4 4 4 -1, 74.0 20.0 6.0",
        "in and out again, -1 2 5 2 5 8 -1 8, 70.0 30.0",
        "zigzag, -1 2 11 2 11 8 -1 8, 60.0 20.0 20.0",
    })
    void cutsASquare(String name, String along, String expected) {
        assertThat(areas(SQUARE, along)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "through the hole, -1 5 11 5, 48.0 48.0",
        "along the side of the hole, -1 6 11 6, 56.0 40.0",
        "into the hole and no further, -1 5 5 5, 96.0",
        "into the hole and out beside, 5 -1 5 5 11 5, 72.0 24.0",
        "round the hole, 3 3 7 3 7 7 3 7 3 3, 84.0 12.0",
    })
    void cutsASquareWithAHole(String name, String along, String expected) {
        assertThat(areas(WITH_HOLE, along)).isEqualTo(expected);
    }

    @Test
    void leavesAPartThatTheLineMissesWhole() {
        Outline two = new Outline(List.of(
                new Outline.Part(points(0, 0, 2, 0, 2, 2, 0, 2), List.of()),
                new Outline.Part(points(5, 0, 8, 0, 8, 3, 5, 3), List.of())));
        assertThat(areas(two, "1 -1 1 4")).isEqualTo("9.0 2.0 2.0");
    }

    @Test
    void piecesOfRandomGroundSumToTheWholeAndDoNotOverlap() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 60; round++) {
            Region ground = Region.of(Outline.of(randomPoints(random, 9))).minus(Region.of(WITH_HOLE));
            List<Point> drawn = randomPoints(random, 5);
            if (round % 2 == 0) {
                ground.outline().vertices().limit(2).forEach(drawn::add);
            }
            List<Region> pieces = Cut.of(ground, new Polyline(drawn));
            double sumM2 = pieces.stream().mapToDouble(Region::areaM2).sum();
            assertThat(sumM2).isEqualTo(ground.areaM2(), offset(Cut.AREA_SHARE * ground.areaM2()));
            assertThat(Region.union(pieces).areaM2())
                    .isEqualTo(ground.areaM2(), offset(Cut.AREA_SHARE * ground.areaM2()));
        }
    }

    private static List<Point> randomPoints(SplittableRandom random, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Point(random.nextDouble(-5, 20), random.nextDouble(-5, 20)))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "across, 4 -1 4 1, 4.0",
        "touching, 4 0 4 5, 4.0",
        "through its corner, 10 -1 10 1, 10.0",
        "twice, 2 -1 2 1 5 1 5 -1, 2.0 5.0",
        "at its end, 0 -1 0 1, ''",
        "along it, 3 0 7 0, ''",
        "past it, 0 3 9 3, ''",
    })
    void saysWhereALineIsCut(String name, String along, String expected) {
        assertThat(Cut.distancesM(line("0 0 10 0 10 8"), line(along)).stream()
                        .map(String::valueOf)
                        .collect(Collectors.joining(" ")))
                .isEqualTo(expected);
    }
}
