package loamline.desk.tool;

import java.util.List;
import loamline.geometry.Outline;
import loamline.geometry.Point;
import loamline.yard.Kind;
import loamline.yard.Yard;

/** Finds the ground round some clicks on a yard's image. Called off the screen's thread; may take a second. */
@FunctionalInterface
public interface AssistTracer {
    /** @return an outline without parts if there is nothing to be found, and then a doubt that says why */
    Found trace(Asked asked);

    /**
     * What is asked.
     *
     * @param yard with its image, and with what is traced already and is not to be entered
     * @param kind what the ground will be taken for
     * @param inside places in the ground, m; at least one
     * @param outside places that are not to belong to it, m
     * @param tolerance 0 the least that can be told apart, 0.5 the best guess, 1 all that is connected
     */
    record Asked(Yard yard, Kind kind, List<Point> inside, List<Point> outside, double tolerance) {
        public Asked {
            inside = List.copyOf(inside);
            outside = List.copyOf(outside);
        }
    }

    /**
     * What was found.
     *
     * @param outline on the ground, m
     * @param areaM2 what it encloses
     * @param doubts what to look at, in sentences, the gravest first
     */
    record Found(Outline outline, double areaM2, List<String> doubts) {
        public Found {
            doubts = List.copyOf(doubts);
        }

        public boolean isEmpty() {
            return outline.parts().isEmpty();
        }
    }
}
