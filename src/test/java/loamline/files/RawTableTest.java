package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class RawTableTest {
    private static final RawTable TABLE = RawTable.of("cup;ml\n1;12,5\n\n2;\n");

    @Test
    void textOfAnySeparatorIsCutIntoCells() {
        assertThat(TABLE.header()).containsExactly("cup", "ml");
        assertThat(TABLE.rows()).containsExactly(List.of("1", "12,5"), List.of("2", ""));
    }

    @Test
    void whatIsWrittenReadsTheSame() {
        assertThat(TABLE.text()).isEqualTo("cup,ml\n1,\"12,5\"\n2,\n");
        assertThat(RawTable.of(TABLE.text())).isEqualTo(TABLE);
    }

    @Test
    void aCellBeyondTheLastRowMakesRows() {
        assertThat(TABLE.with(3, 1, " 7 ").rows())
                .containsExactly(List.of("1", "12,5"), List.of("2", ""), List.of("", ""), List.of("", "7"));
        assertThat(TABLE.with(3, 1, "7").with(3, 1, "")).isEqualTo(TABLE);
    }

    @Test
    void aBlockIsPastedAsFarAsThereAreColumns() {
        assertThat(TABLE.pasted(1, 1, RawTable.block("20\tx\r\n21")).rows())
                .containsExactly(List.of("1", "12,5"), List.of("2", "20"), List.of("", "21"));
    }

    @Test
    void aRowGoesOut() {
        assertThat(TABLE.without(0).rows()).containsExactly(List.of("2", ""));
        assertThat(TABLE.without(9)).isEqualTo(TABLE);
    }

    @Test
    void anEmptyTextIsAnEmptyTable() {
        assertThat(RawTable.of("")).isEqualTo(RawTable.empty(List.of()));
        assertThat(RawTable.of("").text()).isNotNull();
    }

    @Test
    void rowsWiderThanTheHeaderKeepTheirCells() {
        assertThat(RawTable.of("a;b\n1;2;3\n").rows()).containsExactly(List.of("1", "2", "3"));
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        assertThat(RawTable.text(Path.of("no-such.csv")).problems())
                .extracting(problem -> problem.code())
                .containsExactly("FILE_NOT_FOUND");
    }
}
