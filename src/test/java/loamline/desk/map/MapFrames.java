package loamline.desk.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import loamline.desk.session.Selection;
import loamline.desk.session.Session;
import loamline.desk.session.Work;
import loamline.desk.tool.Hand;
import loamline.desk.tool.ToolHost;
import loamline.files.YardFiles;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.scene.Palette;
import loamline.yard.Backdrop;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Yard;
import loamline.yard.YardFixtures;

/**
 * Measures the map's frames; run by hand, see DEVELOPERS.md. Without an argument: 2,000 features over an image of 24
 * megapixels, panned and zoomed, a frame at a time as fast as frames come
 * ({@code -Djavafx.animation.fullspeed=true}). With a yard file: a corner of it dragged, and how long the picture
 * lags behind. With "look" before the file, the map stays open ("dark" after it).
 */
public final class MapFrames {
    private static final int WARM_UP = 60;
    private static final int FRAMES = 300;
    private static final int DRAGS = 60;

    private final List<Double> millis = new ArrayList<>();
    private final List<Double> worked = new ArrayList<>();
    private final Map<String, Long> ids = new HashMap<>();
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    public static void main(String[] arguments) {
        Application.launch(Program.class, arguments);
    }

    /** A class with a main method that is an Application itself starts from the module path only. */
    public static final class Program extends Application {
        @Override
        public void start(Stage stage) throws IOException {
            new MapFrames().start(stage, new ArrayList<>(getParameters().getRaw()));
        }
    }

    private void start(Stage stage, List<String> arguments) throws IOException {
        boolean look = arguments.remove("look");
        boolean dark = arguments.remove("dark");
        Optional<Path> file = arguments.stream().findFirst().map(Path::of);
        Path folder = file.map(f -> f.toAbsolutePath().getParent()).orElse(Files.createTempDirectory("frames"));
        Yard yard = file.isPresent() ? YardFiles.read(file.get()).yard().orElseThrow() : large(folder);
        Session session = new Session(yard, Work.ofWindow());
        MapView map = new MapView(session, new ToolHost(session, new Hand()));
        map.setFolder(Optional.of(folder));
        map.setPalette(dark ? Palette.DARK : Palette.LIGHT);
        BorderPane root = new BorderPane(map);
        root.getStyleClass().addAll("desk", dark ? "dark" : "light");
        Scene scene = new Scene(root, 1280, 800);
        scene.getStylesheets()
                .add(Objects.requireNonNull(MapView.class.getResource("/loamline/desk/desk.css"))
                        .toExternalForm());
        stage.setScene(scene);
        stage.setMaximized(look);
        stage.show();
        map.requestFocus();
        if (!look) {
            session.work().cancel("plan");
            whenQuiet(session, map, () -> measure(session, map, file.isPresent()));
        } else {
            select(session, map);
        }
    }

    private static void select(Session session, MapView map) {
        whenQuiet(session, map, () -> {
            session.selection()
                    .set(Selection.ofFeatures(session.history().get().now().features().stream()
                            .map(Feature::key)
                            .skip(1)
                            .limit(1)
                            .toList()));
            map.runWalk();
        });
    }

    private static void whenQuiet(Session session, MapView map, Runnable then) {
        long[] quiet = {0};
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                boolean busy = session.work().running().get().stream()
                                .anyMatch(job -> job.sort().equals("image"))
                        || map.backdrop().state().get().pixels().isEmpty();
                quiet[0] = busy || quiet[0] == 0 ? now : quiet[0];
                if (now - quiet[0] > 2e9) {
                    stop();
                    then.run();
                }
            }
        }.start();
    }

    private void measure(Session session, MapView map, boolean drag) {
        if (drag) {
            drag(session, map, 0);
        } else {
            frames(
                    "pan",
                    i -> map.camera().pan(i / 60 % 2 == 0 ? 9 : -9, i / 30 % 2 == 0 ? 5 : -5),
                    () -> frames(
                            "zoom",
                            i -> map.camera().zoom(i / 40 % 2 == 0 ? 1.05 : 1 / 1.05, 500, 400),
                            () -> Platform.runLater(Platform::exit)));
        }
    }

    private void frames(String what, IntConsumer move, Runnable then) {
        millis.clear();
        new AnimationTimer() {
            private int frame;
            private long last;
            private double lastWork;

            @Override
            public void handle(long now) {
                long time = System.nanoTime();
                double work = cpuMs("JavaFX Application Thread") + cpuMs("QuantumRenderer-0");
                if (frame > WARM_UP) {
                    millis.add((time - last) / 1e6);
                    worked.add(work - lastWork);
                }
                last = time;
                lastWork = work;
                move.accept(frame);
                frame++;
                if (frame > WARM_UP + FRAMES) {
                    stop();
                    print(what + ", ms from frame to frame", millis);
                    print(what + ", ms of work a frame", worked);
                    worked.clear();
                    then.run();
                }
            }
        }.start();
    }

    /** Moves one corner, waits until the picture shows it, and so on. */
    private void drag(Session session, MapView map, int step) {
        if (step == DRAGS) {
            print("drag, ms from a move to its picture", millis);
            print("drag, ms of work for a picture", worked);
            Platform.runLater(Platform::exit);
            return;
        }
        long started = System.nanoTime();
        double before = cpuMs("JavaFX Application Thread") + cpuMs("loamline map");
        map.onPicture(() -> {
            worked.add(cpuMs("JavaFX Application Thread") + cpuMs("loamline map") - before);
            millis.add((System.nanoTime() - started) / 1e6);
            map.onPicture(() -> {});
            Platform.runLater(() -> drag(session, map, step + 1));
        });
        Yard yard = session.history().get().now();
        List<Feature> features = new ArrayList<>(yard.features());
        int turf = IntStream.range(0, features.size())
                .filter(i -> features.get(i).kind().equals(Optional.of(Kind.TURF)))
                .findFirst()
                .orElseThrow();
        Outline outline = (Outline) features.get(turf).shape().orElseThrow();
        Point corner = outline.vertices().findFirst().orElseThrow();
        double off = 0.05 * (step % 10 + 1);
        features.set(turf, features.get(turf).withShape(outline.map(p -> p.equals(corner) ? p.plus(off, off) : p)));
        session.preview(yard.withFeatures(features));
    }

    /** What a thread has worked so far; unlike time, it does not grow with what else the machine does. */
    private double cpuMs(String name) {
        long id = ids.computeIfAbsent(
                name,
                wanted -> Thread.getAllStackTraces().keySet().stream()
                        .filter(thread -> thread.getName().equals(wanted))
                        .findFirst()
                        .orElseThrow()
                        .getId());
        return threads.getThreadCpuTime(id) / 1e6;
    }

    private static void print(String what, List<Double> values) {
        double[] sorted = values.stream().mapToDouble(d -> d).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: p50 %.1f  p95 %.1f  p99 %.1f  most %.1f  (%d)%n",
                what,
                sorted[sorted.length / 2],
                sorted[sorted.length * 95 / 100],
                sorted[sorted.length * 99 / 100],
                Arrays.stream(sorted).max().orElse(0),
                sorted.length);
    }

    private static Yard large(Path folder) throws IOException {
        List<Feature> features = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double x = i % 8 * 30;
            int row = i / 8;
            double y = row * 40.0;
            features.add(YardFixtures.turf("zone " + i, YardFixtures.box(x, y, x + 29, y + 38)));
        }
        Kind[] kinds = {Kind.BED, Kind.PAVING, Kind.GRAVEL, Kind.DECK, Kind.WATER};
        for (int i = 0; i < 1960; i++) {
            double x = i % 56 * 4.2 + i * 7 % 5 * 0.2;
            int row = i / 56;
            double y = row * 5.4 + i * 11 % 7 * 0.2;
            features.add(YardFixtures.cover(kinds[i % kinds.length], octagon(x + 1.5, y + 1.5)));
        }
        BufferedImage image = new BufferedImage(6000, 4000, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        for (int i = 0; i < 24000; i++) {
            graphics.setColor(new Color(60 + i * 31 % 90, 90 + i * 17 % 80, 50 + i * 13 % 60));
            graphics.fillRect(i * 7919 % 6000, i * 104729 % 4000, 90, 70);
        }
        ImageIO.write(image, "jpeg", folder.resolve("large.jpg").toFile());
        Backdrop backdrop = new Backdrop(
                "large.jpg",
                6000,
                4000,
                new Backdrop.Placement(0.04, 0.002, 0, 0.002, -0.04, 190),
                0,
                1,
                List.of(),
                Extras.NONE);
        return YardFixtures.yard(features.toArray(Feature[]::new)).withBackdrop(Optional.of(backdrop));
    }

    private static double[] octagon(double x, double y) {
        double[] xy = new double[16];
        for (int i = 0; i < 8; i++) {
            xy[2 * i] = x + 1.3 * Math.cos(Math.PI / 4 * i);
            xy[2 * i + 1] = y + 1.3 * Math.sin(Math.PI / 4 * i);
        }
        return xy;
    }
}
