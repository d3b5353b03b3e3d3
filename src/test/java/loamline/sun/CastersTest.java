package loamline.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import loamline.account.Problem;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Barrier;
import loamline.yard.Building;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Tree;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.Test;

class CastersTest {
    private static final LocalDate JULY = LocalDate.of(2027, 7, 1);
    private static final LocalDate JANUARY = LocalDate.of(2027, 1, 1);
    private static final double NORTH = 40;

    private static Casters casters(LocalDate date, double latitude, Feature... features) {
        return Casters.of(YardFixtures.yard(features), date, latitude);
    }

    private static List<Caster> july(Feature... features) {
        Casters casters = casters(JULY, NORTH, features);
        assertThat(casters.problems()).isEmpty();
        return casters.casters();
    }

    private static Tree tree(boolean evergreen, double transmission, boolean cylinder, double baseM) {
        return new Tree(
                "t",
                OptionalDouble.of(3),
                OptionalDouble.of(8),
                0.2,
                evergreen,
                transmission,
                baseM < 0 ? OptionalDouble.empty() : OptionalDouble.of(baseM),
                cylinder,
                new Point(0, 0),
                Extras.NONE);
    }

    private static Building house(double eaveM, double... xy) {
        return new Building("house", "", 3, eaveM, Outline.of(xy), Extras.NONE);
    }

    private static double areaM2(List<Caster> casters) {
        return casters.stream()
                .map(caster -> Region.of(Outline.of(((Caster.Prism) caster).corners())))
                .mapToDouble(Region::areaM2)
                .sum();
    }

    @Test
    void aBuildingStandsAsConvexParts() {
        List<Caster> walls = july(house(0, 0, 0, 10, 0, 10, 4, 6, 4, 6, 8, 0, 8));
        assertThat(walls).hasSizeGreaterThan(1).allMatch(c -> c.bottomM() == 0 && c.topM() == 3 && c.light() == 0);
        assertThat(areaM2(walls)).isCloseTo(64, within(1e-9));
        assertThat(july(house(0, 0, 0, 10, 0, 10, 4, 0, 4))).hasSize(1);
    }

    @Test
    void eavesAreAPlateOverTheWalls() {
        List<Caster> casters = july(house(0.5, 0, 0, 10, 0, 10, 4, 0, 4));
        List<Caster> plate = casters.stream().filter(c -> c.bottomM() == 3).toList();
        assertThat(plate).allMatch(c -> c.topM() == 3);
        // By hand: 11 · 5 with round corners; a buffer's arcs lie inside by at most 0.2 %.
        assertThat(areaM2(plate)).isCloseTo(55 - 0.25 * (4 - Math.PI), within(0.002));
    }

    @Test
    void aFenceIsOpenAtItsGatesAndLetsLightPassUnlessSolid() {
        Polyline line = new Polyline(List.of(new Point(0, 0), new Point(10, 0), new Point(10, 5)));
        List<Barrier.Opening> gates = List.of(new Barrier.Opening(5, 1));
        List<Caster> solid = july(new Barrier("f", Kind.FENCE, 1.8, gates, true, line, Extras.NONE));
        assertThat(solid)
                .extracting(c -> ((Caster.Prism) c).corners())
                .containsExactly(
                        List.of(new Point(0, 0), new Point(4.5, 0)),
                        List.of(new Point(5.5, 0), new Point(10, 0)),
                        List.of(new Point(10, 0), new Point(10, 5)));
        assertThat(solid).allMatch(c -> c.light() == 0 && c.topM() == 1.8);
        assertThat(july(new Barrier("f", Kind.FENCE, 1.8, List.of(), false, line, Extras.NONE)))
                .allMatch(c -> c.light() == Casters.OPEN_FENCE_LIGHT);
        assertThat(july(new Barrier("f", Kind.WALL, 0, List.of(), true, line, Extras.NONE)))
                .isEmpty();
    }

    @Test
    void aTreeIsATrunkUnderACrown() {
        assertThat(july(tree(false, 0.1, false, -1)))
                .containsExactly(
                        new Caster.Cylinder(new Point(0, 0), 0.2, 0, 2, 0),
                        new Caster.Ellipsoid(new Point(0, 0), 3, 2, 8, 0.1));
        assertThat(july(tree(false, 0.1, true, 0))).containsExactly(new Caster.Cylinder(new Point(0, 0), 3, 0, 8, 0.1));
    }

    @Test
    void crownsAreBareInWinterAndSouthernWintersAreInJuly() {
        assertThat(crownLight(JULY, NORTH, false)).isEqualTo(0.1);
        assertThat(crownLight(JANUARY, NORTH, false)).isEqualTo(0.6);
        assertThat(crownLight(JANUARY, NORTH, true)).isEqualTo(0.1);
        assertThat(crownLight(JULY, -NORTH, false)).isEqualTo(0.6);
        assertThat(crownLight(JANUARY, -NORTH, false)).isEqualTo(0.1);
    }

    private static double crownLight(LocalDate date, double latitude, boolean evergreen) {
        return casters(date, latitude, tree(evergreen, 0.1, true, 0))
                .casters()
                .get(0)
                .light();
    }

    @Test
    void aTreeWithoutASizeCastsNoShadowAndIsTold() {
        Tree unknown = new Tree(
                "t",
                OptionalDouble.of(3),
                OptionalDouble.empty(),
                0.2,
                false,
                0.1,
                OptionalDouble.empty(),
                false,
                new Point(0, 0),
                Extras.NONE);
        Casters casters = casters(JULY, NORTH, unknown);
        assertThat(casters.casters()).isEmpty();
        assertThat(casters.problems()).extracting(Problem::code).containsExactly("TREE_WITHOUT_SIZE");
    }

    @Test
    void valuesOutOfRangeAreBroughtIntoIt() {
        List<Caster> casters = july(tree(false, 7, false, 12));
        assertThat(casters.get(1).bottomM()).isEqualTo(8);
        assertThat(casters.get(1).light()).isEqualTo(1);
    }
}
