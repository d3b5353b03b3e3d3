package loamline.desk.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.files.RawTable;
import loamline.place.Frame;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TablesModelTest {
    private static final TableKind KIND = new TableKind(
            Sort.READINGS,
            "cup readings",
            "valve",
            List.of("cup", "ml"),
            table -> table.text().contains("x")
                    ? List.of(Problem.error("CSV_CELL_BAD", Where.line(2), "ml should be a number"))
                    : List.of());

    private final Session session = Session.resting(Yard.empty("yard", Frame.local()), AtOnce.work());
    private final TablesModel model = new TablesModel(session, KIND);

    private List<Attachment> attached() {
        return session.history().get().now().attached(Sort.READINGS);
    }

    @Test
    void aFileIsKeptWithTheYardLetterByLetter(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("cups.csv"), "cup;ml\n1;12,5\n");
        model.bringIn(file, "2");
        assertThat(attached()).containsExactly(Attachment.of(Sort.READINGS, "cups.csv", "2", "cup;ml\n1;12,5\n"));
        assertThat(model.open().get()).contains(attached().get(0));
        session.undo();
        assertThat(attached()).isEmpty();
        assertThat(model.open().get()).isEmpty();
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        model.bringIn(Path.of("no-such.csv"), "");
        assertThat(model.said().get()).startsWith("no-such.csv is not there");
        assertThat(attached()).isEmpty();
    }

    @Test
    void typingIsAnEditThatUndoes() {
        model.begin("1");
        model.change(RawTable.of(model.open().get().orElseThrow().text()).with(0, 1, "7"));
        assertThat(attached()).extracting(Attachment::text).containsExactly("cup,ml\n,7\n");
        session.undo();
        assertThat(attached()).extracting(Attachment::text).containsExactly("cup,ml\n");
        assertThat(model.open().get().orElseThrow().text()).isEqualTo("cup,ml\n");
    }

    @Test
    void rowsWithoutAHeaderArePastedUnderTheUsualOne() {
        model.paste("1\t20\n2\t21\n", "");
        model.paste("ml\tcup\n20\t1\n", "");
        assertThat(attached()).extracting(Attachment::text).containsExactly("cup,ml\n1,20\n2,21\n", "ml,cup\n20,1\n");
        assertThat(attached()).extracting(Attachment::name).containsExactly("pasted", "pasted-2");
    }

    @Test
    void whatATableIsAboutCanBeChangedAndTheTableTakenOut() {
        model.begin("1");
        model.begin("1");
        model.tellAbout("3");
        assertThat(attached()).extracting(Attachment::about).containsExactly("1", "3");
        model.remove();
        assertThat(attached()).extracting(Attachment::name).containsExactly("cup-readings");
        assertThat(model.open().get()).contains(attached().get(0));
    }

    @Test
    void whatIsWrongIsToldOfTheOpenTableOnly() {
        model.paste("cup\tml\n1\tx\n", "");
        assertThat(model.problems()).hasSize(1);
        model.begin("");
        assertThat(model.problems()).isEmpty();
    }
}
