package loamline.demo;

import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Polyline;
import loamline.geometry.Region;
import loamline.yard.Barrier;
import loamline.yard.Cover;
import loamline.yard.Feature;
import loamline.yard.Kind;
import loamline.yard.Tree;
import loamline.yard.Trouble;
import loamline.yard.Turf;

/** Paints the aerial picture of a yard that nobody owns. The same yard always gives the same pixels. */
final class AerialPainter {
    /** Colours keep this step, of 256: it hides in the grain and makes the file half as large. */
    private static final int COLOUR_STEP = 4;

    private static final double DECK_HEIGHT_M = 0.5;
    private static final double POST_M = 0.16;
    private static final double POST_SPACING_M = 2.4;

    private final DemoYard demo;
    private final Plate plate;
    private final Noise noise;
    private final Lawn lawn;
    private final Textures textures;
    private final Crowns crowns;

    private AerialPainter(DemoYard demo, Plate plate) {
        this.demo = demo;
        this.plate = plate;
        noise = new Noise(demo.scenery().seed());
        lawn = new Lawn(noise);
        textures = new Textures(noise);
        crowns = new Crowns(plate, noise, new SplittableRandom(demo.scenery().seed()));
    }

    /**
     * The picture.
     *
     * @param toPixel from the yard's plane to columns and rows
     */
    static BufferedImage paint(DemoYard demo, int width, int height, AffineTransform toPixel) {
        AerialPainter painter = new AerialPainter(demo, new Plate(width, height, toPixel));
        painter.paintGround();
        painter.paintTall();
        new Sunlight(
                        painter.plate,
                        demo.scenery().sunAzimuthDeg(),
                        demo.scenery().sunElevationDeg())
                .shine();
        return painter.exposed();
    }

    private Stream<Feature> features() {
        return Stream.concat(demo.scenery().beyond().stream(), demo.yard().features().stream());
    }

    private <T extends Feature> Stream<T> all(Class<T> sort) {
        return features().filter(sort::isInstance).map(sort::cast);
    }

    private void paintGround() {
        all(Turf.class)
                .forEach(turf -> plate.fill(
                        turf.outline(), lawn.of(turf, demo.yard().features().contains(turf))));
        all(Trouble.class).forEach(this::paintTrouble);
        all(Cover.class).forEach(this::paintCover);
    }

    /** A trouble spot frays at its edge. */
    private void paintTrouble(Trouble trouble) {
        Region inside = Region.of(trouble.outline());
        Plate.PixelTask lay = plate.lay(lawn.bad(trouble.note()));
        Outline reach = inside.buffer(0.6).outline();
        plate.each(Plate.path(reach), (pixel, x, y, share) -> {
            double depth = Rings.distanceM(trouble.outline(), x, y) * (inside.covers(new Point(x, y)) ? 1 : -1);
            double bad = 0.35 + 0.55 * depth + 0.9 * noise.octaves(x / 0.9, y / 0.9, 4);
            lay.at(pixel, x, y, (float) Math.max(0, Math.min(0.9, bad)));
        });
    }

    private void paintCover(Cover cover) {
        Material material = demo.scenery().materials().getOrDefault(cover.name(), usual(cover.cover()));
        plate.fill(cover.outline(), textures.of(material, cover.outline()));
        cover.outline().rings().forEach(ring -> paintEdge(ring, material));
        if (cover.cover() == Kind.BED) {
            crowns.shrubs(cover.outline());
        }
        if (cover.cover() == Kind.DECK) {
            plate.lift(cover.outline(), DECK_HEIGHT_M);
        }
    }

    /** Grass is cut off sharply where something else begins. */
    private void paintEdge(List<Point> ring, Material material) {
        List<Point> closed =
                Stream.concat(ring.stream(), Stream.of(ring.get(0))).toList();
        Plate.PixelTask lay = plate.lay((x, y, rgb) -> Texture.set(rgb, 0x4A4530, 1));
        float strength = material == Material.GRAVEL ? 0.15f : 0.35f;
        plate.each(Plate.stroke(closed, 0.1), (pixel, x, y, share) -> lay.at(pixel, x, y, strength * share));
    }

    private static Material usual(Kind cover) {
        return switch (cover) {
            case BED -> Material.MULCH;
            case GRAVEL -> Material.GRAVEL;
            case WATER -> Material.WATER;
            case DECK -> Material.DECK;
            default -> Material.CONCRETE;
        };
    }

    private void paintTall() {
        all(Barrier.class).forEach(this::paintBarrier);
        Roofs roofs = new Roofs(plate, noise);
        demo.scenery().roofs().forEach(roofs::draw);
        demo.scenery().cars().forEach(car -> car.park(plate));
        all(Tree.class).forEach(crowns::tree);
    }

    /** A fence that lets light through is mesh on posts: no shade worth painting. */
    private void paintBarrier(Barrier barrier) {
        boolean wall = barrier.barrier() == Kind.WALL;
        Texture texture = wall
                ? (x, y, rgb) -> Texture.set(rgb, 0x9A9386, 0.9 + 0.3 * noise.at(x * 4, y * 4))
                : (x, y, rgb) -> Texture.set(rgb, 0xB09C80, 1 + 0.2 * noise.at(x * 6, y * 6));
        for (Polyline stretch : barrier.closedStretches()) {
            double heightM = barrier.solid() ? barrier.heightM() : 0;
            plate.raise(stretch.points(), wall ? 0.4 : barrier.solid() ? 0.13 : 0.08, heightM, texture);
            for (double alongM = 0; alongM <= stretch.lengthM() && !wall; alongM += POST_SPACING_M) {
                paintPost(stretch.at(alongM), barrier.heightM());
            }
        }
    }

    private void paintPost(Point foot, double heightM) {
        List<Point> square = List.of(foot.plus(-POST_M / 2, 0), foot.plus(POST_M / 2, 0));
        plate.raise(square, POST_M, heightM + 0.1, (x, y, rgb) -> Texture.set(rgb, 0xA5947C, 1));
    }

    /** A lens that is not quite sharp, a little haze, the camera's grain, and bytes. */
    private BufferedImage exposed() {
        float[] blurred = Blur.once(plate.rgb, plate.width, 3);
        BufferedImage image = new BufferedImage(plate.width, plate.height, BufferedImage.TYPE_INT_RGB);
        for (int pixel = 0; pixel < plate.width * plate.height; pixel++) {
            double grain = 0.028 * (noise.of(pixel, 5) + noise.of(pixel, 6) - 1);
            int packed = 0;
            for (int band = 0; band < 3; band++) {
                double value =
                        0.04 + 1.08 * (0.65 * plate.rgb[3 * pixel + band] + 0.35 * blurred[3 * pixel + band]) + grain;
                long step = Math.round(255 * value / COLOUR_STEP) * COLOUR_STEP;
                packed = packed << 8 | (int) Math.max(0, Math.min(255, step));
            }
            image.setRGB(pixel % plate.width, pixel / plate.width, packed);
        }
        return image;
    }
}
