package loamline.desk.tool;

import java.util.ArrayList;
import java.util.List;
import loamline.geometry.Point;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Tree;

/** Sizes that grips change. */
final class Sizes {
    /** Where the rim's grip is while nobody gave a radius, m. */
    private static final double UNKNOWN_RADIUS_M = 3;

    /** No throw, crown or keep-away spot that is dragged gets smaller, m. */
    private static final double LEAST_RADIUS_M = 0.1;

    private Sizes() {}

    /** The radius of a throw, a crown or a keep-away spot, m; 3 while it is not known. */
    static double radiusM(Feature feature) {
        if (feature instanceof Head head) {
            return head.radiusM().orElse(UNKNOWN_RADIUS_M);
        } else if (feature instanceof Tree tree) {
            return tree.crownRadiusM().orElse(UNKNOWN_RADIUS_M);
        }
        return ((KeepAway) feature).radiusM();
    }

    static Feature withRadiusM(Feature feature, double asked) {
        double radiusM = Math.max(LEAST_RADIUS_M, Math.rint(asked * 1000) / 1000);
        if (feature instanceof Head head) {
            return head.withRadiusM(radiusM);
        } else if (feature instanceof Tree tree) {
            return tree.withCrownRadiusM(radiusM);
        }
        return ((KeepAway) feature).withRadiusM(radiusM);
    }

    static Barrier withGateAt(Barrier barrier, int index, Point to) {
        List<Barrier.Opening> gates = new ArrayList<>(barrier.gates());
        Barrier.Opening gate = gates.get(index);
        double atM = Math.rint(barrier.line().alongM(to) * 1000) / 1000;
        gates.set(index, new Barrier.Opening(atM, gate.widthM(), gate.extras()));
        return barrier.withGates(gates);
    }
}
