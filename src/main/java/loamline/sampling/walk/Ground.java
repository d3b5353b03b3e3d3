package loamline.sampling.walk;

import java.util.List;
import java.util.Optional;
import loamline.geometry.Edge;
import loamline.geometry.Edges;
import loamline.geometry.Point;
import loamline.geometry.Region;

/**
 * Where one may stand, fences aside: inside a region where there is a boundary, outside one where there is none. The
 * region's edge always belongs to the ground.
 *
 * @param region the open ground, or what is not
 * @param openInside whether the region is the open ground
 */
record Ground(Region region, boolean openInside) {
    static Ground of(Region closed, Optional<Region> boundary) {
        return boundary.map(yard -> new Ground(yard.minus(closed), true)).orElseGet(() -> new Ground(closed, false));
    }

    boolean holds(Point p) {
        return openInside ? region.covers(p) : !region.holdsInside(p);
    }

    List<Edge> border() {
        return Edges.around(region, openInside);
    }
}
