package loamline.sheets;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.scene.Ink;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Pixels;

/** The bridge to Java2D: our values in, its values out. */
final class Awt {
    private Awt() {}

    static Color color(Ink ink) {
        return new Color(ink.red(), ink.green(), ink.blue(), (int) Math.rint(255 * ink.opacity()));
    }

    static Stroke stroke(Pen pen) {
        float width = (float) pen.widthMm();
        if (pen.dashMm().isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] dash = new float[pen.dashMm().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = pen.dashMm().get(i).floatValue();
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
    }

    /** Cells as an image whose colours can be mixed with nothing at its edges. */
    static BufferedImage image(Pixels pixels) {
        BufferedImage image = new BufferedImage(pixels.columns(), pixels.rows(), BufferedImage.TYPE_INT_ARGB_PRE);
        image.setRGB(0, 0, pixels.columns(), pixels.rows(), pixels.argb(), 0, pixels.columns());
        return image;
    }

    static Path2D path(Path path) {
        Path2D drawn = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Path.Step step : path.steps()) {
            if (step instanceof Path.Move move) {
                drawn.moveTo(move.to().x(), move.to().y());
            } else if (step instanceof Path.Line line) {
                drawn.lineTo(line.to().x(), line.to().y());
            } else if (step instanceof Path.Curve curve) {
                drawn.curveTo(
                        curve.control1().x(),
                        curve.control1().y(),
                        curve.control2().x(),
                        curve.control2().y(),
                        curve.to().x(),
                        curve.to().y());
            } else {
                drawn.closePath();
            }
        }
        return drawn;
    }

    /** The outline of a letter as our path; its quadratic curves become cubic ones of the same shape. */
    static Path path(PathIterator letter) {
        List<Path.Step> steps = new ArrayList<>();
        double[] c = new double[6];
        Point last = new Point(0, 0);
        for (; !letter.isDone(); letter.next()) {
            int step = letter.currentSegment(c);
            Point first = new Point(c[0], c[1]);
            if (step == PathIterator.SEG_QUADTO) {
                Point to = new Point(c[2], c[3]);
                steps.add(new Path.Curve(last.towards(first, 2 / 3.0), to.towards(first, 2 / 3.0), to));
                last = to;
            } else if (step == PathIterator.SEG_CLOSE) {
                steps.add(new Path.Close());
            } else {
                steps.add(step == PathIterator.SEG_MOVETO ? new Path.Move(first) : new Path.Line(first));
                last = first;
            }
        }
        return new Path(steps);
    }
}
