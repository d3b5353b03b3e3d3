package loamline.water.cups;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import loamline.geometry.Point;
import loamline.water.Arc;
import loamline.water.HeadPattern;
import loamline.water.RadialProfile;
import loamline.yard.Profile;

/**
 * A made-up valve: 4 to 12 heads on the crossings of a slightly crooked grid, about head to head, quarter circles in
 * the corners, half circles along the sides and full circles inside; cups on an even grid, at least three a head and 24
 * in all.
 */
final class SimulatedValve {
    private static final int[][] ROWS_AND_COLUMNS = {
        {2, 2}, {2, 3}, {3, 2}, {2, 4}, {3, 3}, {2, 5}, {3, 4}, {4, 3}, {2, 6}
    };

    private static final List<Profile> PROFILES =
            List.of(Profile.Named.CONE, Profile.Named.PARABOLA, Profile.Named.ELLIPSE, Profile.Named.RING);

    private static final double THROAT_CM2 = 100;
    private static final double MINUTES = 15;

    private final SplittableRandom random;
    private final List<HeadPattern> heads = new ArrayList<>();
    private final List<Point> cups = new ArrayList<>();

    SimulatedValve(SplittableRandom random) {
        this.random = random;
        int[] shape = ROWS_AND_COLUMNS[random.nextInt(ROWS_AND_COLUMNS.length)];
        double radiusM = random.nextDouble(3, 9);
        double spacingM = radiusM * random.nextDouble(0.9, 1.05);
        Profile profile = PROFILES.get(random.nextInt(PROFILES.size()));
        double flowOfFullLpm = random.nextDouble(0.15, 0.5) * radiusM * radiusM;
        for (int row = 0; row < shape[0]; row++) {
            for (int column = 0; column < shape[1]; column++) {
                Arc arc = arc(row, column, shape[0] - 1, shape[1] - 1);
                Point at = new Point((column + crooked()) * spacingM, (row + crooked()) * spacingM);
                heads.add(new HeadPattern(at, radiusM, arc, RadialProfile.of(profile), flowOfFullLpm * arc.share()));
            }
        }
        layCups((shape[1] - 1) * spacingM, (shape[0] - 1) * spacingM);
    }

    private double crooked() {
        return random.nextDouble(-0.05, 0.05);
    }

    private static Arc arc(int row, int column, int lastRow, int lastColumn) {
        double fromDeg = column == 0 ? 0 : row == lastRow ? 180 : 270;
        boolean south = row == 0;
        boolean north = row == lastRow;
        boolean west = column == 0;
        boolean east = column == lastColumn;
        if ((south || north) && (west || east)) {
            return Arc.of(south ? (west ? 0 : 270) : west ? 90 : 180, 90);
        }
        if (south || north) {
            return Arc.of(south ? 270 : 90, 180);
        }
        return west ? Arc.of(0, 180) : east ? Arc.of(180, 180) : Arc.of(fromDeg, 360);
    }

    /** The coarsest even grid that has enough cups. */
    private void layCups(double widthM, double heightM) {
        int wanted = Math.max(24, 3 * heads.size());
        int columns = 1;
        int rows = 1;
        while (cups.size() < wanted || heads.stream().anyMatch(this::hasFewCups)) {
            if (widthM / columns > heightM / rows) {
                columns++;
            } else {
                rows++;
            }
            cups.clear();
            for (int i = 0; i < rows * columns; i++) {
                cups.add(new Point((i % columns + 0.5) * widthM / columns, (i / columns + 0.5) * heightM / rows));
            }
        }
    }

    private boolean hasFewCups(HeadPattern head) {
        return cups.stream().filter(cup -> head.rateMmH(cup.x(), cup.y()) > 0).count() < 3;
    }

    List<HeadPattern> heads() {
        return heads;
    }

    /** The heads as mapped, by id. */
    Map<String, HeadPattern> mapped() {
        Map<String, HeadPattern> byId = new LinkedHashMap<>();
        for (int h = 0; h < heads.size(); h++) {
            byId.put("h" + (h + 1), heads.get(h));
        }
        return byId;
    }

    /** A head, or one that is not a full circle. */
    int drawn(boolean partCircle) {
        int head = random.nextInt(heads.size());
        while (partCircle && heads.get(head).arc().isFull()) {
            head = random.nextInt(heads.size());
        }
        return head;
    }

    /**
     * Readings.
     *
     * @param bad the head to which something happens
     * @param what what happens to it
     * @param noise standard deviation as a share of the rate
     * @param spread standard deviation of the outputs of all heads
     */
    List<Cup> readings(int bad, UnaryOperator<HeadPattern> what, double noise, double spread) {
        List<HeadPattern> real = new ArrayList<>(heads);
        real.set(bad, what.apply(real.get(bad)));
        double pressure = random.nextDouble(0.7, 1.3);
        real.replaceAll(head -> head.withOutput(pressure * Math.max(0, 1 + spread * normal())));
        List<Cup> readings = new ArrayList<>();
        for (Point at : cups) {
            double rate = real.stream()
                    .mapToDouble(head -> head.rateMmH(at.x(), at.y()))
                    .sum();
            double ml = Math.max(0, rate * (1 + noise * normal())) * THROAT_CM2 * MINUTES / 600;
            readings.add(
                    new Cup(Integer.toString(readings.size() + 1), at, ml, THROAT_CM2, MINUTES, OptionalInt.empty()));
        }
        return readings;
    }

    double turnDeg() {
        return random.nextBoolean() ? 30 : -30;
    }

    /** Box and Muller. */
    private double normal() {
        double u = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
