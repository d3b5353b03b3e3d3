package loamline.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;

/** The picture in the making: for each pixel its colour in full sun, its height and which way it leans. */
final class Plate {
    /** What shows in the seams of outlines that only touch. */
    private static final float[] GREEN = {0.4f, 0.48f, 0.3f};

    final int width;
    final int height;

    /** Red, green, blue of every pixel, 0 to 1. */
    final float[] rgb;

    /** Height above the ground, m. */
    final float[] aboveM;

    /** Height from which on down light passes below, m: the underside of a crown; 0 where things are solid. */
    final float[] belowM;

    /** Eastward and northward part of the unit normal of every pixel. */
    final float[] leanX;

    final float[] leanY;

    private final AffineTransform toPixel;
    private final AffineTransform toYard;

    /** @param toPixel from the yard's plane to columns and rows */
    Plate(int width, int height, AffineTransform toPixel) {
        this.width = width;
        this.height = height;
        this.toPixel = toPixel;
        try {
            this.toYard = toPixel.createInverse();
        } catch (NoninvertibleTransformException e) {
            throw new IllegalArgumentException("a picture needs pixels of some size", e);
        }
        rgb = new float[3 * width * height];
        for (int pixel = 0; pixel < width * height; pixel++) {
            paint(pixel, GREEN);
        }
        aboveM = new float[width * height];
        belowM = new float[width * height];
        leanX = new float[width * height];
        leanY = new float[width * height];
    }

    /** What is done with a pixel: its index, the middle of it in the yard's plane, and how much of it counts. */
    @FunctionalInterface
    interface PixelTask {
        void at(int pixel, double x, double y, float share);
    }

    /** Side of a pixel, m. */
    double pixelM() {
        return Math.sqrt(Math.abs(toYard.getDeterminant()));
    }

    /** A direction of the yard's plane in pixels; metres in, columns and rows out. */
    double[] direction(double dx, double dy) {
        double[] d = {dx, dy};
        toPixel.deltaTransform(d, 0, d, 0, 1);
        return d;
    }

    /** Lays a texture over an outline. */
    void fill(Outline outline, Texture texture) {
        each(path(outline), lay(texture));
    }

    /** Lays a texture along a line and raises it. */
    void raise(List<Point> line, double widthM, double heightM, Texture texture) {
        PixelTask colour = lay(texture);
        each(stroke(line, widthM), (pixel, x, y, share) -> {
            colour.at(pixel, x, y, share);
            if (share > 0.5f) {
                aboveM[pixel] = (float) heightM;
            }
        });
    }

    /** The task that blends a texture in. */
    PixelTask lay(Texture texture) {
        float[] colour = new float[3];
        return (pixel, x, y, share) -> {
            texture.at(x, y, colour);
            for (int band = 0; band < 3; band++) {
                rgb[3 * pixel + band] += share * (colour[band] - rgb[3 * pixel + band]);
            }
        };
    }

    /** Gives a pixel a colour. */
    void paint(int pixel, float[] colour) {
        System.arraycopy(colour, 0, rgb, 3 * pixel, 3);
    }

    /** Raises the ground within an outline. */
    void lift(Outline outline, double heightM) {
        each(path(outline), (pixel, x, y, share) -> {
            if (share >= 0.5f) {
                aboveM[pixel] = (float) heightM;
            }
        });
    }

    /** Visits every pixel that a shape of the yard's plane touches, row by row. */
    void each(Shape shape, PixelTask task) {
        Shape drawn = toPixel.createTransformedShape(shape);
        Rectangle box = drawn.getBounds();
        box.grow(1, 1);
        box = box.intersection(new Rectangle(width, height));
        if (box.isEmpty()) {
            return;
        }
        byte[] shares = shares(drawn, box);
        double[] at = new double[2];
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] != 0) {
                int column = box.x + i % box.width;
                int row = box.y + i / box.width;
                at[0] = column + 0.5;
                at[1] = row + 0.5;
                toYard.transform(at, 0, at, 0, 1);
                task.at(row * width + column, at[0], at[1], (shares[i] & 255) / 255f);
            }
        }
    }

    private static byte[] shares(Shape drawn, Rectangle box) {
        BufferedImage mask = new BufferedImage(box.width, box.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = mask.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(-box.x, -box.y);
        graphics.setColor(Color.WHITE);
        graphics.fill(drawn);
        graphics.dispose();
        return ((DataBufferByte) mask.getRaster().getDataBuffer()).getData();
    }

    /** An outline for Java2D. */
    static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        outline.rings().forEach(ring -> {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
            path.closePath();
        });
        return path;
    }

    /** A line of some width for Java2D. */
    static Shape stroke(List<Point> line, double widthM) {
        Path2D path = new Path2D.Double();
        path.moveTo(line.get(0).x(), line.get(0).y());
        line.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        return new BasicStroke((float) widthM, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER).createStrokedShape(path);
    }
}
