package loamline.sun;

import java.util.List;
import loamline.geometry.Point;

/**
 * Shadow casters as arrays, for kernels: prisms with their corners one after the other, and round things.
 *
 * <p>Prism {@code i} has the corners {@code first[i]} to {@code first[i + 1] - 1}.
 */
final class CasterTable {
    final int prisms;
    final int[] first;
    final double[] cornerX;
    final double[] cornerY;
    final double[] prismBottom;
    final double[] prismTop;
    final float[] prismLight;

    final int rounds;
    final boolean[] ellipsoid;
    final double[] roundX;
    final double[] roundY;
    final double[] radius;
    final double[] roundBottom;
    final double[] roundTop;
    final float[] roundLight;

    CasterTable(List<Caster> casters) {
        List<Caster.Prism> upright = casters.stream()
                .filter(Caster.Prism.class::isInstance)
                .map(Caster.Prism.class::cast)
                .toList();
        prisms = upright.size();
        first = new int[prisms + 1];
        for (int i = 0; i < prisms; i++) {
            first[i + 1] = first[i] + upright.get(i).corners().size();
        }
        List<Point> corners =
                upright.stream().flatMap(prism -> prism.corners().stream()).toList();
        cornerX = corners.stream().mapToDouble(Point::x).toArray();
        cornerY = corners.stream().mapToDouble(Point::y).toArray();
        prismBottom = upright.stream().mapToDouble(Caster::bottomM).toArray();
        prismTop = upright.stream().mapToDouble(Caster::topM).toArray();
        prismLight = light(upright);

        List<Caster> round =
                casters.stream().filter(c -> !(c instanceof Caster.Prism)).toList();
        rounds = round.size();
        ellipsoid = new boolean[rounds];
        roundX = new double[rounds];
        roundY = new double[rounds];
        radius = new double[rounds];
        roundBottom = round.stream().mapToDouble(Caster::bottomM).toArray();
        roundTop = round.stream().mapToDouble(Caster::topM).toArray();
        roundLight = light(round);
        for (int i = 0; i < rounds; i++) {
            if (round.get(i) instanceof Caster.Ellipsoid e) {
                ellipsoid[i] = true;
                set(i, e.at(), e.radiusM());
            } else if (round.get(i) instanceof Caster.Cylinder c) {
                set(i, c.at(), c.radiusM());
            }
        }
    }

    private void set(int i, Point at, double radiusM) {
        roundX[i] = at.x();
        roundY[i] = at.y();
        radius[i] = radiusM;
    }

    private static float[] light(List<? extends Caster> casters) {
        float[] light = new float[casters.size()];
        for (int i = 0; i < light.length; i++) {
            light[i] = (float) casters.get(i).light();
        }
        return light;
    }
}
