package loamline.yard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.geometry.Outline;
import loamline.geometry.Region;

/**
 * Mending at one click, where it is safe: what is counted stays the same, and only the drawing comes to agree with it.
 * Heads off the turf, unlikely numbers, gates without a width and the like are left to a person, who alone knows
 * what was meant; so is whatever would take away all of a drawing that may be mended by hand.
 *
 * <p>Case by case: a drawing that is counted in a mended form becomes that form; one that encloses nothing is taken
 * out; turf that two zones claim is cut from the zone that it does not count to; a gate that reaches past its line is
 * moved onto it, and made as narrow as the line is long; a head with the id of another gets the next free number.
 */
public final class Repairs {
    private static final Set<String> DRAWN_OTHERWISE = Set.of(
            "OUTLINE_POINT_REPEATED",
            "OUTLINE_TOO_FEW_POINTS",
            "OUTLINE_SELF_CROSSING",
            "OUTLINE_HOLE_OUTSIDE",
            "OUTLINE_PARTS_OVERLAP",
            "OUTLINE_NO_AREA");

    private final Yard yard;
    private final Feature feature;

    private Repairs(Yard yard, Feature feature) {
        this.yard = yard;
        this.feature = feature;
    }

    /** The edit that mends a problem of a yard; empty where none is safe or the problem is no longer there. */
    public static Optional<History.Step> of(Problem problem, Yard yard) {
        int index = problem.where().featureIndex().orElse(-1);
        return index < 0 || index >= yard.features().size()
                ? Optional.empty()
                : new Repairs(yard, yard.features().get(index))
                        .step(problem.code())
                        .filter(step -> !step.after().equals(yard));
    }

    private Optional<History.Step> step(String code) {
        if (DRAWN_OTHERWISE.contains(code) && feature.shape().orElse(null) instanceof Outline outline) {
            return Optional.of(redrawn(Region.of(outline)));
        } else if (code.equals("ZONES_OVERLAP") && feature instanceof Turf turf) {
            return uncovered(turf);
        } else if (code.equals("GATE_BEYOND_FENCE") && feature instanceof Barrier barrier) {
            return Optional.of(step("move the gates of", Edits.replace(yard, gatesOnLine(barrier))));
        } else if (code.equals("HEAD_ID_TWICE") && feature instanceof Head head) {
            return Optional.of(renamed(head));
        }
        return Optional.empty();
    }

    private History.Step step(String what, Yard after) {
        return new History.Step(what + " " + Naming.title(feature), after);
    }

    private History.Step redrawn(Region counted) {
        return counted.isEmpty()
                ? step("remove the empty outline of", Edits.remove(yard, Set.of(feature.key())))
                : step("mend the outline of", Edits.replace(yard, feature.withShape(counted.outline())));
    }

    /** Shared turf counts to the zone listed first; the other outline gives it up. */
    private Optional<History.Step> uncovered(Turf second) {
        List<String> zones = new ArrayList<>(
                yard.all(Turf.class).map(Turf::zone).collect(Collectors.toCollection(LinkedHashSet::new)));
        Region ground = Region.of(second.outline());
        Yard after = yard;
        for (Turf first : yard.all(Turf.class).toList()) {
            if (first.key().equals(second.key())) {
                break;
            }
            int order = Integer.compare(zones.indexOf(first.zone()), zones.indexOf(second.zone()));
            if (order < 0) {
                ground = ground.minus(Region.of(first.outline()));
            } else if (order > 0) {
                Region left = Region.of(first.outline()).minus(Region.of(second.outline()));
                if (left.isEmpty()) {
                    return Optional.empty();
                }
                after = Edits.replace(after, first.withShape(left.outline()));
            }
        }
        return ground.isEmpty()
                ? Optional.empty()
                : Optional.of(step("cut the overlap of", Edits.replace(after, second.withShape(ground.outline()))));
    }

    private static Barrier gatesOnLine(Barrier barrier) {
        double lengthM = barrier.line().lengthM();
        List<Barrier.Opening> gates = barrier.gates().stream()
                .map(gate -> {
                    double widthM = Math.min(gate.widthM(), lengthM);
                    double atM = Math.max(widthM / 2, Math.min(lengthM - widthM / 2, gate.atM()));
                    return new Barrier.Opening(atM, widthM, gate.extras());
                })
                .toList();
        return new Barrier(
                barrier.key(),
                barrier.barrier(),
                barrier.heightM(),
                gates,
                barrier.solid(),
                barrier.line(),
                barrier.extras());
    }

    private History.Step renamed(Head head) {
        Set<String> taken = yard.all(Head.class).map(Head::id).collect(Collectors.toSet());
        int n = 1;
        while (taken.contains("h" + n)) {
            n++;
        }
        Head other = new Head(
                head.key(),
                "h" + n,
                head.valve(),
                head.headClass(),
                head.radiusM(),
                head.arcStartDeg(),
                head.arcSweepDeg(),
                head.flowLpm(),
                head.profile(),
                head.mountM(),
                head.at(),
                head.extras());
        return new History.Step("rename head " + head.id() + " to " + other.id(), Edits.replace(yard, other));
    }
}
