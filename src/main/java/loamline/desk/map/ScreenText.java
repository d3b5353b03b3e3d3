package loamline.desk.map;

import javafx.scene.text.Text;
import loamline.scene.TextMeasure;
import loamline.scene.Type;

/** Measures words in the screen's fonts. */
final class ScreenText implements TextMeasure {
    /** Height of a capital and reach of a tail below the baseline, in ems (from the family's outlines). */
    private static final double CAP_EMS = 0.73;

    private static final double TAIL_EMS = 0.22;

    @Override
    public double widthMm(String words, Type type) {
        Text text = new Text(words);
        text.setFont(ScreenCanvas.font(type.sizeMm() * Viewport.PX_PER_MM, type.face() == Type.Face.BOLD));
        return text.getLayoutBounds().getWidth() / Viewport.PX_PER_MM;
    }

    @Override
    public double capHeightMm(Type type) {
        return CAP_EMS * type.sizeMm();
    }

    @Override
    public double depthMm(Type type) {
        return TAIL_EMS * type.sizeMm();
    }
}
