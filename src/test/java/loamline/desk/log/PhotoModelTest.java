package loamline.desk.log;

import static loamline.yard.YardFixtures.box;
import static loamline.yard.YardFixtures.turf;
import static loamline.yard.YardFixtures.yard;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loamline.desk.log.PhotoModel.Photo;
import loamline.desk.session.AtOnce;
import loamline.desk.session.Session;
import loamline.files.RawTable;
import loamline.findings.Surroundings;
import loamline.yard.Attachment;
import loamline.yard.Attachment.Sort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoModelTest {
    @TempDir
    private Path folder;

    private final Session session = new Session(yard(turf("Front", box(0, 0, 12, 10))), AtOnce.work());

    private PhotoModel photos(Optional<Path> where, String log) {
        LogModel model = new LogModel(session, () -> Surroundings.NONE, List.of(), () -> where);
        if (!log.isEmpty()) {
            session.edit("log", session.history().get().now().attaching(Attachment.of(Sort.LOG, "log.csv", "", log)));
        }
        return model.photos();
    }

    private String log() {
        return session.history().get().now().attached(Sort.LOG).get(0).text();
    }

    @Test
    void aPhotoIsFoundInTheYardsFolderAndAMissingOneIsToldInWords() throws IOException {
        Files.createDirectory(folder.resolve("cores"));
        Path there = Files.createFile(folder.resolve("cores").resolve("a1.jpg"));
        PhotoModel model = photos(Optional.of(folder), "core,photo\nA1,cores/a1.jpg;gone.jpg\nA2,../else.jpg\nA3,\n");
        assertThat(model.photos())
                .containsExactly(
                        new Photo("A1", "cores/a1.jpg", Optional.of(there.toAbsolutePath()), ""),
                        new Photo("A1", "gone.jpg", Optional.empty(), "not in the yard’s folder"),
                        new Photo(
                                "A2", "../else.jpg", Optional.empty(), "no file in the yard’s folder has such a name"));
        assertThat(model.photos().get(1).words()).isEqualTo("A1: gone.jpg, not in the yard’s folder");
    }

    @Test
    void whatIsNoNameOfAFileIsNoError() {
        assertThat(photos(Optional.of(folder), "core,photo\nA1,a\u0000b\n").photos())
                .extracting(Photo::file)
                .containsExactly(Optional.empty());
    }

    @Test
    void withoutAFolderNothingIsLookedFor() {
        assertThat(photos(Optional.empty(), "core,photo\nA1,a.jpg\n").photos())
                .extracting(Photo::lack)
                .containsExactly("looked for once the yard is saved");
    }

    @Test
    void attachingWritesTheRelativeNameIntoTheCoresRowAsOneEdit() {
        PhotoModel model = photos(Optional.of(folder), "core,note\nA1,x\nA2,y\n");
        model.attach("A2", folder.resolve("pictures").resolve("b.png"));
        assertThat(log()).isEqualTo("core,note,photo\nA1,x,\nA2,y,pictures/b.png\n");
        model.attach("A2", folder.resolve("c.png"));
        model.attach("A2", folder.resolve("c.png"));
        assertThat(log()).contains("A2,y,pictures/b.png;c.png\n");
        session.undo();
        assertThat(log()).contains("A2,y,pictures/b.png\n");
        assertThat(model.said().get()).isEmpty();
    }

    @Test
    void aPhotoFromElsewhereOrOfAYardWithoutAFileIsNotAttached() {
        PhotoModel model = photos(Optional.of(folder), "core\nA1\n");
        model.attach("A1", folder.resolveSibling("b.png"));
        assertThat(model.said().get()).startsWith("Copy the photo into the yard’s folder first");
        PhotoModel unsaved = photos(Optional.empty(), "");
        unsaved.attach("A1", folder.resolve("b.png"));
        assertThat(unsaved.said().get()).startsWith("Save the yard first");
        assertThat(log()).isEqualTo("core\nA1\n");
    }

    @Test
    void aCoreWithoutARowGetsOne() {
        assertThat(PhotoCells.with(RawTable.of("core,note\nA1,x\n"), "A2", "p.jpg")
                        .text())
                .isEqualTo("core,note,photo\nA1,x,\nA2,,p.jpg\n");
        assertThat(PhotoCells.with(RawTable.empty(List.of()), "A2", "p.jpg").text())
                .isEqualTo("core,photo\nA2,p.jpg\n");
    }
}
