package loamline.desk.map;

import loamline.desk.session.Results;
import loamline.desk.session.Selection;
import loamline.geometry.Point;

/** Finds what is to be selected at a place. */
@FunctionalInterface
public interface Picker {
    /** @param reachM how far off something may lie and still be meant */
    Selection at(Point place, double reachM, Results results);
}
