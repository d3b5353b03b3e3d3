package loamline.desk.map;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import loamline.geometry.Point;
import loamline.scene.Legend;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.SceneOptions;
import loamline.units.UnitSystem;

/** What the colours on the ground mean: a swatch a step, its number beneath; and glare if there is any. */
final class AmountsLegend extends Canvas {
    private static final double STEP_PX = 30;
    /** The last number has its unit with it. */
    private static final double LAST_PX = 18;

    private static final double HEIGHT_PX = 32;
    private static final double LETTERS_PX = 11;
    private static final double WORDS_UP_PX = 3;

    AmountsLegend() {
        super(0, 0);
        setManaged(false);
    }

    void show(Found found, Palette palette, UnitSystem units, ScreenText text) {
        setManaged(found.amounts().isPresent());
        setVisible(found.amounts().isPresent());
        SceneOptions options =
                SceneOptions.usual(Legend.view(), text).with(palette).with(units);
        found.amounts().ifPresent(amounts -> {
            List<Legend.Entry> steps = amounts.shading(units).legend(options);
            boolean isGlare = !found.glare().isEmpty();
            setWidth(steps.size() * STEP_PX + LAST_PX);
            setHeight(isGlare ? 2 * HEIGHT_PX : HEIGHT_PX);
            GraphicsContext graphics = getGraphicsContext2D();
            graphics.clearRect(0, 0, getWidth(), getHeight());
            graphics.setFont(ScreenCanvas.font(LETTERS_PX, false));
            graphics.setFill(ScreenCanvas.color(palette.of(Role.INK)));
            drawSteps(graphics, steps);
            if (isGlare) {
                drawGlare(graphics, Legend.glare(options));
            }
        });
    }

    private static void drawSteps(GraphicsContext graphics, List<Legend.Entry> steps) {
        for (int i = 0; i < steps.size(); i++) {
            Legend.Entry step = steps.get(i);
            drawSample(graphics, step, i * STEP_PX, 0);
            boolean last = i == steps.size() - 1;
            graphics.fillText(
                    last ? step.words() : step.words().replaceAll(" .*", ""), i * STEP_PX, HEIGHT_PX - WORDS_UP_PX);
        }
    }

    /** In a row of its own, its word beside it. */
    private static void drawGlare(GraphicsContext graphics, Legend.Entry glare) {
        drawSample(graphics, glare, 0, HEIGHT_PX + WORDS_UP_PX);
        graphics.fillText(glare.words(), STEP_PX + WORDS_UP_PX, HEIGHT_PX + WORDS_UP_PX + LETTERS_PX);
    }

    private static void drawSample(GraphicsContext graphics, Legend.Entry entry, double x, double y) {
        graphics.save();
        graphics.translate(x, y);
        entry.sample().paint(new ScreenCanvas(graphics), new Point(0, 0));
        graphics.restore();
    }
}
