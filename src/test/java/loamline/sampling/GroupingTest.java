package loamline.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.geometry.Point;
import org.junit.jupiter.api.Test;

class GroupingTest {
    private static ZoneTraits zone(String name, double areaM2, double trouble, String grass, String bag, double x) {
        return new ZoneTraits(
                name,
                areaM2,
                Double.isNaN(trouble) ? OptionalDouble.empty() : OptionalDouble.of(trouble),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(grass).filter(g -> !g.isEmpty()),
                Optional.of(bag).filter(b -> !b.isEmpty()),
                new Point(x, 0));
    }

    private static List<List<String>> bags(Grouping grouping) {
        return grouping.groups().stream().map(Grouping.Bag::zones).toList();
    }

    @Test
    void theLeastUnlikeZonesShareABag() {
        Grouping grouping = Grouping.of(
                List.of(
                        zone("front", 100, 0.1, "", "", 0),
                        zone("back", 100, 0.8, "", "", 1),
                        zone("side", 100, 0.2, "", "", 2)),
                OptionalInt.of(2));
        assertThat(bags(grouping)).containsExactly(List.of("front", "side"), List.of("back"));
    }

    @Test
    void theCostOfAMergeIsItsShareOfAllDifferences() {
        // trouble 0, 0, 1 with equal areas: joining the equal ones costs nothing, joining all costs everything
        Grouping grouping = Grouping.of(
                List.of(zone("a", 50, 0, "", "", 0), zone("b", 50, 0, "", "", 9), zone("c", 50, 1, "", "", 1)),
                OptionalInt.of(1));
        assertThat(grouping.merges()).hasSize(2);
        assertThat(grouping.merges().get(0).cost()).isCloseTo(0, within(1e-12));
        assertThat(grouping.merges().get(1).cost()).isCloseTo(1, within(1e-12));
        assertThat(grouping.merges().get(1).why()).isEqualTo("They differ most in trouble (0 against 1).");
    }

    @Test
    void allCostsTogetherAreAllDifferences() {
        Grouping grouping = Grouping.of(
                List.of(
                        zone("a", 10, 0.3, "fescue", "", 0),
                        zone("b", 70, 0.9, "bluegrass", "", 9),
                        zone("c", 35, 0.1, "fescue", "", 1),
                        zone("d", 20, 0.5, "rye", "", 4)),
                OptionalInt.of(1));
        double total =
                grouping.merges().stream().mapToDouble(CorePlan.Merge::cost).sum();
        assertThat(total).isCloseTo(1, within(1e-12));
    }

    @Test
    void withoutDifferencesTheNearestJoin() {
        Grouping grouping = Grouping.of(
                List.of(
                        zone("a", 50, Double.NaN, "", "", 0),
                        zone("b", 50, Double.NaN, "", "", 30),
                        zone("c", 50, Double.NaN, "", "", 35)),
                OptionalInt.of(2));
        assertThat(bags(grouping)).containsExactly(List.of("a"), List.of("b", "c"));
        assertThat(grouping.merges().get(0).why()).contains("Nothing on record");
    }

    @Test
    void zonesBoundToABagStayInIt() {
        Grouping grouping = Grouping.of(
                List.of(zone("a", 50, 0.1, "", "A", 0), zone("b", 50, 0.1, "", "B", 1), zone("c", 50, 0.9, "", "A", 2)),
                OptionalInt.empty());
        assertThat(bags(grouping)).containsExactly(List.of("a", "c"), List.of("b"));
        assertThat(grouping.merges()).isEmpty();
    }

    @Test
    void moreBoundBagsThanKitsIsSaid() {
        Grouping grouping =
                Grouping.of(List.of(zone("a", 50, 0.1, "", "A", 0), zone("b", 50, 0.1, "", "B", 1)), OptionalInt.of(1));
        assertThat(bags(grouping)).hasSize(2);
        assertThat(grouping.problems()).extracting(p -> p.code()).containsExactly("KITS_TOO_FEW");
    }

    @Test
    void oneZoneIsOneBag() {
        assertThat(bags(Grouping.of(List.of(zone("a", 50, 0.1, "", "", 0)), OptionalInt.of(3))))
                .containsExactly(List.of("a"));
        assertThat(bags(Grouping.of(List.of(), OptionalInt.of(3)))).isEmpty();
    }
}
