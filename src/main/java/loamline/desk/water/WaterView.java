package loamline.desk.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.account.Problem;
import loamline.desk.session.Derived;
import loamline.files.ClimateFile;
import loamline.files.Read;
import loamline.files.ReadingsFile;
import loamline.reference.SoilWater;
import loamline.reference.TurfCoefficients;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.water.cups.Concern;
import loamline.water.cups.Cup;
import loamline.water.cups.CupPlan;
import loamline.water.cups.CupPlanner;
import loamline.water.cups.CupTest;
import loamline.water.cups.Watering;
import loamline.water.need.LawnSoil;
import loamline.water.need.MonthClimate;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * All that is known of a yard's water. Immutable.
 *
 * @param water as mapped, ideal, no wind
 * @param options how it was computed
 * @param worthwhile the cup tests that something asks for
 * @param tested what the readings say, a test a table
 */
record WaterView(Water water, WaterOptions options, List<CupPlan> worthwhile, List<Tested> tested) {
    /** The opening of the usual cup, cm². */
    static final double USUAL_THROAT_CM2 = 107.1;

    /** Cells of a raster that is drawn again at every move; a larger yard gets larger cells. */
    private static final double MOST_CELLS = 400_000;

    WaterView {
        worthwhile = List.copyOf(worthwhile);
        tested = List.copyOf(tested);
    }

    /**
     * A table of readings and what it says.
     *
     * @param test empty if its valve is not in the yard, or no row can be read
     * @param problems with the table, then with the test
     */
    record Tested(Attachment table, Optional<CupTest> test, List<Problem> problems) {
        Tested {
            problems = List.copyOf(problems);
        }
    }

    static WaterView of(Yard yard, Optional<Derived.Of<WaterView>> before) {
        WaterOptions options = WaterOptions.USUAL.withCellM(cellM(yard));
        Water water = before.map(Derived.Of::value)
                .filter(view -> view.options().equals(options))
                .map(view -> view.water().after(yard))
                .orElseGet(() -> Water.of(yard, options));
        List<CupPlan> worthwhile = CupPlanner.worthwhile(yard, concerns(yard, water), USUAL_THROAT_CM2);
        Optional<Watering> watering = watering(yard);
        List<Tested> tested = yard.attached(Sort.READINGS).stream()
                .map(table -> tested(yard, table, watering))
                .toList();
        return new WaterView(water, options, worthwhile, tested);
    }

    private static double cellM(Yard yard) {
        double turfM2 = Zones.of(yard).stream().mapToDouble(Zone::netAreaM2).sum();
        return Math.max(WaterOptions.USUAL.cellM(), Math.ceil(100 * Math.sqrt(turfM2 / MOST_CELLS)) / 100);
    }

    private static List<Concern> concerns(Yard yard, Water water) {
        return Stream.concat(
                        water.gaps().stream().map(gap -> new Concern("the hole " + gap.id(), gap.ground())),
                        Concern.troubles(yard).stream())
                .toList();
    }

    private static Optional<Watering> watering(Yard yard) {
        List<Attachment> climates = yard.attached(Sort.CLIMATE);
        return climates.stream()
                .reduce((first, last) -> last)
                .flatMap(table -> ClimateFile.parse(table.text()).value())
                .map(months -> watering(yard, months));
    }

    /** A cool-season lawn on loam, until somebody says otherwise. */
    private static Watering watering(Yard yard, List<MonthClimate> months) {
        return Watering.of(
                yard,
                months,
                TurfCoefficients.published().get(0),
                SoilWater.of("loam").orElseThrow(),
                LawnSoil.USUAL_ROOT_DEPTH_MM,
                0);
    }

    private static Tested tested(Yard yard, Attachment table, Optional<Watering> watering) {
        Read<List<Cup>> read = ReadingsFile.parse(table.text(), yard.frame());
        Optional<CupTest> test = read.value()
                .filter(cups -> CupTest.valves(yard).contains(table.about()))
                .map(cups -> CupTest.of(yard, table.about(), cups, watering));
        List<Problem> problems = new ArrayList<>(read.problems());
        test.map(CupTest::problems).ifPresent(problems::addAll);
        return new Tested(table, test, problems);
    }

    /** The test of a table. */
    Optional<Tested> tested(Attachment table) {
        return tested.stream().filter(each -> each.table().equals(table)).findFirst();
    }
}
