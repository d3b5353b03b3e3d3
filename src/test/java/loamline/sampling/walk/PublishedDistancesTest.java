package loamline.sampling.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against distances computed by other programs; see SOURCE.md beside them. */
class PublishedDistancesTest {
    /** The digits of the table, m. */
    private static final double TOLERANCE_M = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"yard-12", "yard-40"})
    void allPairsOfAYardHaveTheirShortestDistance(String yard) {
        double[][] expected = Yards.table(yard + "/distances.txt");
        Ways ways = Yards.PUBLISHED.space().ways(Yards.places(yard + "/points.txt"));
        assertThat(ways.size()).isEqualTo(expected.length);
        for (int i = 0; i < expected.length; i++) {
            for (int j = 0; j < expected.length; j++) {
                assertThat(ways.distanceM(i, j)).as("%d to %d", i, j).isCloseTo(expected[i][j], within(TOLERANCE_M));
            }
        }
    }
}
