package loamline.scene;

import java.util.List;
import loamline.geometry.Point;

/**
 * Words that look for a place on the map.
 *
 * @param rank who chooses first; 0 before 1
 * @param forms ways to set it, the best first
 * @param places where its middle may go
 * @param home pieces of paper it should stay on; leaving them is allowed but dear
 */
record Label(int rank, List<Form> forms, List<Place> places, Home home) {
    Label {
        forms = List.copyOf(forms);
        places = List.copyOf(places);
    }

    /**
     * A place for the middle of a label.
     *
     * @param middle mm on paper
     * @param price how much worse it is than the best place, 0 or more
     */
    record Place(Point middle, double price) {}

    /** Whether a point of the paper lies on the ground that a label names. */
    interface Home {
        /** A label that may lie anywhere. */
        Home ANYWHERE = mm -> true;

        boolean holds(Point mm);
    }

    /**
     * A way to set a label.
     *
     * @param lines one below the other, centred
     * @param price how much worse it is than the best way, 0 or more
     */
    record Form(List<Line> lines, double price) {
        Form {
            lines = List.copyOf(lines);
        }
    }

    /** A label that is set in one way only: on one line. */
    static List<Form> oneLine(Line line) {
        return List.of(new Form(List.of(line), 0));
    }

    /** One line of a label. */
    record Line(String words, Type type, Ink ink) {}

    /** The room one form takes. */
    static PaperRect room(List<Line> lines, Point middle, TextMeasure text) {
        double widthMm = lines.stream()
                .mapToDouble(line -> text.widthMm(line.words(), line.type()))
                .max()
                .orElse(0);
        double heightMm =
                lines.stream().mapToDouble(line -> lineMm(line.type(), text)).sum();
        return PaperRect.centred(middle, widthMm + 2 * Run.HALO_MM, heightMm);
    }

    /** Height of a line: capitals, tails and the halo over and under them. */
    static double lineMm(Type type, TextMeasure text) {
        return text.capHeightMm(type) + text.depthMm(type) + 2 * Run.HALO_MM;
    }
}
