package loamline.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loamline.desk.session.Selection;
import loamline.files.YardFiles;
import loamline.place.Frame;
import loamline.units.UnitSystem;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeskTest {
    @TempDir
    Path folder;

    private Path home;
    private Path file;
    private TestDesk first;

    @BeforeEach
    void aYardOnDisk() throws IOException {
        home = folder.resolve("home");
        file = folder.resolve("a.loam.json");
        YardFiles.write(Yard.empty("a", Frame.local()), file);
        first = TestDesk.started(home);
    }

    private List<String> recoveryFiles() throws IOException {
        try (Stream<Path> all = Files.list(home.resolve("state/recovery"))) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> !name.endsWith(".lock"))
                    .sorted()
                    .toList();
        }
    }

    private String kept() {
        return YardFiles.read(home.resolve("state/recovery/yard-1.loam.json"))
                .yard()
                .orElseThrow()
                .name();
    }

    private TestDesk killedAndStarted() throws IOException {
        first.desk.abandon();
        return TestDesk.started(home);
    }

    @Test
    void everyChangeIsOnDiskWithinASecondWhateverFollowsIt() {
        for (int i = 0; i < 30; i++) {
            first.edit("edit " + i).pass(100);
            int known = i < 10 ? -1 : Integer.parseInt(kept().substring("edit ".length()));
            assertThat(known).isGreaterThanOrEqualTo(i - 10);
        }
        first.pass(1000);
        assertThat(kept()).isEqualTo("edit 29");
    }

    @Test
    void aKilledProgramReopensAsItWas() throws IOException {
        first.store.open(file);
        first.session.edit("draw", YardFixtures.yard(YardFixtures.gate(1, 2)).withName("b"));
        String key = first.session.history().get().now().features().get(0).key();
        first.session.selection().set(Selection.ofFeatures(List.of(key)));
        first.desk.ui().set(Map.of("step", "cores", "zoom", 2.5));
        Yard before = first.pass(1000).session.history().get().now();
        TestDesk second = killedAndStarted();
        assertThat(second.session.history().get().now()).isEqualTo(before);
        assertThat(second.isUnsaved()).isTrue();
        assertThat(second.store.path()).contains(file);
        assertThat(second.session.selection().get()).isEqualTo(Selection.ofFeatures(List.of(key)));
        assertThat(second.desk.ui().get()).isEqualTo(Map.of("step", "cores", "zoom", 2.5));
        assertThat(second.notices())
                .containsExactly("The last run did not end as it should. “a.loam.json” is open as it was; undo begins"
                        + " anew from here.");
    }

    @Test
    void whatWasSavedBeforeTheKillIsNotMarkedUnsaved() throws IOException {
        first.store.open(file);
        first.pass(1000);
        TestDesk second = killedAndStarted();
        assertThat(second.yardName()).isEqualTo("a");
        assertThat(second.isUnsaved()).isFalse();
        assertThat(second.edit("b").store.save()).isTrue();
        assertThat(second.asked).isEmpty();
    }

    @Test
    void whatWasRecoveredCanBeDiscarded() throws IOException {
        first.store.open(file);
        first.edit("b").pass(1000);
        TestDesk second = killedAndStarted();
        second.press("Discard, and open the file as saved");
        assertThat(second.yardName()).isEqualTo("a");
        assertThat(second.isUnsaved()).isFalse();
        assertThat(second.notices()).isEmpty();
    }

    @Test
    void aYardWithoutAFileCanBeDiscardedToo() throws IOException {
        first.edit("b").pass(1000);
        TestDesk second = killedAndStarted();
        second.press("Discard, and start anew");
        assertThat(second.yardName()).isEmpty();
    }

    @Test
    void anotherFileThatWasAskedForWaitsBehindTheRecoveredYard() throws IOException {
        first.edit("b").pass(1000);
        first.desk.abandon();
        TestDesk second = new TestDesk(home);
        second.desk.start(Optional.of(file));
        assertThat(second.yardName()).isEqualTo("b");
        second.answering("Don’t save").press("Open “a.loam.json”");
        assertThat(second.yardName()).isEqualTo("a");
    }

    @Test
    void aCleanEndLeavesNothingBehind() throws IOException {
        first.edit("b").pass(1000);
        assertThat(recoveryFiles()).containsExactly("yard-1.loam.json");
        first.answering("Don’t save");
        assertThat(first.desk.close()).isTrue();
        assertThat(recoveryFiles()).isEmpty();
        first.pass(10_000);
        assertThat(recoveryFiles()).isEmpty();
        TestDesk second = TestDesk.started(home);
        assertThat(second.yardName()).isEqualTo("first");
        assertThat(second.notices()).isEmpty();
    }

    @Test
    void aWindowThatIsNotToCloseGoesOnKeepingChanges() {
        first.edit("b").answering("Cancel");
        assertThat(first.desk.close()).isFalse();
        first.edit("c").pass(1000);
        assertThat(kept()).isEqualTo("c");
    }

    @Test
    void twoAtOnceHaveARecoveryFileEachAndBothComeBack() throws IOException {
        TestDesk second = TestDesk.started(home);
        first.edit("one").pass(1000);
        second.edit("two").pass(1000);
        assertThat(recoveryFiles()).containsExactly("yard-1.loam.json", "yard-2.loam.json");
        first.desk.abandon();
        second.desk.abandon();
        assertThat(List.of(
                        TestDesk.started(home).yardName(),
                        TestDesk.started(home).yardName()))
                .containsExactly("one", "two");
    }

    @Test
    void aRecoveryFileThatCannotBeReadIsPutAsideAndSaid() throws IOException {
        first.pass(1000).desk.abandon();
        Files.writeString(home.resolve("state/recovery/yard-1.loam.json"), "{");
        TestDesk second = TestDesk.started(home);
        assertThat(second.yardName()).isEqualTo("first");
        assertThat(second.notices()).singleElement().asString().contains("yard-1.loam.json.damaged");
        second.pass(1000);
        assertThat(recoveryFiles()).containsExactly("yard-1.loam.json", "yard-1.loam.json.damaged");
    }

    @Test
    void changesThatCannotBeKeptAreSaidUntilTheyCan() throws IOException {
        Path taken = folder.resolve("taken");
        Files.createDirectories(taken);
        Files.writeString(taken.resolve("state"), "a file, not a folder");
        assertThat(TestDesk.started(taken).notices())
                .singleElement()
                .asString()
                .startsWith("Changes are not being kept safe: " + taken.resolve("state"));

        Path kept = home.resolve("state/recovery/yard-1.loam.json");
        first.pass(1000);
        Files.delete(kept);
        Files.createDirectory(kept);
        first.edit("b").pass(1000);
        assertThat(first.notices()).singleElement().asString().startsWith("Changes are not being kept safe");
        Files.delete(kept);
        first.pass(10_000);
        assertThat(first.notices()).isEmpty();
        assertThat(kept()).isEqualTo("b");
    }

    @Test
    void settingsComeBackAtTheNextStart() {
        first.desk
                .settings()
                .set(first.desk
                        .settings()
                        .get()
                        .withTheme(Settings.Theme.DARK)
                        .withTextPx(17)
                        .withFolder("images", folder)
                        .withFolded(List.of("walks", "areas"))
                        .welcomedNow());
        first.session.units().set(UnitSystem.METRIC);
        first.pass(0);
        TestDesk second = TestDesk.started(home);
        assertThat(second.desk.settings().get())
                .isEqualTo(new Settings(
                        UnitSystem.METRIC,
                        Settings.Theme.DARK,
                        17,
                        Map.of("images", folder),
                        List.of("areas", "walks"),
                        true));
        assertThat(second.session.units().get()).isEqualTo(UnitSystem.METRIC);
    }

    @Test
    void settingsThatCannotBeReadAreTheUsualOnes() throws IOException {
        Path settings = folder.resolve("settings.json");
        assertThat(Settings.read(settings)).isEqualTo(Settings.USUAL);
        for (String bad :
                List.of("{", "[]", "{\"units\": 7, \"theme\": \"PLAID\", \"folders\": {\"a\": 1}, \"folded\": 3}")) {
            Files.writeString(settings, bad);
            assertThat(Settings.read(settings)).isEqualTo(Settings.USUAL);
        }
    }

    @Test
    void theProgramsFoldersFollowEachSystemsCustom() {
        Path user = folder.resolve("user").toAbsolutePath();
        assertThat(Home.of("Linux", user, name -> null))
                .isEqualTo(new Home(user.resolve(".config/loamline"), user.resolve(".local/state/loamline")));
        assertThat(Home.of("Linux", user, name -> name.equals("XDG_STATE_HOME") ? user + "/s" : "relative"))
                .isEqualTo(new Home(user.resolve(".config/loamline"), user.resolve("s/loamline")));
        assertThat(Home.of("Mac OS X", user, name -> null).state())
                .isEqualTo(user.resolve("Library/Application Support/loamline/state"));
        assertThat(Home.of("Windows 11", user, name -> name.equals("LOCALAPPDATA") ? user + "/l" : null))
                .isEqualTo(new Home(user.resolve("AppData/Roaming/loamline"), user.resolve("l/loamline")));
    }
}
