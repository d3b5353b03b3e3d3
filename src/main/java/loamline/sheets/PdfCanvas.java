package loamline.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import loamline.geometry.Point;
import loamline.scene.Canvas;
import loamline.scene.Ink;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Pixels;
import loamline.scene.Run;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Draws on a page of a PDF: paths as paths, words as words. */
final class PdfCanvas implements Canvas {
    private static final double PT_PER_MM = 72 / 25.4;
    private static final int ROUND = 1;
    private static final int BUTT = 0;

    private final PDPageContentStream out;
    private final PdfResources resources;
    private final double heightMm;

    /** @param heightMm of the page */
    PdfCanvas(PDPageContentStream out, PdfResources resources, double heightMm) {
        this.out = out;
        this.resources = resources;
        this.heightMm = heightMm;
    }

    @Override
    public void draw(Path path, Paint paint) {
        if (path.isEmpty()) {
            return;
        }
        try {
            if (paint.fill().isPresent()) {
                fill(paint.fill().get());
                trace(path);
                out.fillEvenOdd();
            }
            if (paint.pen().isPresent()) {
                take(paint.pen().get());
                trace(path);
                out.stroke();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void write(Run run) {
        String words = resources.fonts().printable(run.words(), run.type().face());
        if (words.isBlank()) {
            return;
        }
        try {
            if (run.halo().isPresent()) {
                Path letters = resources.fonts().letters(run.words(), run.type(), run.at());
                draw(letters, Paint.line(Pen.solid(run.halo().get(), 2 * Run.HALO_MM)));
            }
            fill(run.ink());
            out.beginText();
            out.setFont(resources.font(run.type().face()), (float) run.type().sizePt());
            out.newLineAtOffset(x(run.at()), y(run.at()));
            out.showText(words);
            out.endText();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void within(PaperRect window, Consumer<Canvas> drawing) {
        try {
            out.saveGraphicsState();
            trace(window.path());
            out.clip();
            drawing.accept(this);
            out.restoreGraphicsState();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void shade(PaperRect window, Pixels pixels) {
        try {
            PDImageXObject image = resources.image(pixels);
            image.setInterpolate(true);
            out.setGraphicsStateParameters(resources.opacity(1));
            out.drawImage(
                    image,
                    x(window.corner()),
                    y(new Point(window.leftMm(), window.bottomMm())),
                    (float) (window.widthMm() * PT_PER_MM),
                    (float) (window.heightMm() * PT_PER_MM));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fill(Ink ink) throws IOException {
        out.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
        opacity(ink.opacity());
    }

    private void take(Pen pen) throws IOException {
        Ink ink = pen.ink();
        out.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
        opacity(ink.opacity());
        out.setLineWidth((float) (pen.widthMm() * PT_PER_MM));
        out.setLineJoinStyle(ROUND);
        out.setLineCapStyle(pen.dashMm().isEmpty() ? ROUND : BUTT);
        float[] dash = new float[pen.dashMm().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (pen.dashMm().get(i) * PT_PER_MM);
        }
        out.setLineDashPattern(dash, 0);
    }

    private void opacity(double opacity) throws IOException {
        out.setGraphicsStateParameters(resources.opacity(opacity));
    }

    private float x(Point mm) {
        return (float) (mm.x() * PT_PER_MM);
    }

    private float y(Point mm) {
        return (float) ((heightMm - mm.y()) * PT_PER_MM);
    }

    private void trace(Path path) throws IOException {
        for (Path.Step step : path.steps()) {
            if (step instanceof Path.Move move) {
                out.moveTo(x(move.to()), y(move.to()));
            } else if (step instanceof Path.Line line) {
                out.lineTo(x(line.to()), y(line.to()));
            } else if (step instanceof Path.Curve curve) {
                out.curveTo(
                        x(curve.control1()),
                        y(curve.control1()),
                        x(curve.control2()),
                        y(curve.control2()),
                        x(curve.to()),
                        y(curve.to()));
            } else {
                out.closePath();
            }
        }
    }
}
