package loamline.desk.tool;

import java.util.Optional;
import loamline.geometry.Point;

/**
 * Where the next place would come to lie.
 *
 * @param at to be shown in any case
 * @param refusal why it cannot be set there, as when what was typed is no length
 */
record Target(Point at, Optional<String> refusal) {
    static Target at(Point place) {
        return new Target(place, Optional.empty());
    }

    static Target refused(Point shown, String why) {
        return new Target(shown, Optional.of(why));
    }
}
