package loamline.scene;

import java.util.function.Consumer;

/** Something to draw on. Lengths are millimetres on paper from its upper left corner; x right, y down. */
public interface Canvas {
    void draw(Path path, Paint paint);

    void write(Run run);

    /** Stretches cells over a window, colours running from the middle of one into the next. */
    void shade(PaperRect window, Pixels pixels);

    /** Draws with everything outside a window cut off. */
    void within(PaperRect window, Consumer<Canvas> drawing);
}
