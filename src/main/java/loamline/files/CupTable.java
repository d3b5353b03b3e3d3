package loamline.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.account.Problem;
import loamline.water.cups.Cup;
import loamline.water.cups.CupTest;
import loamline.water.cups.Watering;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;

/**
 * A table of readings that a yard carries, and what it says.
 *
 * @param test empty if its valve is not in the yard, or no row can be read
 * @param problems with the table, then with the test
 */
public record CupTable(Attachment table, Optional<CupTest> test, List<Problem> problems) {
    public CupTable {
        problems = List.copyOf(problems);
    }

    /** All that a yard carries; with run times where it carries a climate too. */
    public static List<CupTable> all(Yard yard) {
        Optional<Watering> watering = watering(yard);
        return yard.attached(Sort.READINGS).stream()
                .map(table -> of(yard, table, watering))
                .toList();
    }

    private static CupTable of(Yard yard, Attachment table, Optional<Watering> watering) {
        Read<List<Cup>> read = ReadingsFile.parse(table.text(), yard.frame());
        Optional<CupTest> test = read.value()
                .filter(cups -> CupTest.valves(yard).contains(table.about()))
                .map(cups -> CupTest.of(yard, table.about(), cups, watering));
        List<Problem> problems = new ArrayList<>(read.problems());
        test.map(CupTest::problems).ifPresent(problems::addAll);
        return new CupTable(table, test, problems);
    }

    private static Optional<Watering> watering(Yard yard) {
        return yard.attached(Sort.CLIMATE).stream()
                .reduce((first, last) -> last)
                .flatMap(table -> ClimateFile.parse(table.text()).value())
                .map(months -> Watering.usual(yard, months));
    }
}
