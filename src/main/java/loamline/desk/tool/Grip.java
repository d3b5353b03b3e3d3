package loamline.desk.tool;

import loamline.geometry.Corner;
import loamline.geometry.Point;
import loamline.geometry.Shape;
import loamline.yard.Barrier;
import loamline.yard.Feature;
import loamline.yard.Head;
import loamline.yard.KeepAway;
import loamline.yard.Naming;
import loamline.yard.Reshape;
import loamline.yard.Tree;

/** Something of a feature to take hold of and drag. Sizes come out in whole millimetres, angles in whole degrees. */
sealed interface Grip {
    /** Where it is on a feature that has it. */
    Point at(Feature feature);

    /** The feature with the grip dragged to a place. */
    Feature dragged(Feature feature, Point to);

    /** What that did, as the label of an edit. */
    String label(Feature before, Feature after);

    /** Whether it is shown fainter, as what would become a corner. */
    default boolean isMiddle() {
        return false;
    }

    /** A corner. */
    record OfCorner(Corner corner) implements Grip {
        @Override
        public Point at(Feature feature) {
            return corner.at(shape(feature));
        }

        @Override
        public Feature dragged(Feature feature, Point to) {
            return Reshape.cornerMoved(feature, corner, to);
        }

        @Override
        public String label(Feature before, Feature after) {
            boolean isPlace = before.shape().orElseThrow() instanceof Point;
            return (isPlace ? "move " : "move corner of ") + Naming.called(before);
        }
    }

    /** The middle of the side after a corner, which becomes a corner itself. */
    record OfSide(Corner corner) implements Grip {
        @Override
        public Point at(Feature feature) {
            return corner.middle(shape(feature));
        }

        @Override
        public Feature dragged(Feature feature, Point to) {
            return Reshape.cornerAdded(feature, corner, to);
        }

        @Override
        public String label(Feature before, Feature after) {
            return "add corner to " + Naming.called(before);
        }

        @Override
        public boolean isMiddle() {
            return true;
        }
    }

    /** The rim of a throw, a crown or a keep-away spot: east of the middle, or in the middle of a head's arc. */
    record OfRadius() implements Grip {
        @Override
        public Point at(Feature feature) {
            double azimuthDeg = feature instanceof Head head ? head.arcStartDeg() + head.arcSweepDeg() / 2 : 90;
            return rim(place(feature), azimuthDeg, Sizes.radiusM(feature));
        }

        @Override
        public Feature dragged(Feature feature, Point to) {
            return Sizes.withRadiusM(feature, place(feature).distanceTo(to));
        }

        @Override
        public String label(Feature before, Feature after) {
            String what = before instanceof Head ? "radius" : before instanceof Tree ? "crown" : "distance";
            return "change " + what + " of " + Naming.called(before);
        }
    }

    /** One edge of a head's arc; the other stays. */
    record OfArc(boolean start) implements Grip {
        @Override
        public Point at(Feature feature) {
            Head head = (Head) feature;
            double azimuthDeg = head.arcStartDeg() + (start ? 0 : head.arcSweepDeg());
            return rim(head.at(), azimuthDeg, Sizes.radiusM(head));
        }

        @Override
        public Feature dragged(Feature feature, Point to) {
            Head head = (Head) feature;
            double azimuthDeg = Math.rint(Reshape.azimuth(head.at(), to));
            double endDeg = head.arcStartDeg() + head.arcSweepDeg();
            double sweepDeg = Reshape.azimuth(start ? endDeg - azimuthDeg : azimuthDeg - head.arcStartDeg());
            double newStartDeg = start ? Reshape.azimuth(azimuthDeg) : head.arcStartDeg();
            return head.withArc(newStartDeg, sweepDeg < 1 ? Head.FULL_CIRCLE_DEG : sweepDeg);
        }

        @Override
        public String label(Feature before, Feature after) {
            boolean isWider = ((Head) after).arcSweepDeg() > ((Head) before).arcSweepDeg();
            return (isWider ? "widen" : "narrow") + " arc of " + Naming.called(before);
        }
    }

    /** A gate in a fence or wall, which slides along its line. */
    record OfGate(int index) implements Grip {
        @Override
        public Point at(Feature feature) {
            Barrier barrier = (Barrier) feature;
            return barrier.line().at(barrier.gates().get(index).atM());
        }

        @Override
        public Feature dragged(Feature feature, Point to) {
            return Sizes.withGateAt((Barrier) feature, index, to);
        }

        @Override
        public String label(Feature before, Feature after) {
            return "move gate of " + Naming.called(before);
        }
    }

    private static Shape shape(Feature feature) {
        return feature.shape().orElseThrow();
    }

    /** Where a feature at a point is. */
    private static Point place(Feature feature) {
        return (Point) shape(feature);
    }

    private static Point rim(Point centre, double azimuthDeg, double radiusM) {
        double angle = Math.toRadians(azimuthDeg);
        return centre.plus(radiusM * Math.sin(angle), radiusM * Math.cos(angle));
    }

    /** Whether a feature has a radius to take hold of. */
    static boolean hasRadius(Feature feature) {
        return feature instanceof Head
                || feature instanceof Tree
                || (feature instanceof KeepAway keepAway && keepAway.place() instanceof Point);
    }
}
