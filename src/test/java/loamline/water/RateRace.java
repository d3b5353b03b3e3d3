package loamline.water;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import loamline.geometry.Point;
import loamline.raster.GridSpec;
import loamline.yard.Profile.Named;

/**
 * Races the raster against another program: writes a scene of 40 heads on 2,000 m², computes it again and again, writes
 * the rates, and prints how long it took.
 *
 * <p>Arguments: a folder. There {@code scene.json} holds {@code widthM, heightM, cellM, heads: [{xM, yM, radiusM,
 * arcStartDeg, arcSweepDeg, flowLpm, profile}]}, and {@code rates.csv} one row of mm/h a row of cells, the south first.
 */
public final class RateRace {
    private static final int ROUNDS = 200;
    private static final GridSpec GRID = new GridSpec(0, 0, 0.1, 500, 400);

    private RateRace() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        List<SprinklerHead> heads = new ArrayList<>();
        StringBuilder scene = new StringBuilder("{\"widthM\":50,\"heightM\":40,\"cellM\":0.1,\"heads\":[");
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < 40; i++) {
            Named profile = Named.values()[i % 4];
            Point at = new Point(random.nextDouble(50), random.nextDouble(40));
            Arc arc = Arc.of(random.nextDouble(360), i % 2 == 0 ? 360 : random.nextDouble(60, 300));
            heads.add(Heads.alone(new HeadPattern(at, 7, arc, RadialProfile.of(profile), 8)));
            scene.append(i == 0 ? "" : ",")
                    .append(String.format(
                            Locale.ROOT,
                            "{\"xM\":%s,\"yM\":%s,\"radiusM\":7,\"arcStartDeg\":%s,\"arcSweepDeg\":%s,\"flowLpm\":8,"
                                    + "\"profile\":\"%s\"}",
                            at.x(),
                            at.y(),
                            arc.startDeg(),
                            arc.sweepDeg(),
                            profile.name().toLowerCase(Locale.ROOT)));
        }
        Files.writeString(folder.resolve("scene.json"), scene.append("]}"));
        double[] seconds = new double[ROUNDS];
        double[] rates = {};
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            rates = new double[GRID.size()];
            RateField.of(GRID, heads).addTo(rates);
            seconds[round] = (System.nanoTime() - start) / 1e9;
        }
        Files.writeString(folder.resolve("rates.csv"), csv(rates), StandardCharsets.US_ASCII);
        Arrays.sort(seconds);
        System.out.printf(Locale.ROOT, "seconds: min %.5f, median %.5f%n", seconds[0], seconds[ROUNDS / 2]);
    }

    private static String csv(double[] rates) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < rates.length; i++) {
            out.append(rates[i]).append((i + 1) % GRID.columns() == 0 ? '\n' : ',');
        }
        return out.toString();
    }
}
