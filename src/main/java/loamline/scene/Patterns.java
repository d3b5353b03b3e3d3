package loamline.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loamline.geometry.Box;
import loamline.geometry.Lines;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;

/**
 * Pattern fills as geometry, cut to the ground they fill. Spacing is on paper; patterns are anchored to the
 * yard's plane, so they stay put when the view moves. Only what the view shows is made.
 */
final class Patterns {
    private static final double DECK_SPACING_MM = 1.5;
    private static final double HATCH_SPACING_MM = 2.2;
    private static final double DOT_SPACING_MM = 2.6;
    private static final double DOT_RADIUS_MM = 0.19;
    private static final double STIPPLE_SPACING_MM = 1.25;
    private static final double STIPPLE_RADIUS_MM = 0.13;
    private static final double WAVE_LENGTH_MM = 2.6;
    private static final double WAVE_HEIGHT_MM = 0.45;
    private static final double WAVE_GAP_MM = 1.7;
    private static final int WAVES = 3;
    private static final int POINTS_A_WAVE = 12;

    /** Round corners of a buffer are chords, nearer by up to 0.12 %: keeps every disc inside all the same. */
    private static final double CHORD_ALLOWANCE = 1.002;

    private Patterns() {}

    /** Lines at 45°, rising to the east. */
    static Path hatch(Region ground, View view) {
        return lines(ground, view, Math.PI / 4, HATCH_SPACING_MM);
    }

    /** Narrow lines along the longest side. */
    static Path boards(Region ground, View view) {
        return lines(ground, view, longestSide(ground), DECK_SPACING_MM);
    }

    /** Sparse dots in staggered rows. */
    static Path dots(Region ground, View view) {
        return discs(ground, view, DOT_SPACING_MM, DOT_RADIUS_MM, (column, row) -> row % 2 == 0 ? ORIGIN : STAGGER);
    }

    /** Small dots strewn evenly but out of line. */
    static Path stipple(Region ground, View view) {
        return discs(ground, view, STIPPLE_SPACING_MM, STIPPLE_RADIUS_MM, Patterns::strewn);
    }

    /** Two short waves in the middle. */
    static Path waves(Region ground, View view) {
        Optional<Point> middle = ground.innerPoint();
        if (middle.isEmpty()) {
            return new Path(List.of());
        }
        List<Polyline> waves = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            List<Point> wave = new ArrayList<>();
            for (int i = 0; i <= WAVES * POINTS_A_WAVE; i++) {
                double turn = 2 * Math.PI * i / POINTS_A_WAVE;
                double xMm = WAVE_LENGTH_MM * ((double) i / POINTS_A_WAVE - WAVES / 2.0 + 0.25 * side);
                double yMm = WAVE_GAP_MM / 2 * side + WAVE_HEIGHT_MM * Math.sin(turn);
                wave.add(middle.get().plus(view.metres(xMm), view.metres(yMm)));
            }
            waves.add(new Polyline(wave));
        }
        return Path.of(Lines.within(waves, ground));
    }

    private static Path lines(Region ground, View view, double angle, double spacingMm) {
        Optional<Box> box = shown(ground, view);
        if (box.isEmpty()) {
            return new Path(List.of());
        }
        double spacingM = view.metres(spacingMm);
        Point along = new Point(Math.cos(angle), Math.sin(angle));
        Point middle = box.get().centre();
        double reachM = Math.hypot(box.get().widthM(), box.get().heightM()) / 2;
        double middleOff = middle.y() * along.x() - middle.x() * along.y();
        List<Polyline> lines = new ArrayList<>();
        for (long k = (long) Math.ceil((middleOff - reachM) / spacingM); k * spacingM <= middleOff + reachM; k++) {
            double off = k * spacingM - middleOff;
            Point foot = middle.plus(-off * along.y(), off * along.x());
            lines.add(new Polyline(List.of(
                    foot.plus(-reachM * along.x(), -reachM * along.y()),
                    foot.plus(reachM * along.x(), reachM * along.y()))));
        }
        return Path.of(Lines.within(lines, ground));
    }

    private static final Point ORIGIN = new Point(0, 0);
    private static final Point STAGGER = new Point(0.5, 0);

    /** Where in its cell of a square grid a disc goes, as shares of the cell. */
    private interface Jitter {
        Point of(long column, long row);
    }

    private static Path discs(Region ground, View view, double spacingMm, double radiusMm, Jitter jitter) {
        double radiusM = view.metres(radiusMm);
        double cellM = view.metres(spacingMm);
        Region middles = ground.buffer(-radiusM * CHORD_ALLOWANCE);
        Optional<Box> box = shown(middles, view);
        if (box.isEmpty()) {
            return new Path(List.of());
        }
        List<Path> discs = new ArrayList<>();
        for (long row = cell(box.get().minY(), cellM); row * cellM <= box.get().maxY(); row++) {
            for (long column = cell(box.get().minX(), cellM);
                    column * cellM <= box.get().maxX();
                    column++) {
                Point share = jitter.of(column, row);
                Point middle = new Point((column + share.x()) * cellM, (row + share.y()) * cellM);
                if (middles.covers(middle)) {
                    discs.add(Path.circle(middle, radiusM));
                }
            }
        }
        return Path.joined(discs);
    }

    private static long cell(double coordinate, double cellM) {
        return (long) Math.floor(coordinate / cellM) - 1;
    }

    /** The same cell always gives the same place: a hash stands in for chance. */
    private static Point strewn(long column, long row) {
        long hash = column * 0x9E3779B97F4A7C15L ^ row * 0xC2B2AE3D27D4EB4FL;
        hash = (hash ^ hash >>> 29) * 0xBF58476D1CE4E5B9L;
        hash ^= hash >>> 32;
        return new Point((hash & 0xFFFF) / 65536.0, (hash >>> 16 & 0xFFFF) / 65536.0);
    }

    private static Optional<Box> shown(Region ground, View view) {
        Box window = view.ground();
        return ground.box()
                .filter(box -> box.minX() < window.maxX()
                        && box.maxX() > window.minX()
                        && box.minY() < window.maxY()
                        && box.maxY() > window.minY())
                .map(box -> new Box(
                        Math.max(box.minX(), window.minX()),
                        Math.max(box.minY(), window.minY()),
                        Math.min(box.maxX(), window.maxX()),
                        Math.min(box.maxY(), window.maxY())));
    }

    /** Direction of the longest side of all rings, radians from east. */
    private static double longestSide(Region ground) {
        double longestM = 0;
        double angle = 0;
        for (List<Point> ring : ground.outline().rings().toList()) {
            Point from = ring.get(ring.size() - 1);
            for (Point to : ring) {
                if (from.distanceTo(to) > longestM) {
                    longestM = from.distanceTo(to);
                    angle = Math.atan2(to.y() - from.y(), to.x() - from.x());
                }
                from = to;
            }
        }
        return angle;
    }
}
