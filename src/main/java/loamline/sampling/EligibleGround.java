package loamline.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loamline.geometry.Region;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Boundary;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Kind;
import loamline.yard.PlanOptions;
import loamline.yard.Tree;
import loamline.yard.Turf;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * Where cores may be taken: turf, less a margin along every edge that is not just the line between two zones,
 * less everything that spoils a sample, and within the property line if there is one.
 */
final class EligibleGround {
    /**
     * A buffer's round corners are drawn with chords, which lie inside the true arc by up to this share of the
     * radius (1 / cos(π/64)); growing the radius by it keeps every core at least the full distance off.
     */
    private static final double CHORD_ALLOWANCE = 1 / Math.cos(Math.PI / 64);

    /** Gaps up to twice this between two turf outlines are tracing, not ground, m. */
    private static final double TRACING_GAP_M = 0.15;

    private final Region spoiled;
    private final Region inner;

    private EligibleGround(Region spoiled, Region inner) {
        this.spoiled = spoiled;
        this.inner = inner;
    }

    static EligibleGround of(Yard yard, PlanOptions options) {
        List<Region> off = new ArrayList<>();
        Map<Kind, Region> covers = Zones.covers(yard);
        covers.values().forEach(cover -> off.add(cover.buffer(options.edgeBufferM() * CHORD_ALLOWANCE)));
        yard.all(Barrier.class).forEach(b -> off.add(around(b.line(), options.edgeBufferM())));
        yard.all(Tree.class).forEach(t -> off.add(around(t.at(), t.trunkRadiusM() + options.trunkBufferM())));
        yard.all(Head.class).forEach(h -> off.add(around(h.at(), options.headBufferM())));
        yard.all(KeepAway.class).forEach(k -> off.add(around(k.place(), k.radiusM())));
        Region turf = Region.union(
                yard.all(Turf.class).map(t -> Region.of(t.outline())).toList());
        Region closed = turf.buffer(TRACING_GAP_M).buffer(-TRACING_GAP_M);
        Region inner = closed.union(turf).buffer(-options.edgeBufferM());
        return new EligibleGround(Region.union(off), withinTheLot(yard, inner));
    }

    /** Turf traced beyond the property line is somebody else's: no core is taken there. */
    private static Region withinTheLot(Yard yard, Region turf) {
        Region lot = Region.union(
                yard.all(Boundary.class).map(b -> Region.of(b.outline())).toList());
        return lot.isEmpty() ? turf : turf.intersection(lot);
    }

    private static Region around(Shape shape, double radiusM) {
        return Region.around(shape, radiusM * CHORD_ALLOWANCE);
    }

    /** The part of a zone where cores may be taken; perhaps nothing. */
    Region in(Zone zone) {
        return zone.net().intersection(inner).minus(spoiled);
    }
}
