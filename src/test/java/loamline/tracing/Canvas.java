package loamline.tracing;

import java.util.List;
import java.util.stream.IntStream;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.geometry.Region;
import loamline.raster.GridSpec;
import loamline.raster.Mask;

/** A small painter for pictures whose outlines are known: colours in linear light, edges smooth. */
final class Canvas {
    /** Samples along a side of a pixel. */
    private static final int SAMPLES = 4;

    private static final double WHOLE = SAMPLES * SAMPLES;

    final int width;
    final int height;
    private final double[] light;

    Canvas(int width, int height) {
        this.width = width;
        this.height = height;
        this.light = new double[3 * width * height];
    }

    /** The light of a pixel before shade: colour times brightness. */
    @FunctionalInterface
    interface Paint {
        double brightness(int x, int y);
    }

    /** Even ground with grain. */
    static Paint grain(double share, long seed) {
        return (x, y) -> 1 + share * noise(x, y, seed);
    }

    /** A lawn: grain, soft patches, and mowing stripes that run diagonally. */
    static Paint mown(long seed) {
        return (x, y) -> 1
                + 0.15 * noise(x, y, seed)
                + 0.08 * Math.sin(x / 17.0 + Math.sin(y / 11.0)) * Math.cos(y / 19.0)
                + (Math.floorMod(x + 2 * y, 40) < 20 ? 0.06 : -0.06);
    }

    /** A crown: coarse clumps of light and dark. */
    static Paint leaves(long seed) {
        return (x, y) -> 0.7 + 0.35 * noise(x / 3, y / 3, seed) + 0.15 * noise(x, y, seed + 1);
    }

    /** Slabs with dark joints. */
    static Paint slabs(int side, long seed) {
        return (x, y) -> (x % side == 0 || y % side == 0 ? 0.75 : 1) + 0.03 * noise(x, y, seed);
    }

    /** Rows of shingles. */
    static Paint shingles(double tone, long seed) {
        return (x, y) -> tone * ((y % 5 == 0 ? 0.85 : 1) + 0.08 * noise(x / 4, y / 5, seed));
    }

    /** A fixed random number for a place, -1 to 1, by the finishing steps of SplitMix64. */
    static double noise(int x, int y, long seed) {
        long z = seed * 0x9E3779B97F4A7C15L + x * 0xD1342543DE82EF95L + y * 0xAF251AF3B0F025B5L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-52 - 1;
    }

    /** Paints ground with a colour, 0xRRGGBB. */
    Canvas fill(Outline outline, int rgb, Paint paint) {
        int[] shares = shares(outline);
        for (int i = 0; i < light.length; i++) {
            int pixel = i / 3;
            if (shares[pixel] > 0) {
                double colour = linear(rgb >> (16 - 8 * (i % 3)) & 255);
                int row = pixel / width;
                double painted = colour * Math.max(0, paint.brightness(pixel % width, row));
                light[i] += shares[pixel] / WHOLE * (painted - light[i]);
            }
        }
        return this;
    }

    /** Leaves a share of the light. */
    Canvas shade(Outline outline, double left) {
        int[] shares = shares(outline);
        for (int i = 0; i < light.length; i++) {
            light[i] *= 1 - (1 - left) * shares[i / 3] / WHOLE;
        }
        return this;
    }

    /** How many of its samples each pixel has inside. */
    private int[] shares(Outline outline) {
        GridSpec samples = new GridSpec(0, 0, 1.0 / SAMPLES, SAMPLES * width, SAMPLES * height);
        int[] shares = new int[width * height];
        for (int index : Mask.of(samples, Region.of(outline)).indexes()) {
            int row = index / samples.columns() / SAMPLES;
            shares[row * width + index % samples.columns() / SAMPLES]++;
        }
        return shares;
    }

    int[] pixels() {
        int[] argb = new int[width * height];
        for (int i = 0; i < argb.length; i++) {
            argb[i] = 0xFF000000 | srgb(light[3 * i]) << 16 | srgb(light[3 * i + 1]) << 8 | srgb(light[3 * i + 2]);
        }
        return argb;
    }

    Picture picture() {
        return Picture.of(width, height, pixels());
    }

    private static double linear(int value) {
        double c = value / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int srgb(double light) {
        double c = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.max(0, Math.min(1, c)));
    }

    static Outline box(double left, double top, double right, double bottom) {
        return Outline.of(left, top, right, top, right, bottom, left, bottom);
    }

    static Outline oval(double x, double y, double radiusX, double radiusY) {
        return Outline.of(IntStream.range(0, 24)
                .mapToObj(i ->
                        new Point(x + radiusX * Math.cos(i * Math.PI / 12), y + radiusY * Math.sin(i * Math.PI / 12)))
                .toList());
    }

    /** An outline turned about a point. */
    static Outline turned(Outline outline, double degrees, Point about) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return outline.map(p -> new Point(
                about.x() + (p.x() - about.x()) * cos - (p.y() - about.y()) * sin,
                about.y() + (p.x() - about.x()) * sin + (p.y() - about.y()) * cos));
    }

    /** Intersection over union with the truth. */
    static double iou(Outline found, Region truth) {
        Region region = Region.of(found);
        return region.intersection(truth).areaM2() / region.union(truth).areaM2();
    }

    static int vertices(Outline outline) {
        return (int) outline.vertices().count();
    }

    /** The most vertices that count as few for a true outline. */
    static int few(Outline... truth) {
        return 4 + 2 * List.of(truth).stream().mapToInt(Canvas::vertices).sum();
    }
}
