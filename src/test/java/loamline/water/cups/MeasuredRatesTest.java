package loamline.water.cups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.Grid;
import org.junit.jupiter.api.Test;

class MeasuredRatesTest {
    private static final Region LAWN = Region.of(new Box(0, 0, 10, 10).outline());

    private static double at(MeasuredRates rates, double x, double y) {
        Grid grid = rates.mmH();
        int column = (int) ((x - grid.spec().originX()) / grid.spec().cellM());
        int row = (int) ((y - grid.spec().originY()) / grid.spec().cellM());
        return grid.at(row * grid.spec().columns() + column);
    }

    private static MeasuredRates of(List<Cup> cups) {
        return MeasuredRates.of(cups, List.copyOf(FourHeads.heads().values()), LAWN)
                .orElseThrow();
    }

    @Test
    void followsTheModelBetweenCupsThatAgreeWithIt() {
        MeasuredRates rates = of(FourHeads.readings(head -> head));
        double expected = FourHeads.heads().values().stream()
                .mapToDouble(head -> head.rateMmH(4.05, 6.05))
                .sum();
        assertThat(at(rates, 4.05, 6.05)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void takesTheReadingAtItsCup() {
        List<Cup> cups = FourHeads.readings(head -> head.withOutput(0.5));
        Cup cup = cups.get(12);
        assertThat(at(of(cups), cup.at().x(), cup.at().y())).isCloseTo(cup.rateMmH(), within(0.05 * cup.rateMmH()));
    }

    @Test
    void saysNothingFartherThanAReadingCarriesNorOffTheTurf() {
        List<Cup> southWest = FourHeads.readings(head -> head).stream()
                .filter(cup -> cup.at().x() < 6 && cup.at().y() < 6)
                .toList();
        MeasuredRates rates = of(southWest);
        assertThat(rates.reachM()).isCloseTo(2, within(1e-9));
        assertThat(at(rates, 6.9, 1)).isNotNaN();
        assertThat(at(rates, 6.75, 6.75)).isNaN();
        assertThat(at(rates, 1, -0.5)).isNaN();
    }

    @Test
    void needsThreeCupsInMoreThanOnePlace() {
        List<Cup> two = FourHeads.caught(3, 4);
        Cup cup = two.get(0);
        assertThat(MeasuredRates.of(two, List.of(), LAWN)).isEmpty();
        assertThat(MeasuredRates.of(List.of(cup, cup, cup), List.of(), LAWN)).isEmpty();
    }

    @Test
    void cupsKilometresApartDoNotCostMemory() {
        List<Cup> cups = List.of(
                FourHeads.cup(0, new Point(0, 0), 1),
                FourHeads.cup(1, new Point(1, 0), 1),
                FourHeads.cup(2, new Point(40_000, 40_000), 1));
        assertThat(MeasuredRates.of(cups, List.of(), LAWN)
                        .orElseThrow()
                        .mmH()
                        .spec()
                        .size())
                .isLessThan(300_000);
    }
}
