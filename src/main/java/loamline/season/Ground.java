package loamline.season;

import java.util.List;
import loamline.geometry.Region;
import loamline.yard.Kind;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/**
 * A zone as ground to treat.
 *
 * @param netM2 its turf
 * @param treatedM2 what of it is far enough from water to be fertilized; 0 where that is a sliver
 */
public record Ground(String name, String grass, double netM2, double treatedM2) {
    /** The zones of a yard, those without turf left out; fertilizer keeps so far from water. */
    public static List<Ground> of(Yard yard, double setbackM) {
        Region water = Zones.covers(yard).getOrDefault(Kind.WATER, Region.EMPTY);
        Region near = water.isEmpty() || setbackM == 0 ? Region.EMPTY : water.buffer(setbackM);
        return Zones.of(yard).stream()
                .filter(zone -> zone.netAreaM2() > LEAST_M2)
                .map(zone -> of(zone, near))
                .toList();
    }

    /** Less is no ground to spread on, such as a sliver beyond the law's distance from water: about 1 ft², m². */
    private static final double LEAST_M2 = 0.1;

    private static Ground of(Zone zone, Region near) {
        double treated =
                near.isEmpty() ? zone.netAreaM2() : zone.net().minus(near).areaM2();
        return new Ground(zone.name(), zone.grass(), zone.netAreaM2(), treated < LEAST_M2 ? 0 : treated);
    }
}
