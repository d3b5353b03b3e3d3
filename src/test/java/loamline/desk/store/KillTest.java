package loamline.desk.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import loamline.files.YardFiles;
import loamline.yard.Yard;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed in the midst of editing and saving loses a second of work at most, and no file. */
class KillTest {
    /** What may be lost. */
    private static final long MOST_LOST_MS = 1000;

    private static final Path YARD = Path.of("maps", "plover-court.loam.json");
    private static final Pattern LINE = Pattern.compile("(\\d+) (\\d+)");

    @TempDir
    Path folder;

    @Test
    void aFewKillsLoseASecondAtMost() throws IOException {
        assertThat(lostMs(4, 2, 700)).hasSize(4).allMatch(ms -> ms <= MOST_LOST_MS);
    }

    @Test
    @Tag("slow")
    void twoHundredKillsLoseASecondAtMost(TestReporter reporter) throws IOException {
        List<Long> lost = lostMs(200, 4, 1500);
        reporter.publishEntry("lost ms, sorted", lost.stream().sorted().toList().toString());
        assertThat(lost).hasSize(200).allMatch(ms -> ms <= MOST_LOST_MS);
    }

    /** What each of some kills lost, in sandboxes used in turn, two programs at a time. */
    private List<Long> lostMs(int kills, int sandboxes, int mostMs) throws IOException {
        List<Sandbox> all = new ArrayList<>();
        for (int i = 0; i < sandboxes; i++) {
            all.add(Sandbox.in(folder.resolve("sandbox-" + i)));
        }
        List<Long> lost = new ArrayList<>();
        for (int first = 0; first < kills; first += 2) {
            lost.addAll(IntStream.range(first, Math.min(kills, first + 2))
                    .parallel()
                    .mapToLong(
                            kill -> all.get(kill % sandboxes).lostMs(new Random(kill).nextInt(mostMs), "kill " + kill))
                    .boxed()
                    .toList());
        }
        return lost;
    }

    /** A home and a yard that one program after the other works on. */
    private record Sandbox(Path home, Path file) {
        static Sandbox in(Path folder) throws IOException {
            Yard yard = YardFiles.read(YARD).yard().orElseThrow();
            Path file = Files.createDirectories(folder).resolve("yard.loam.json");
            YardFiles.write(yard.withName(Typist.name(0)), file);
            return new Sandbox(folder.resolve("home"), file);
        }

        /** From the last edit to the last one that came back, ms, for a program killed so long after its first edit. */
        long lostMs(int killAfterMs, String which) {
            Optional<Integer> before = recovered(which);
            NavigableMap<Integer, Long> edits = editsUntilKilled(killAfterMs);
            before.ifPresent(number -> assertThat(edits.firstKey())
                    .as("the first edit of " + which)
                    .isEqualTo(number + 1));
            assertThat(YardFiles.read(file).yard())
                    .as("the yard's file after " + which)
                    .isPresent();
            long lastAt = edits.lastEntry().getValue();
            long backAt = recovered(which)
                    .filter(number -> number >= edits.firstKey())
                    .map(number ->
                            edits.getOrDefault(number, lastAt)) // the line of the last edit may not have come out
                    .orElse(edits.firstEntry().getValue());
            return TimeUnit.NANOSECONDS.toMillis(lastAt - backAt);
        }

        /** The number of the edit that is in the recovery file; empty if there is no file yet. */
        private Optional<Integer> recovered(String which) {
            Path recovery = home.resolve("state/recovery/yard-1.loam.json");
            if (!Files.exists(recovery)) {
                return Optional.empty();
            }
            Optional<Yard> yard = YardFiles.read(recovery).yard();
            assertThat(yard).as("the recovery file of " + which).isPresent();
            return yard.map(y -> Typist.number(y.name()));
        }

        /** Numbers and times of the edits told. */
        private NavigableMap<Integer, Long> editsUntilKilled(int killAfterMs) {
            NavigableMap<Integer, Long> edits = new TreeMap<>();
            try {
                Process typist =
                        new ProcessBuilder(command()).redirectErrorStream(true).start();
                ProcessHandle handle = typist.toHandle(); // unlike the process itself, keeps what was said readable
                List<String> other = new ArrayList<>();
                try (BufferedReader lines = typist.inputReader()) {
                    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                        Matcher told = LINE.matcher(line);
                        if (!told.matches()) {
                            other.add(line);
                            continue;
                        }
                        if (edits.isEmpty()) {
                            CompletableFuture.delayedExecutor(killAfterMs, TimeUnit.MILLISECONDS)
                                    .execute(handle::destroyForcibly);
                        }
                        edits.put(Integer.parseInt(told.group(1)), Long.parseLong(told.group(2)));
                    }
                }
                assertThat(edits).as("edits; the program also said " + other).isNotEmpty();
            } catch (IOException e) {
                throw new AssertionError("the program could not be started", e);
            }
            return edits;
        }

        private List<String> command() {
            return List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx256m",
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    Typist.class.getName(),
                    home.toString(),
                    file.toString());
        }
    }
}
