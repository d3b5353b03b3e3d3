package loamline.sun;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.reference.CrownSeason;
import loamline.yard.Barrier;
import loamline.yard.Building;
import loamline.yard.Feature;
import loamline.yard.Tree;
import loamline.yard.Yard;

/**
 * What casts shadows in a yard on a day: buildings up to their walls' height with eaves as a plate there, fences and
 * walls between their gates, trees as trunk and crown.
 *
 * @param casters in the order of the features
 * @param problems trees without a size, which cast no shadow
 */
record Casters(List<Caster> casters, List<Problem> problems) {
    /** Light through a fence that is not solid, such as mesh or pickets: common practice, no source. */
    static final double OPEN_FENCE_LIGHT = 0.5;

    /** Where a crown begins if nobody said, as a share of the tree's height. */
    private static final double USUAL_BASE_SHARE = 0.25;

    Casters {
        casters = List.copyOf(casters);
        problems = List.copyOf(problems);
    }

    /** @param latitudeDeg tells north from south, where seasons differ */
    static Casters of(Yard yard, LocalDate date, double latitudeDeg) {
        List<Caster> casters = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        CrownSeason season = CrownSeason.usual();
        boolean inLeaf = season.inLeaf(date, latitudeDeg);
        for (Feature feature : yard.features()) {
            if (feature instanceof Building building) {
                building(building).forEach(casters::add);
            } else if (feature instanceof Barrier barrier) {
                barrier(barrier).forEach(casters::add);
            } else if (feature instanceof Tree tree && hasSize(tree)) {
                double light = inLeaf || tree.evergreen() ? clamped(tree.transmission(), 1) : season.bareLight();
                tree(tree, light).forEach(casters::add);
            } else if (feature instanceof Tree) {
                problems.add(Problem.warning(
                        "TREE_WITHOUT_SIZE",
                        Where.feature(yard.indexOf(feature)),
                        "this tree casts no shadow: give “heightM” and “crownRadiusM”"));
            }
        }
        return new Casters(casters, problems);
    }

    /** A value that a file may give out of range, which the check of the yard tells. */
    private static double clamped(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    private static boolean hasSize(Tree tree) {
        return tree.heightM().orElse(0) > 0 && tree.crownRadiusM().orElse(0) > 0;
    }

    private static Stream<Caster> building(Building building) {
        Region walls = Region.of(building.outline());
        Stream<Caster> body = upright(walls, 0, building.heightM());
        return building.eaveM() > 0
                ? Stream.concat(body, upright(walls.buffer(building.eaveM()), building.heightM(), building.heightM()))
                : body;
    }

    private static Stream<Caster> upright(Region footprint, double bottomM, double topM) {
        return topM > 0
                ? footprint.convexParts().stream().map(part -> new Caster.Prism(part, bottomM, topM, 0))
                : Stream.empty();
    }

    private static Stream<Caster> barrier(Barrier barrier) {
        double light = barrier.solid() ? 0 : OPEN_FENCE_LIGHT;
        return barrier.heightM() > 0
                ? barrier.closedStretches().stream()
                        .flatMap(Casters::sides)
                        .map(side -> new Caster.Prism(side, 0, barrier.heightM(), light))
                : Stream.empty();
    }

    private static Stream<List<Point>> sides(Polyline line) {
        List<Point> points = line.points();
        return Stream.iterate(1, i -> i < points.size(), i -> i + 1)
                .map(i -> List.of(points.get(i - 1), points.get(i)))
                .filter(side -> !side.get(0).equals(side.get(1)));
    }

    private static Stream<Caster> tree(Tree tree, double light) {
        double topM = tree.heightM().orElseThrow();
        double baseM = clamped(tree.baseM().orElse(USUAL_BASE_SHARE * topM), topM);
        double radiusM = tree.crownRadiusM().orElseThrow();
        Caster crown = tree.cylinder()
                ? new Caster.Cylinder(tree.at(), radiusM, baseM, topM, light)
                : new Caster.Ellipsoid(tree.at(), radiusM, baseM, topM, light);
        return tree.trunkRadiusM() > 0 && baseM > 0
                ? Stream.of(new Caster.Cylinder(tree.at(), tree.trunkRadiusM(), 0, baseM, 0), crown)
                : Stream.of(crown);
    }
}
