package loamline.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loamline.files.YardFiles;
import loamline.place.Frame;
import loamline.place.LonLat;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
    @TempDir
    Path folder;

    private Path file;
    private TestDesk desk;

    @BeforeEach
    void aYardOnDisk() throws IOException {
        file = folder.resolve("a.loam.json");
        YardFiles.write(Yard.empty("a", Frame.local()), file);
        desk = TestDesk.started(folder.resolve("home"));
    }

    private static String nameIn(Path path) {
        return YardFiles.read(path).yard().orElseThrow().name();
    }

    private void opened() {
        desk.store.open(file);
        assertThat(desk.yardName()).isEqualTo("a");
    }

    @Test
    void theTitleNamesTheFileAndMarksChanges() {
        assertThat(desk.store.title().getValue()).isEqualTo("first – Loamline");
        opened();
        assertThat(desk.store.title().getValue()).isEqualTo("a.loam.json – Loamline");
        desk.edit("b");
        assertThat(desk.store.title().getValue()).isEqualTo("• a.loam.json – Loamline");
        desk.session.undo();
        assertThat(desk.store.title().getValue()).isEqualTo("a.loam.json – Loamline");
    }

    @Test
    void savingWritesTheFileAndTakesTheMarkAway() {
        opened();
        desk.edit("b");
        assertThat(desk.store.save()).isTrue();
        assertThat(nameIn(file)).isEqualTo("b");
        assertThat(desk.isUnsaved()).isFalse();
        assertThat(desk.asked).isEmpty();
    }

    @Test
    void aYardWithoutAFileAsksForOne() {
        desk.edit("back: yard").choosing(folder.resolve("new"));
        assertThat(desk.store.save()).isTrue();
        assertThat(desk.suggested).containsExactly(Path.of("back- yard.loam.json"));
        assertThat(nameIn(folder.resolve("new.loam.json"))).isEqualTo("back: yard");
        assertThat(desk.store.path()).contains(folder.resolve("new.loam.json"));
    }

    @Test
    void aNameThatGetsItsEndingHereReplacesNothingUnasked() {
        desk.edit("b").choosing(folder.resolve("a")).answering("Cancel");
        assertThat(desk.store.saveAs()).isFalse();
        assertThat(nameIn(file)).isEqualTo("a");
        desk.choosing(folder.resolve("a")).answering("Replace");
        assertThat(desk.store.saveAs()).isTrue();
        assertThat(nameIn(file)).isEqualTo("b");
    }

    @Test
    void aCopyLeavesTheFileAndTheMarkAsTheyWere() {
        opened();
        desk.edit("b").choosing(folder.resolve("copy.loam.json"));
        desk.store.saveCopy();
        assertThat(desk.suggested).containsExactly(folder.resolve("a copy.loam.json"));
        assertThat(nameIn(folder.resolve("copy.loam.json"))).isEqualTo("b");
        assertThat(nameIn(file)).isEqualTo("a");
        assertThat(desk.isUnsaved()).isTrue();
        assertThat(desk.store.path()).contains(file);
    }

    @Test
    void unsavedChangesAreGivenUpOnlyByOneWhoSaysSo() {
        opened();
        desk.edit("b").answering("Cancel");
        desk.store.newYard();
        assertThat(desk.yardName()).isEqualTo("b");
        desk.answering("Save");
        desk.store.newYard();
        assertThat(desk.yardName()).isEmpty();
        assertThat(nameIn(file)).isEqualTo("b");
        assertThat(desk.store.path()).isEmpty();
        desk.edit("c").answering("Don’t save");
        desk.store.open(file);
        assertThat(desk.yardName()).isEqualTo("b");
        assertThat(desk.asked).hasSize(3);
    }

    @Test
    void whoWantsToSaveButThenNamesNoFileKeepsTheYard() {
        desk.edit("b").answering("Save");
        desk.store.newYard();
        assertThat(desk.yardName()).isEqualTo("b");
    }

    @Test
    void aFileThatCannotBeReadChangesNothingAndSaysWhere() throws IOException {
        opened();
        desk.edit("b");
        Path bad = Files.writeString(folder.resolve("bad.loam.json"), "{\n \"format\": oops\n}");
        desk.store.open(bad);
        assertThat(desk.yardName()).isEqualTo("b");
        assertThat(desk.store.path()).contains(file);
        assertThat(desk.asked).isEmpty();
        assertThat(desk.notices())
                .singleElement()
                .asString()
                .startsWith(
                        "Could not open the file; your yard is as it was. bad.loam.json:2: not well-formed JSON at column");
    }

    @Test
    void aFileOfANewerProgramIsRefusedPolitely() throws IOException {
        Path newer = Files.writeString(
                folder.resolve("newer.loam.json"),
                "{\"format\": \"loamline-yard\", \"schema\": 99, \"needs\": \"Loamline 7.0\", \"features\": []}");
        desk.store.open(newer);
        assertThat(desk.notices())
                .containsExactly(
                        "Could not open the file; your yard is as it was. newer.loam.json:/schema: written by a"
                                + " newer Loamline: the file has schema 99, this program reads up to 1; open it with Loamline"
                                + " 7.0 or later.");
    }

    @Test
    void theBackupOfADamagedFileOpensInItsPlace() throws IOException {
        YardFiles.write(Yard.empty("newest", Frame.local()), file);
        Files.writeString(file, "{");
        desk.store.open(file);
        assertThat(desk.yardName()).isEqualTo("first");
        desk.press("Open the backup a.loam.json~1~");
        assertThat(desk.yardName()).isEqualTo("a");
        assertThat(desk.isUnsaved()).isTrue();
        assertThat(desk.store.path()).contains(file);
        assertThat(desk.store.save()).isTrue();
        assertThat(nameIn(file)).isEqualTo("a");
    }

    @Test
    void problemsInAFileThatOpensAreTold() throws IOException {
        Path odd = Files.writeString(
                folder.resolve("odd.loam.json"),
                "{\"format\": \"loamline-yard\", \"schema\": 1, \"name\": \"odd\", \"features\": [{\"key\": \"f1\","
                        + " \"kind\": \"gate\"}]}");
        desk.store.open(odd);
        assertThat(desk.yardName()).isEqualTo("odd");
        assertThat(desk.notices())
                .singleElement()
                .asString()
                .startsWith("Opened with problems. odd.loam.json:/features/0");
    }

    @Test
    void geoJsonGoesBackToGeoJsonWhereThatKeepsTheYard() throws IOException {
        Path map = folder.resolve("map.geojson");
        YardFiles.write(Yard.empty("map", Frame.local()), map);
        desk.store.open(map);
        desk.edit("changed");
        assertThat(desk.store.save()).isTrue();
        assertThat(nameIn(map)).isEqualTo("changed");
        assertThat(Files.readString(map)).contains("FeatureCollection");
    }

    @Test
    void whereGeoJsonWouldLoseSomethingAProjectIsOffered() throws IOException {
        Path map = folder.resolve("map.geojson");
        YardFiles.write(Yard.empty("map", Frame.at(new LonLat(8, 50))), map);
        desk.store.open(map);
        desk.session.edit(
                "far away",
                desk.session
                        .history()
                        .get()
                        .now()
                        .withFeatures(
                                YardFixtures.yard(YardFixtures.gate(2e7, 3)).features()));
        desk.choosing(folder.resolve("map.loam.json"));
        assertThat(desk.store.save()).isTrue();
        assertThat(desk.suggested).containsExactly(folder.resolve("map.loam.json"));
        assertThat(desk.store.path()).contains(folder.resolve("map.loam.json"));
        assertThat(YardFiles.read(map).yard().orElseThrow().features()).isEmpty();
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotWrittenOverUnasked() throws IOException {
        opened();
        YardFiles.write(Yard.empty("theirs", Frame.local()), file);
        desk.edit("mine").answering("Cancel");
        assertThat(desk.store.save()).isFalse();
        assertThat(nameIn(file)).isEqualTo("theirs");
        desk.answering("Save under another name …").choosing(folder.resolve("mine.loam.json"));
        assertThat(desk.store.save()).isTrue();
        assertThat(nameIn(file)).isEqualTo("theirs");
        assertThat(nameIn(folder.resolve("mine.loam.json"))).isEqualTo("mine");
    }

    @Test
    void whoSaysSoMayWriteOverWhatAnotherProgramChanged() throws IOException {
        opened();
        YardFiles.write(Yard.empty("theirs", Frame.local()), file);
        desk.edit("mine").answering("Overwrite");
        assertThat(desk.store.save()).isTrue();
        assertThat(nameIn(file)).isEqualTo("mine");
        assertThat(desk.store.save()).isTrue();
        assertThat(desk.asked).hasSize(1);
    }

    @Test
    void aChangeOnDiskIsNoticedOnceAndCanBeReloaded() throws IOException {
        opened();
        YardFiles.write(Yard.empty("theirs", Frame.local()), file);
        desk.pass(2000);
        assertThat(desk.notices()).containsExactly("“a.loam.json” was changed on disk by another program.");
        desk.store.notices().dismiss(Notices.About.DISK);
        desk.pass(10_000);
        assertThat(desk.notices()).isEmpty();
        YardFiles.write(Yard.empty("theirs too", Frame.local()), file);
        desk.store.lookAtDisk();
        desk.pass(0);
        desk.press("Reload");
        assertThat(desk.yardName()).isEqualTo("theirs too");
        assertThat(desk.isUnsaved()).isFalse();
    }

    @Test
    void keepingMineMarksItUnsavedAndSavingStillAsks() throws IOException {
        opened();
        YardFiles.write(Yard.empty("theirs", Frame.local()), file);
        desk.pass(2000);
        desk.press("Keep mine");
        assertThat(desk.isUnsaved()).isTrue();
        desk.answering("Cancel");
        assertThat(desk.store.save()).isFalse();
    }

    @Test
    void mineCanBeSavedBesideTheirs() throws IOException {
        opened();
        desk.edit("mine");
        YardFiles.write(Yard.empty("theirs", Frame.local()), file);
        desk.pass(2000);
        assertThat(desk.notices())
                .containsExactly("“a.loam.json” was changed on disk by another program, and has changes here that are"
                        + " not saved.");
        desk.choosing(folder.resolve("a (mine).loam.json"));
        desk.press("Save mine as “a (mine).loam.json” …");
        assertThat(desk.suggested).containsExactly(folder.resolve("a (mine).loam.json"));
        assertThat(nameIn(file)).isEqualTo("theirs");
        assertThat(nameIn(folder.resolve("a (mine).loam.json"))).isEqualTo("mine");
    }

    @Test
    void ourOwnSavingIsNoChangeByAnother() {
        opened();
        desk.pass(2000);
        desk.edit("b").store.save();
        desk.pass(4000);
        assertThat(desk.notices()).isEmpty();
    }

    @Test
    void aFileThatIsGoneCanBeSavedAgain() throws IOException {
        opened();
        Files.delete(file);
        desk.pass(2000);
        assertThat(desk.isUnsaved()).isTrue();
        desk.press("Save it again");
        assertThat(nameIn(file)).isEqualTo("a");
        assertThat(desk.notices()).isEmpty();
    }

    @Test
    void whatCannotBeSavedIsSaidAndStaysUnsaved() {
        desk.edit("b").choosing(folder.resolve("no/such/folder/b.loam.json"));
        assertThat(desk.store.saveAs()).isFalse();
        assertThat(desk.isUnsaved()).isTrue();
        assertThat(desk.notices()).singleElement().asString().startsWith("Could not save: ");
    }

    @Test
    void theImageUnderAYardIsFoundFromWhereverTheYardIsSaved() throws IOException {
        Path maps = Files.createDirectories(folder.resolve("maps"));
        Backdrop image = new Backdrop(
                "images/aerial.tif", 10, 10, new Backdrop.Placement(1, 0, 0, 0, -1, 0), 0, 1, List.of(), Extras.NONE);
        YardFiles.write(Yard.empty("a", Frame.local()).withBackdrop(Optional.of(image)), maps.resolve("b.loam.json"));
        desk.store.open(maps.resolve("b.loam.json"));
        assertThat(backdrop(desk.session.history().get().now()))
                .isEqualTo(maps.resolve("images/aerial.tif").toString());
        desk.choosing(folder.resolve("c.loam.json")).store.saveAs();
        assertThat(backdrop(YardFiles.read(folder.resolve("c.loam.json")).yard().orElseThrow()))
                .isEqualTo("maps/images/aerial.tif");
    }

    private static String backdrop(Yard yard) {
        return yard.backdrop().orElseThrow().file();
    }

    @Test
    void recentFilesComeNewestFirstAndMissingOnesAreShownAsSuch() throws IOException {
        for (int i = 0; i < 12; i++) {
            Path one = folder.resolve("y" + i + ".loam.json");
            YardFiles.write(Yard.empty("y" + i, Frame.local()), one);
            desk.store.open(one);
        }
        desk.store.open(folder.resolve("y5.loam.json"));
        Files.delete(folder.resolve("y11.loam.json"));
        List<RecentFiles.Entry> entries = desk.store.recent().entries();
        assertThat(entries).hasSize(RecentFiles.MOST);
        assertThat(entries.get(0)).isEqualTo(new RecentFiles.Entry(folder.resolve("y5.loam.json"), false));
        assertThat(entries.get(1)).isEqualTo(new RecentFiles.Entry(folder.resolve("y11.loam.json"), true));
        desk.store.recent().remove(folder.resolve("y11.loam.json"));
        assertThat(TestDesk.started(folder.resolve("home")).store.recent().entries())
                .hasSize(9)
                .noneMatch(RecentFiles.Entry::missing);
    }

    @Test
    void membersOfTheRecoveryFileNeverReachTheUsersFile() throws IOException {
        opened();
        desk.desk.ui().set(Map.of("step", "cores"));
        desk.edit("b").pass(1000).store.save();
        assertThat(Files.readString(file)).doesNotContain("loamlineRecovery");
    }
}
