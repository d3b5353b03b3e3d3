package loamline.sheets;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.function.Consumer;
import loamline.scene.Canvas;
import loamline.scene.Paint;
import loamline.scene.PaperRect;
import loamline.scene.Path;
import loamline.scene.Pen;
import loamline.scene.Pixels;
import loamline.scene.Run;

/** Draws on an image. Letters are drawn as outlines, so no font of the machine has a say. */
final class ImageCanvas implements Canvas {
    private final Graphics2D graphics;
    private final Fonts fonts;

    /** @param graphics scaled so that its unit is a millimetre */
    ImageCanvas(Graphics2D graphics, Fonts fonts) {
        this.graphics = graphics;
        this.fonts = fonts;
    }

    @Override
    public void draw(Path path, Paint paint) {
        Path2D drawn = Awt.path(path);
        paint.fill().ifPresent(ink -> {
            graphics.setColor(Awt.color(ink));
            graphics.fill(drawn);
        });
        paint.pen().ifPresent(pen -> {
            graphics.setColor(Awt.color(pen.ink()));
            graphics.setStroke(Awt.stroke(pen));
            graphics.draw(drawn);
        });
    }

    @Override
    public void write(Run run) {
        Path letters = fonts.letters(run.words(), run.type(), run.at());
        run.halo().ifPresent(ink -> draw(letters, Paint.line(Pen.solid(ink, 2 * Run.HALO_MM))));
        draw(letters, Paint.fill(run.ink()));
    }

    @Override
    public void shade(PaperRect window, Pixels pixels) {
        Graphics2D smooth = (Graphics2D) graphics.create();
        smooth.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        smooth.translate(window.leftMm(), window.topMm());
        smooth.scale(window.widthMm() / pixels.columns(), window.heightMm() / pixels.rows());
        smooth.drawImage(Awt.image(pixels), 0, 0, null);
        smooth.dispose();
    }

    @Override
    public void within(PaperRect window, Consumer<Canvas> drawing) {
        Graphics2D cut = (Graphics2D) graphics.create();
        cut.clip(Awt.path(window.path()));
        drawing.accept(new ImageCanvas(cut, fonts));
        cut.dispose();
    }
}
