package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.account.Problem;
import loamline.geometry.Point;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.water.cups.Cup;
import org.junit.jupiter.api.Test;

class ReadingsFileTest {
    private static final Frame HERE = Frame.at(new LonLat(-89.05, 40.35));

    private static Read<List<Cup>> read(Frame frame, String... lines) {
        return ReadingsFile.parse(String.join("\n", lines), frame);
    }

    private static List<String> told(Read<List<Cup>> read) {
        return read.problems().stream()
                .map(problem -> problem.line("f"))
                .map(ReadingsFileTest::start)
                .toList();
    }

    private static String start(String line) {
        return line.split(" ", 4)[1] + " " + line.split(" ", 4)[2];
    }

    @Test
    void readsMetresWhateverSeparatorAndDecimalMark() {
        Read<List<Cup>> read =
                read(Frame.local(), "Cup;X_m;Y_m;ml;throat_cm2;minutes", "a;1,5;2;25;107,1;10", "b;3;2;20,5;107,1;10");
        assertThat(read.problems()).isEmpty();
        assertThat(read.value().orElseThrow()).extracting(Cup::at).containsExactly(new Point(1.5, 2), new Point(3, 2));
        assertThat(read.value().orElseThrow().get(0).rateMmH()).isCloseTo(14.01, within(0.005));
        assertThat(read.value().orElseThrow().get(1).line()).hasValue(3);
    }

    @Test
    void readsTextPastedFromASpreadsheet() {
        assertThat(read(Frame.local(), "cup\tx_m\ty_m\tml\tthroat_cm2\tminutes", "1\t1\t1\t20\t100\t10")
                        .value())
                .isPresent();
    }

    @Test
    void readsPlacesOnTheEarth() {
        Read<List<Cup>> read = read(HERE, "cup,lon,lat,ml,throat_cm2,minutes", "1,-89.05,40.35001,20,100,10");
        Point at = read.value().orElseThrow().get(0).at();
        assertThat(at.x()).isCloseTo(0, within(1e-6));
        assertThat(at.y()).isCloseTo(1.1105, within(0.001));
    }

    @Test
    void listsEveryBadRowWithItsLineAndKeepsTheGoodOnes() {
        Read<List<Cup>> read = read(
                Frame.local(),
                "cup,x_m,y_m,ml,throat_cm2,minutes,who",
                "1,1,1,dry,100,10,me",
                "2,1,1,,100,10,me",
                "3,1,1,-4,100,10,me",
                "4,,1,20,100,10,me",
                "5,1,1,20,0,0,me",
                ",1,1,20,100,10,me");
        assertThat(told(read))
                .contains(
                        "f:2 CSV_CELL_BAD",
                        "f:3 CSV_CELL_EMPTY",
                        "f:4 CSV_CELL_BAD",
                        "f:5 READING_NO_PLACE",
                        "f:6 READING_ZERO",
                        "f:1 CSV_COLUMN_UNKNOWN");
        assertThat(read.problems().stream().filter(Problem::isError)).hasSize(6);
        assertThat(read.value().orElseThrow())
                .singleElement()
                .satisfies(cup -> assertThat(cup.line()).hasValue(7));
    }

    @Test
    void refusesDegreesForAYardWithoutAPlaceAndCupsFarAway() {
        assertThat(told(read(Frame.local(), "cup,lon,lat,ml,throat_cm2,minutes", "1,-89,40,20,100,10")))
                .containsExactly("f:2 READING_NO_FRAME");
        assertThat(told(read(HERE, "cup,lon,lat,ml,throat_cm2,minutes", "1,40.35,-89.05,20,100,10")))
                .containsExactly("f:2 READING_FAR_AWAY");
    }

    @Test
    void aListWithoutReadingsIsAnError() {
        assertThat(told(read(HERE, "cup,x_m,y_m,ml,throat_cm2,minutes"))).containsExactly("f READINGS_NONE");
        assertThat(told(read(HERE, "cup,x_m,y_m", "1,1,1"))).contains("f:1 CSV_COLUMN_MISSING");
    }
}
