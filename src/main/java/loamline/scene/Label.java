package loamline.scene;

import java.util.List;
import loamline.geometry.Point;

/**
 * Words that look for a place on the map.
 *
 * @param rank who chooses first; 0 before 1
 * @param forms ways to set it, the best first; each one or more lines, set one below the other, centred
 * @param places where its middle may go, mm on paper, the best first
 * @param home pieces of paper it should stay on; leaving them is allowed but dear
 */
record Label(int rank, List<List<Line>> forms, List<Point> places, Home home) {
    Label {
        forms = forms.stream().map(List::copyOf).toList();
        places = List.copyOf(places);
    }

    /** Whether a point of the paper lies on the ground that a label names. */
    interface Home {
        /** A label that may lie anywhere. */
        Home ANYWHERE = mm -> true;

        boolean holds(Point mm);
    }

    /** One line of a label. */
    record Line(String words, Type type, Ink ink) {}

    /** The room one form takes. */
    static PaperRect room(List<Line> form, Point middle, TextMeasure text) {
        double widthMm = form.stream()
                .mapToDouble(line -> text.widthMm(line.words(), line.type()))
                .max()
                .orElse(0);
        double heightMm =
                form.stream().mapToDouble(line -> lineMm(line.type(), text)).sum();
        return PaperRect.centred(middle, widthMm + 2 * Run.HALO_MM, heightMm);
    }

    /** Height of a line: capitals, tails and the halo over and under them. */
    static double lineMm(Type type, TextMeasure text) {
        return text.capHeightMm(type) + text.depthMm(type) + 2 * Run.HALO_MM;
    }
}
