package loamline.desk.map;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import loamline.desk.tool.Guide;
import loamline.desk.tool.Guide.Style;
import loamline.geometry.Point;
import loamline.scene.Palette;
import loamline.scene.Role;

/** Draws guides. Every line has a casing in the panel's colour, so that it stands off any image. */
final class GuidePainter {
    private static final double LINE_PX = 1.5;
    private static final double CASING_PX = 4;
    private static final double CASING_OPACITY = 0.75;
    private static final double HALO_PX = 9;
    private static final double HALO_OPACITY = 0.35;
    private static final double SELECTED_PX = 2.5;
    private static final double FILL_OPACITY = 0.14;
    private static final double[] HELP_DASH = {5, 4};
    private static final double GRIP_PX = 4.5;
    private static final double MIDDLE_PX = 3.5;
    private static final double HOT_PX = 1.5;
    private static final double SNAP_PX = 7;
    private static final double WORDS_PX = 12;
    private static final double WORDS_HALO_PX = 4;
    private static final double WORDS_OFF_PX = 10;

    private final GraphicsContext graphics;
    private final Viewport viewport;
    private final Palette palette;

    GuidePainter(GraphicsContext graphics, Viewport viewport, Palette palette) {
        this.graphics = graphics;
        this.viewport = viewport;
        this.palette = palette;
        graphics.setLineCap(StrokeLineCap.ROUND);
        graphics.setLineJoin(StrokeLineJoin.ROUND);
        graphics.setFont(ScreenCanvas.font(WORDS_PX, true));
    }

    void draw(Guide guide) {
        if (guide instanceof Guide.Line line) {
            trace(line);
            paint(line.style(), line.closed());
        } else if (guide instanceof Guide.Circle circle) {
            ring(circle.centre(), circle.radiusM() / viewport.metresPerPx());
            paint(circle.style(), true);
        } else if (guide instanceof Guide.Grip grip) {
            grip(grip);
        } else if (guide instanceof Guide.Snap snap) {
            ring(snap.at(), SNAP_PX);
            paint(Style.DRAWN, false);
            words(snap.at(), snap.word());
        } else if (guide instanceof Guide.Words words) {
            words(words.at(), words.text());
        }
    }

    private void trace(Guide.Line line) {
        graphics.beginPath();
        for (int i = 0; i < line.points().size(); i++) {
            Point p = line.points().get(i);
            if (i == 0) {
                graphics.moveTo(viewport.xPx(p), viewport.yPx(p));
            } else {
                graphics.lineTo(viewport.xPx(p), viewport.yPx(p));
            }
        }
        if (line.closed()) {
            graphics.closePath();
        }
    }

    private void ring(Point at, double radiusPx) {
        graphics.beginPath();
        graphics.arc(viewport.xPx(at), viewport.yPx(at), radiusPx, radiusPx, 0, 360);
        graphics.closePath();
    }

    private void paint(Style style, boolean filled) {
        switch (style) {
            case DRAWN -> {
                if (filled) {
                    graphics.setFill(color(Role.ACCENT, FILL_OPACITY));
                    graphics.fill();
                }
                stroke(color(Role.PANEL, CASING_OPACITY), CASING_PX);
                stroke(color(Role.ACCENT, 1), LINE_PX);
            }
            case HELP -> {
                stroke(color(Role.PANEL, CASING_OPACITY), CASING_PX);
                stroke(color(Role.INFO, 1), LINE_PX, HELP_DASH);
            }
            case SELECTED -> {
                stroke(color(Role.SELECT, HALO_OPACITY), HALO_PX);
                stroke(color(Role.PANEL, CASING_OPACITY), SELECTED_PX + 2);
                stroke(color(Role.SELECT, 1), SELECTED_PX);
            }
        }
    }

    private void stroke(Color color, double widthPx, double... dashes) {
        graphics.setStroke(color);
        graphics.setLineWidth(widthPx);
        graphics.setLineDashes(dashes);
        graphics.stroke();
    }

    /** A corner is a square, the middle of a side a circle; the one to be dragged now is filled and larger. */
    private void grip(Guide.Grip grip) {
        double r = (grip.middle() ? MIDDLE_PX : GRIP_PX) + (grip.hot() ? HOT_PX : 0);
        if (grip.middle()) {
            ring(grip.at(), r);
        } else {
            graphics.beginPath();
            graphics.rect(crisp(viewport.xPx(grip.at())) - r, crisp(viewport.yPx(grip.at())) - r, 2 * r, 2 * r);
        }
        stroke(color(Role.PANEL, CASING_OPACITY), CASING_PX);
        graphics.setFill(color(grip.hot() ? Role.SELECT : Role.PANEL, 1));
        graphics.fill();
        stroke(color(Role.INK, 1), LINE_PX);
    }

    private static double crisp(double px) {
        return Math.floor(px) + 0.5;
    }

    private void words(Point at, String text) {
        double x = viewport.xPx(at) + WORDS_OFF_PX;
        double y = viewport.yPx(at) - WORDS_OFF_PX;
        graphics.setStroke(color(Role.PANEL, 0.9));
        graphics.setLineWidth(WORDS_HALO_PX);
        graphics.setLineDashes();
        graphics.strokeText(text, x, y);
        graphics.setFill(color(Role.INK, 1));
        graphics.fillText(text, x, y);
    }

    private Color color(Role role, double opacity) {
        return ScreenCanvas.color(palette.of(role).at(opacity));
    }
}
