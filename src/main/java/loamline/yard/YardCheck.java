package loamline.yard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loamline.account.Problem;
import loamline.geometry.Outline;
import loamline.geometry.Region;

/**
 * Everything in a yard that cannot be or is doubtful.
 *
 * <p>An error is something that the results leave out or cannot do without; a warning is something that was put
 * right or that is hardly meant; an info is worth knowing. A problem of a feature is at its position in {@link
 * Yard#features}. The order is: feature by feature what is wrong with its drawing and its values, then how the
 * features lie to each other. Turf overlaps and the like count from {@link GroundCheck#WOBBLE_M2} on.
 */
public final class YardCheck {
    private YardCheck() {}

    /** All problems of a yard; none if it is sound. */
    public static List<Problem> of(Yard yard) {
        OutlineCheck outlines = new OutlineCheck(new CheckWords(yard));
        ValueCheck values = new ValueCheck();
        List<Problem> problems = new ArrayList<>();
        Map<Integer, Region> grounds = new HashMap<>();
        for (int i = 0; i < yard.features().size(); i++) {
            Feature feature = yard.features().get(i);
            if (feature.shape().orElse(null) instanceof Outline outline) {
                OutlineCheck.Checked checked = outlines.check(i, feature, outline);
                problems.addAll(checked.problems());
                if (!checked.region().isEmpty()) {
                    grounds.put(i, checked.region());
                }
            }
            problems.addAll(values.check(i, feature));
        }
        problems.addAll(new GroundCheck(yard, grounds).check());
        return List.copyOf(problems);
    }
}
