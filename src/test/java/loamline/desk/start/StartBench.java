package loamline.desk.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Measures the start, each time in a fresh virtual machine, the empty stage and our window by turns. On the display
 * there is, else on a screen in memory. Ends with 1 if the window takes too long.
 */
public final class StartBench {
    private static final int RUNS = 5;

    /** Our first frame may take as much of the time of an empty stage. */
    private static final double MOST_TIMES_EMPTY = 1.5;

    /** From the first frame until the demo is planned and drawn, s. */
    private static final double MOST_TO_DONE_S = 2;

    private StartBench() {}

    /** Seconds from the launch of the virtual machine. */
    private record Start(double frameS, double doneS) {
        double toDoneS() {
            return doneS - frameS;
        }
    }

    public static void main(String[] args) throws IOException {
        List<Start> empty = new ArrayList<>();
        List<Start> ours = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            empty.add(start(EmptyStart.class));
            ours.add(start(WindowStart.class));
        }
        double times = median(ours, Start::frameS) / median(empty, Start::frameS);
        System.out.printf(
                "empty stage to first frame  %.2f s%nour window to first frame   %.2f s, %.2f times%n"
                        + "and until demo is computed  %.2f s%n",
                median(empty, Start::frameS), median(ours, Start::frameS), times, median(ours, Start::toDoneS));
        boolean quick = times <= MOST_TIMES_EMPTY && median(ours, Start::toDoneS) <= MOST_TO_DONE_S;
        System.exit(quick ? 0 : 1);
    }

    private static Start start(Class<?> program) throws IOException {
        Path home = Files.createTempDirectory("loamline-start");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Dprism.order=sw",
                "-Dloamline.home=" + home));
        if (System.getenv("DISPLAY") == null) {
            command.addAll(List.of(
                    "-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dheadless.geometry=1920x1080-32"));
        }
        command.add(program.getName());
        long launched = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        double frameS = Double.NaN;
        double doneS = Double.NaN;
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                double nowS = (System.nanoTime() - launched) / 1e9;
                frameS = line.equals(FirstFrame.FRAME) ? nowS : frameS;
                doneS = line.equals(FirstFrame.DONE) ? nowS : doneS;
            }
        }
        if (Double.isNaN(frameS + doneS)) {
            throw new IOException(program.getName() + " did not come up");
        }
        return new Start(frameS, doneS);
    }

    private static double median(List<Start> starts, ToDoubleFunction<Start> what) {
        return starts.stream()
                .mapToDouble(what)
                .sorted()
                .skip(starts.size() / 2)
                .findFirst()
                .orElseThrow();
    }
}
