package loamline.desk.map;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import loamline.geometry.Point;
import loamline.scene.Legend;
import loamline.scene.Palette;
import loamline.scene.Role;
import loamline.scene.SceneOptions;
import loamline.scene.Shading;
import loamline.units.UnitSystem;

/** What the colours on the ground mean: a swatch a step, its number beneath. */
final class AmountsLegend extends Canvas {
    private static final double STEP_PX = 30;
    /** The last number has its unit with it. */
    private static final double LAST_PX = 18;

    private static final double HEIGHT_PX = 32;
    private static final double LETTERS_PX = 11;

    AmountsLegend() {
        super(0, 0);
        setManaged(false);
    }

    void show(Found found, Palette palette, UnitSystem units, ScreenText text) {
        setManaged(found.amounts().isPresent());
        setVisible(found.amounts().isPresent());
        found.amounts().ifPresent(amounts -> draw(amounts.shading(units), palette, units, text));
    }

    private void draw(Shading shading, Palette palette, UnitSystem units, ScreenText text) {
        List<Legend.Entry> entries = shading.legend(
                SceneOptions.usual(Legend.view(), text).with(palette).with(units));
        setWidth(entries.size() * STEP_PX + LAST_PX);
        setHeight(HEIGHT_PX);
        GraphicsContext graphics = getGraphicsContext2D();
        graphics.clearRect(0, 0, getWidth(), HEIGHT_PX);
        graphics.setFont(ScreenCanvas.font(LETTERS_PX, false));
        for (int i = 0; i < entries.size(); i++) {
            Legend.Entry entry = entries.get(i);
            graphics.save();
            graphics.translate(i * STEP_PX, 0);
            entry.sample().paint(new ScreenCanvas(graphics), new Point(0, 0));
            graphics.restore();
            graphics.setFill(ScreenCanvas.color(palette.of(Role.INK)));
            boolean last = i == entries.size() - 1;
            String words = last ? entry.words() : entry.words().replaceAll(" .*", "");
            graphics.fillText(words, i * STEP_PX, HEIGHT_PX - 3);
        }
    }
}
