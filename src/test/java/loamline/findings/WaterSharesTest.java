package loamline.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.account.Account;
import loamline.files.LogFile;
import loamline.geometry.Box;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.Grid;
import loamline.sampling.CorePlan;
import loamline.units.UnitSystem;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.water.cups.FourHeads;
import loamline.yard.Edits;
import loamline.yard.Extras;
import loamline.yard.Probe;
import loamline.yard.Trouble;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;

/** A lawn of 10 × 10 m under four heads; cups in the south-west quarter only, all dry. */
class WaterSharesTest {
    private static final Yard YARD = FourHeads.yard();
    private static final Water MAPPED = Water.of(YARD, new WaterOptions(0.25, false, 0, 0, 0));
    private static final Point DRY = new Point(2, 2);
    private static final Point FAR = new Point(8.1, 8.1);
    private static final Region QUARTER = Region.of(new Box(1, 1, 3, 3).outline());

    /** Between dry cups the shape of the heads still shows a little. */
    private static final double DRY_SHARE = 0.02;

    private static CupTest test(double ml) {
        List<Cup> cups = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            Point at = new Point(1 + i % 3, 1 + i / 3);
            cups.add(new Cup(Integer.toString(i), at, ml, 100, 20, OptionalInt.empty()));
        }
        return CupTest.of(YARD, FourHeads.VALVE, cups, Optional.empty());
    }

    private static WaterShares shares(CupTest... tests) {
        return WaterShares.of(Optional.of(MAPPED), List.of(tests));
    }

    @Test
    void withoutCupsItIsTheRateAsMappedOverItsMean() {
        Grid rate = MAPPED.rateMmH().orElseThrow();
        double mean = java.util.Arrays.stream(rate.values())
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElseThrow();
        assertThat(shares().at(FAR).orElseThrow())
                .isCloseTo(rate.at(rate.spec().indexOf(FAR).orElseThrow()) / mean, within(1e-12));
        assertThat(shares().isMeasuredAt(DRY)).isFalse();
    }

    @Test
    void cupsBeatTheModelWhereTheyCarryAndNowhereElse() {
        WaterShares dry = shares(test(0));
        assertThat(dry.at(DRY).orElseThrow()).isLessThan(DRY_SHARE);
        assertThat(dry.isMeasuredAt(DRY)).isTrue();
        assertThat(dry.isMeasuredAt(FAR)).isFalse();
        assertThat(dry.at(FAR).orElseThrow()).isGreaterThan(shares().at(FAR).orElseThrow());
        assertThat(dry.isMeasuredOver(QUARTER)).isTrue();
        assertThat(dry.over(QUARTER).orElseThrow()).isLessThan(DRY_SHARE);
        assertThat(dry.isMeasuredOver(Region.of(new Box(0, 0, 10, 10).outline())))
                .isFalse();
    }

    @Test
    void ofTwoTestsOfAValveTheLaterCounts() {
        assertThat(shares(test(0), test(30)).at(DRY)).isEqualTo(shares(test(30)).at(DRY));
    }

    @Test
    void offTheTurfAndWithoutHeadsNothingIsKnown() {
        assertThat(shares(test(0)).at(new Point(-3, 0))).isEmpty();
        assertThat(WaterShares.of(Optional.empty(), List.of(test(0))).at(DRY)).isEmpty();
    }

    /** The heads as mapped reach the spot well; only the cups know that one of them does not run. */
    @Test
    void aHoleThatOnlyCupsKnowIsNamedAndTheAccountSaysSo() {
        Yard yard = Edits.add(YARD, new Trouble("t", "dry", OptionalInt.of(3), QUARTER.outline(), Extras.NONE));
        String log =
                "core,moisture,quality,root_cm\nA1,dry,3,4\nA2,dry,3,5\nA3,moist,7,9\nA4,moist,7,10\nA5,moist,8,9\n";
        CoreLog read = CoreLog.of(plan(), LogFile.parse(log).value().orElseThrow())
                .log()
                .orElseThrow();
        Surroundings known =
                new Surroundings(Optional.of(MAPPED), List.of(test(0)), Optional.empty(), Optional.empty());
        Findings found = Findings.of(yard, read, known);
        AreaFinding area = found.areas().get(0);
        assertThat(area.likely().orElseThrow().cause().id()).isEqualTo("hole");
        assertThat(area.words(UnitSystem.US)).contains("of the lawn's mean rate, as cups caught it");
        assertThat(water(found, 0).formula()).contains("rate between the cups");
        assertThat(water(found, 0).note()).startsWith("Measured: cups of valve lawn");
        assertThat(water(found, 4).note()).startsWith("Modelled, without wind");
        Surroundings unread = new Surroundings(Optional.of(MAPPED), List.of(), Optional.empty(), Optional.empty());
        assertThat(Findings.of(yard, read, unread)
                        .areas()
                        .get(0)
                        .likely()
                        .map(c -> c.cause().id()))
                .isNotEqualTo(Optional.of("hole"));
    }

    private static Account water(Findings found, int core) {
        return Optional.ofNullable(found.accounts().get("/cores/" + core + "/waterShare"))
                .orElseThrow();
    }

    private static CorePlan plan() {
        List<Point> at = List.of(DRY, new Point(2.6, 1.6), FAR, new Point(8, 6), new Point(6, 8));
        List<CorePlan.PlannedCore> cores = new ArrayList<>();
        at.forEach(p -> cores.add(new CorePlan.PlannedCore(
                "A" + (cores.size() + 1), "A", "Lawn", p, 1, Optional.empty(), OptionalInt.empty())));
        OptionalDouble none = OptionalDouble.empty();
        CorePlan.Composite bag =
                new CorePlan.Composite("A", List.of("Lawn"), 5, 100, 20, none, none, List.of(), Probe.USUAL, 0);
        return new CorePlan(1, List.of(bag), cores, List.of(), List.of(), List.of(), Map.of());
    }
}
