package loamline.scene;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loamline.geometry.Point;

/**
 * A map ready to be painted.
 *
 * @param view what it shows; marks may reach beyond and are cut off when painted
 * @param layers marks in the order in which they are painted; a layer that holds nothing is left out
 */
public record Scene(View view, Map<Layer, List<Mark>> layers) {
    public Scene {
        EnumMap<Layer, List<Mark>> copy = new EnumMap<>(Layer.class);
        layers.forEach((layer, marks) -> copy.put(layer, List.copyOf(marks)));
        layers = Collections.unmodifiableMap(copy);
    }

    /** The marks of a layer, none if it is not there. */
    public List<Mark> layer(Layer layer) {
        return layers.getOrDefault(layer, List.of());
    }

    /** All marks in the order in which they are painted. */
    public Stream<Mark> marks() {
        return layers.values().stream().flatMap(List::stream);
    }

    /**
     * Paints the scene, cut to its view.
     *
     * @param corner where on the canvas the view's upper left corner goes, mm
     */
    public void paint(Canvas canvas, Point corner) {
        PaperRect window = view.paper().moved(corner.x(), corner.y());
        canvas.within(window, inside -> marks().forEach(mark -> paint(mark, view, inside, corner)));
    }

    /** Paints one mark of a view whose upper left corner goes to a point of the canvas; nothing is cut. */
    public static void paint(Mark mark, View view, Canvas canvas, Point corner) {
        if (mark instanceof Mark.Drawn drawn) {
            canvas.draw(drawn.path().map(p -> view.onPaper(p).plus(corner.x(), corner.y())), drawn.paint());
        } else if (mark instanceof Mark.Stamp stamp) {
            Point at = view.onPaper(stamp.at()).plus(corner.x(), corner.y());
            canvas.draw(stamp.path().map(p -> p.plus(at.x(), at.y())), stamp.paint());
        } else if (mark instanceof Mark.Shade shade) {
            Point northWest =
                    view.onPaper(new Point(shade.ground().minX(), shade.ground().maxY()));
            double widthMm = shade.ground().widthM() / view.metresPerMm();
            double heightMm = shade.ground().heightM() / view.metresPerMm();
            PaperRect window = new PaperRect(northWest.x(), northWest.y(), widthMm, heightMm);
            canvas.shade(window.moved(corner.x(), corner.y()), shade.pixels());
        } else if (mark instanceof Mark.Words words) {
            Point at = view.onPaper(words.at()).plus(corner.x(), corner.y());
            canvas.write(words.run().moved(at.x(), at.y()));
        }
    }
}
