package loamline.desk.map;

import java.util.function.Consumer;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Pixels;
import loamline.scene.Run;
import loamline.scene.Type;

/** Draws signs of the scene at once on the screen: few and small ones, as the scale bar and those of a legend. */
final class ScreenCanvas implements Canvas {
    private static final String FAMILY = "DejaVu Sans Condensed";

    private final GraphicsContext graphics;

    /** @param graphics whose unit is a logical pixel */
    ScreenCanvas(GraphicsContext graphics) {
        this.graphics = graphics;
        graphics.setFillRule(FillRule.EVEN_ODD);
        graphics.setLineCap(StrokeLineCap.ROUND);
        graphics.setLineJoin(StrokeLineJoin.ROUND);
    }

    static Color color(Ink ink) {
        return Color.rgb(ink.red(), ink.green(), ink.blue(), ink.opacity());
    }

    /** The map's type at a size in pixels. */
    static Font font(double sizePx, boolean bold) {
        return Font.font(FAMILY, bold ? FontWeight.BOLD : FontWeight.NORMAL, sizePx);
    }

    @Override
    public void draw(Path path, Paint paint) {
        trace(path);
        paint.fill().ifPresent(ink -> {
            graphics.setFill(color(ink));
            graphics.fill();
        });
        paint.pen().ifPresent(this::stroke);
    }

    private void stroke(Pen pen) {
        graphics.setStroke(color(pen.ink()));
        graphics.setLineWidth(px(pen.widthMm()));
        graphics.setLineDashes(
                pen.dashMm().stream().mapToDouble(ScreenCanvas::px).toArray());
        graphics.stroke();
    }

    private void trace(Path path) {
        graphics.beginPath();
        for (Path.Step step : path.steps()) {
            if (step instanceof Path.Move move) {
                graphics.moveTo(px(move.to().x()), px(move.to().y()));
            } else if (step instanceof Path.Line line) {
                graphics.lineTo(px(line.to().x()), px(line.to().y()));
            } else if (step instanceof Path.Curve curve) {
                Point first = curve.control1();
                Point second = curve.control2();
                graphics.bezierCurveTo(
                        px(first.x()),
                        px(first.y()),
                        px(second.x()),
                        px(second.y()),
                        px(curve.to().x()),
                        px(curve.to().y()));
            } else {
                graphics.closePath();
            }
        }
    }

    @Override
    public void write(Run run) {
        double x = px(run.at().x());
        double y = px(run.at().y());
        graphics.setFont(font(px(run.type().sizeMm()), run.type().face() == Type.Face.BOLD));
        run.halo().ifPresent(ink -> {
            graphics.setStroke(color(ink));
            graphics.setLineDashes();
            graphics.setLineWidth(px(2 * Run.HALO_MM));
            graphics.strokeText(run.words(), x, y);
        });
        graphics.setFill(color(run.ink()));
        graphics.fillText(run.words(), x, y);
    }

    @Override
    public void shade(PaperRect window, Pixels pixels) {
        WritableImage image = new WritableImage(pixels.columns(), pixels.rows());
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        pixels.columns(),
                        pixels.rows(),
                        PixelFormat.getIntArgbInstance(),
                        pixels.argb(),
                        0,
                        pixels.columns());
        graphics.drawImage(image, px(window.leftMm()), px(window.topMm()), px(window.widthMm()), px(window.heightMm()));
    }

    @Override
    public void within(PaperRect window, Consumer<Canvas> drawing) {
        graphics.save();
        graphics.beginPath();
        graphics.rect(px(window.leftMm()), px(window.topMm()), px(window.widthMm()), px(window.heightMm()));
        graphics.clip();
        drawing.accept(this);
        graphics.restore();
    }

    private static double px(double mm) {
        return mm * Viewport.PX_PER_MM;
    }
}
