package loamline.desk.trace;

import java.awt.Rectangle;
import java.util.List;
import java.util.stream.Stream;
import loamline.geometry.Box;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.tracing.Pixel;
import loamline.yard.Backdrop;

/**
 * The part of an image that is looked at, perhaps every other pixel only.
 *
 * @param part in pixels of the image
 * @param step pixels of the image to one of the window, both ways
 * @param placement of the image
 */
record PixelWindow(Rectangle part, int step, Backdrop.Placement placement) {
    /** Pixels of a window at most; more add time and no outline. */
    static final int MOST_PIXELS = 4_000_000;

    /** Ground shown round the clicks on a large image where no property line tells more, m. */
    private static final double ROUND_CLICKS_M = 40;

    /** Ground shown beyond the property line, m. */
    private static final double BEYOND_LOT_M = 2;

    /**
     * The window for some clicks: the whole image if it is small, else the lot if it holds them all, else the ground
     * round them.
     *
     * @param lot box of the property line; no size if there is none
     */
    static PixelWindow of(Backdrop image, List<Box> lot, List<Point> clicks) {
        Rectangle whole = new Rectangle(image.widthPx(), image.heightPx());
        if ((long) image.widthPx() * image.heightPx() <= MOST_PIXELS) {
            return new PixelWindow(whole, 1, image.placement());
        }
        Box ground = lot.stream()
                .filter(box -> clicks.stream().allMatch(box::contains))
                .map(box -> box.grown(BEYOND_LOT_M))
                .findFirst()
                .orElseGet(() -> Box.around(clicks.stream()).orElseThrow().grown(ROUND_CLICKS_M));
        Box pixels = Box.around(ground.outline().vertices().map(image.placement()::pixel))
                .orElseThrow();
        Rectangle part = new Rectangle(
                        (int) Math.floor(pixels.minX()),
                        (int) Math.floor(pixels.minY()),
                        (int) Math.ceil(pixels.widthM()) + 1,
                        (int) Math.ceil(pixels.heightM()) + 1)
                .intersection(whole);
        int step = (int) Math.ceil(Math.sqrt(Math.max(1, (double) part.width * part.height / MOST_PIXELS)));
        return new PixelWindow(part, step, image.placement());
    }

    int width() {
        return (part.width + step - 1) / step;
    }

    int height() {
        return (part.height + step - 1) / step;
    }

    boolean isEmpty() {
        return part.isEmpty();
    }

    /** An outline on the ground in pixels of the window. */
    Outline onWindow(Outline ground) {
        return ground.map(this::onWindow);
    }

    private Point onWindow(Point ground) {
        Point p = placement.pixel(ground);
        return new Point((p.x() - part.x) / step, (p.y() - part.y) / step);
    }

    Outline onGround(Outline window) {
        return window.map(p -> placement.ground(new Point(part.x + step * p.x(), part.y + step * p.y())));
    }

    /** Whether all places lie on the window. */
    boolean holds(List<Point> ground) {
        return pixels(ground).size() == ground.size();
    }

    /** The pixels of the places that lie on the window. */
    List<Pixel> pixels(List<Point> ground) {
        Stream<Pixel> all = ground.stream()
                .map(this::onWindow)
                .map(p -> new Pixel((int) Math.floor(p.x()), (int) Math.floor(p.y())));
        return all.filter(p -> p.x() >= 0 && p.x() < width() && p.y() >= 0 && p.y() < height())
                .toList();
    }

    /** Side of one of its pixels, m. */
    double pixelM() {
        return step * placement.pixelM();
    }
}
