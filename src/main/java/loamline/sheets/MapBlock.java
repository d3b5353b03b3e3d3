package loamline.sheets;

import loamline.scene.Canvas;
import loamline.scene.PaperRect;
import loamline.scene.Scene;

/**
 * A map with its furniture.
 *
 * @param scene fills the furniture's window of the room it is drawn in
 * @param denominator of its scale
 */
record MapBlock(Scene scene, int denominator, Furniture furniture) implements Block {
    /** The height of the map alone; a map is given its room. */
    @Override
    public double heightMm(double widthMm) {
        return scene.view().paper().heightMm();
    }

    @Override
    public void draw(Canvas canvas, PaperRect room) {
        scene.paint(canvas, furniture.window(room).corner());
        furniture.draw(canvas, room, scene.view(), denominator);
    }
}
