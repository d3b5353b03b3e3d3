package loamline.sheets;

import loamline.scene.Canvas;
import loamline.scene.PaperRect;

/** A part of a page. Lengths are millimetres on paper. */
interface Block {
    /** How high it is at a width. */
    double heightMm(double widthMm);

    /** Draws it in a room that is at least as high as it needs. */
    void draw(Canvas canvas, PaperRect room);
}
