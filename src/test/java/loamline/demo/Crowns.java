package loamline.demo;

import java.awt.geom.Ellipse2D;
import java.util.SplittableRandom;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.yard.Tree;

/** Trees and shrubs: heaps of leaf clusters, each a small dome, that stand on the plate. */
final class Crowns {
    private static final int[] LEAVES = {0x55702F, 0x4A672F, 0x627A38, 0x4F6B38};
    private static final int[] NEEDLES = {0x3C5539, 0x36503A, 0x435C40};
    private static final int[] SHRUBS = {0x5B7836, 0x4B6B3A, 0x7A7F44, 0x6F5060, 0x8E8A55, 0x3F5F3A, 0xA07A88};

    private final Plate plate;
    private final Noise noise;
    private final SplittableRandom random;

    Crowns(Plate plate, Noise noise, SplittableRandom random) {
        this.plate = plate;
        this.noise = noise;
        this.random = random;
    }

    /** One crown, seen from above. */
    private record Crown(Point at, double radiusM, double topM, double baseM, boolean pointed, int tint) {
        /** Height of the crown's underside. */
        double undersideM(double share) {
            return pointed ? baseM : baseM + 0.45 * (topM - baseM) * (1 - Math.sqrt(Math.max(0, 1 - share * share)));
        }

        /** Height of the crown's skin at a distance from its middle, as a share of its radius. */
        double skinM(double share) {
            double drop = pointed ? share : 1 - Math.sqrt(Math.max(0, 1 - share * share));
            return topM - drop * (topM - baseM) * (pointed ? 0.95 : 0.55);
        }
    }

    /** Draws a tree; one without a crown radius or height is not seen. */
    void tree(Tree tree) {
        if (tree.crownRadiusM().isEmpty() || tree.heightM().isEmpty()) {
            return;
        }
        double height = tree.heightM().getAsDouble();
        int[] tints = tree.evergreen() ? NEEDLES : LEAVES;
        draw(new Crown(
                tree.at(),
                tree.crownRadiusM().getAsDouble(),
                height,
                tree.baseM().orElse(height / 4),
                tree.evergreen(),
                tints[random.nextInt(tints.length)]));
    }

    /** Plants a bed: shrubs where there is room, none over its edge. */
    void shrubs(Outline bed) {
        Region room = Region.of(bed).buffer(-0.3);
        if (room.isEmpty()) {
            return;
        }
        var box = room.box().orElseThrow();
        long tries = Math.round(3.0 * room.areaM2());
        for (long i = 0; i < tries; i++) {
            Point at = new Point(
                    random.nextDouble(box.minX(), box.maxX() + 1e-9), random.nextDouble(box.minY(), box.maxY() + 1e-9));
            double radius = random.nextDouble(0.22, 0.6);
            int tint = SHRUBS[random.nextInt(SHRUBS.length)];
            if (room.covers(at) && room.distanceToEdge(at) > radius - 0.3) {
                draw(new Crown(at, radius, 0.5 + 1.1 * radius, 0.1, false, tint));
            }
        }
    }

    private void draw(Crown crown) {
        double cluster = Math.max(0.13, Math.min(0.45, crown.radiusM() * (crown.pointed() ? 0.1 : 0.14)));
        long count = Math.round(7 * square(crown.radiusM() / cluster) / 2);
        for (long i = 0; i < count; i++) {
            double bearing = random.nextDouble(2 * Math.PI);
            double lobes =
                    0.86 + 0.14 * StrictMath.sin(5 * bearing + crown.radiusM() * 9) * StrictMath.sin(2 * bearing + 1);
            double share = Math.sqrt(random.nextDouble()) * lobes;
            double r = share * (crown.radiusM() - 0.6 * cluster);
            Point at = crown.at().plus(r * StrictMath.cos(bearing), r * StrictMath.sin(bearing));
            double size = cluster * random.nextDouble(0.6, 1.15);
            double bottom = crown.skinM(share) - cluster * random.nextDouble(0.4, 1.5);
            dome(crown, at, size, bottom);
        }
    }

    /** One leaf cluster: a dome that hides what lies lower. */
    private void dome(Crown crown, Point at, double radiusM, double bottomM) {
        double tone = random.nextDouble(0.82, 1.1);
        float[] colour = new float[3];
        var disc = new Ellipse2D.Double(at.x() - radiusM, at.y() - radiusM, 2 * radiusM, 2 * radiusM);
        plate.each(disc, (pixel, x, y, share) -> {
            double dx = (x - at.x()) / radiusM;
            double dy = (y - at.y()) / radiusM;
            double ragged = dx * dx + dy * dy + 0.9 * noise.at(x * 6, y * 6);
            double rise = Math.sqrt(Math.max(0, 1 - ragged)) * radiusM * 0.8;
            if (ragged > 1 || share < 0.5f || bottomM + rise <= plate.aboveM[pixel]) {
                return;
            }
            plate.aboveM[pixel] = (float) (bottomM + rise);
            plate.belowM[pixel] = (float) crown.undersideM(crown.at().distanceTo(new Point(x, y)) / crown.radiusM());
            plate.leanX[pixel] = (float) lean(0.4 * dx, 0.38 * (x - crown.at().x()) / crown.radiusM());
            plate.leanY[pixel] = (float) lean(0.4 * dy, 0.38 * (y - crown.at().y()) / crown.radiusM());
            double leaf = 0.3 * noise.at(x * 8, y * 8) + 0.25 * noise.at(x * 19, y * 19);
            Texture.set(colour, crown.tint(), tone + leaf);
            plate.paint(pixel, colour);
        });
    }

    private static double lean(double ofCluster, double ofCrown) {
        return Math.max(-0.68, Math.min(0.68, ofCluster + ofCrown));
    }

    private static double square(double a) {
        return a * a;
    }
}
