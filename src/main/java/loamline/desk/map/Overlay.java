package loamline.desk.map;

import java.util.List;
import javafx.scene.canvas.Canvas;
import loamline.desk.tool.Guide;
import loamline.scene.Palette;

/** Guides over the picture, drawn at once. With nothing to draw it is hidden, and costs nothing. */
final class Overlay extends Canvas {
    private boolean drawn;

    Overlay() {
        setManaged(false);
        setMouseTransparent(true);
    }

    void show(List<Guide> guides, Viewport viewport, Palette palette) {
        if (drawn) {
            getGraphicsContext2D().clearRect(0, 0, getWidth(), getHeight());
        }
        drawn = !guides.isEmpty();
        setVisible(drawn);
        if (drawn) {
            GuidePainter painter = new GuidePainter(getGraphicsContext2D(), viewport, palette);
            guides.forEach(painter::draw);
        }
    }
}
