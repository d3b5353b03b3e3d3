package loamline.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** Random yards of 40 m by 30 m, by seed. */
enum Scenes {
    /** Everything on a 5 m lattice: sides in line, corners that touch, fences that meet, cross and share ends. */
    LATTICE {
        @Override
        Yards.Scene draw(Random random) {
            List<Region> solids = new ArrayList<>();
            for (int i = random.nextInt(3); i >= 0; i--) {
                solids.add(Region.of(Outline.of(List.of(knot(random), knot(random), knot(random)))));
            }
            for (int i = random.nextInt(4); i > 0; i--) {
                Point a = knot(random);
                double east = Math.min(40, a.x() + 5 * (1 + random.nextInt(2)));
                double north = Math.min(30, a.y() + 5 * (1 + random.nextInt(2)));
                solids.add(Yards.solid(a.x(), a.y(), east, a.y(), east, north, a.x(), north));
            }
            List<Polyline> fences = IntStream.range(0, 1 + random.nextInt(5))
                    .mapToObj(i -> new Polyline(List.of(knot(random), knot(random), knot(random))))
                    .toList();
            return new Yards.Scene(solids, fences, yard(random));
        }

        private Point knot(Random random) {
            return new Point(5 * random.nextInt(9), 5 * random.nextInt(7));
        }
    },

    /** Houses at any angle, some overlapping, with fences from their walls to the boundary and to each other. */
    DRAWN {
        @Override
        Yards.Scene draw(Random random) {
            List<List<Point>> houses = IntStream.range(0, 1 + random.nextInt(6))
                    .mapToObj(i -> house(random))
                    .toList();
            List<Polyline> fences = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                Point from = onWall(houses, random);
                Point to = switch (random.nextInt(4)) {
                    case 0 -> new Point(from.x(), 30);
                    case 1 -> onWall(houses, random);
                    case 2 ->
                        fences.isEmpty()
                                ? anywhere(random)
                                : fences.get(0)
                                        .at(random.nextDouble() * fences.get(0).lengthM());
                    default -> anywhere(random);
                };
                fences.add(new Polyline(List.of(from, anywhere(random), to)));
            }
            List<Region> solids =
                    houses.stream().map(house -> Region.of(Outline.of(house))).toList();
            return new Yards.Scene(solids, fences, yard(random));
        }

        private List<Point> house(Random random) {
            Point middle = anywhere(random);
            double turn = random.nextDouble() * Math.PI;
            double a = 1 + 6 * random.nextDouble();
            double b = 1 + 6 * random.nextDouble();
            return IntStream.range(0, 4)
                    .mapToObj(i -> {
                        double u = i == 0 || i == 3 ? a : -a;
                        double v = i < 2 ? b : -b;
                        return middle.plus(
                                u * Math.cos(turn) - v * Math.sin(turn), u * Math.sin(turn) + v * Math.cos(turn));
                    })
                    .toList();
        }

        private Point onWall(List<List<Point>> houses, Random random) {
            List<Point> house = houses.get(random.nextInt(houses.size()));
            int side = random.nextInt(4);
            return house.get(side).towards(house.get((side + 1) % 4), random.nextDouble());
        }
    };

    abstract Yards.Scene draw(Random random);

    Yards.Scene of(long seed) {
        return draw(new Random(seed));
    }

    /** Stops anywhere in the yard, on open ground or not. */
    static List<Point> stops(int count, long seed) {
        Random random = new Random(seed);
        return IntStream.range(0, count).mapToObj(i -> anywhere(random)).toList();
    }

    private static Point anywhere(Random random) {
        return new Point(40 * random.nextDouble(), 30 * random.nextDouble());
    }

    private static Optional<Region> yard(Random random) {
        return random.nextInt(4) == 0 ? Optional.empty() : Optional.of(Yards.solid(0, 0, 40, 0, 40, 30, 0, 30));
    }
}
