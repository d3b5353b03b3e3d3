package loamline.water.cups;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the cups say of one head.
 *
 * @param head its id
 * @param factor what it gives over its share of the valve, 1 for a sound head, 0 or more
 * @param low lower end of the factor's 95 % interval, 0 or more
 * @param high upper end
 * @param verdict in a word
 * @param sure probability that it is at fault, 0 to 1
 * @param turnedDeg how far it is turned clockwise, if that is what fits best
 * @param reachedCups how many cups its water reaches, as mapped
 * @param cups names of the cups that say so, the most telling first; for a head without a fault those that could tell
 * @param words one sentence for the user
 */
public record HeadFinding(
        String head,
        double factor,
        double low,
        double high,
        Verdict verdict,
        double sure,
        OptionalDouble turnedDeg,
        int reachedCups,
        List<String> cups,
        String words) {
    public HeadFinding {
        cups = List.copyOf(cups);
    }
}
