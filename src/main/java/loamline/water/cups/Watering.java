package loamline.water.cups;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.reference.SoilWater;
import loamline.reference.TurfCoefficients;
import loamline.water.need.EffectiveRain;
import loamline.water.need.LawnSoil;
import loamline.water.need.MonthClimate;
import loamline.water.need.Site;
import loamline.water.need.WateringNeed;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;

/** What run times rest on besides the cups: what the turf needs, and the soil it stands on. */
public record Watering(WateringNeed need, LawnSoil soil) {
    /**
     * What a yard's turf needs in its climate.
     *
     * @param rootDepthMm above 0
     * @param elevationM above sea level
     */
    public static Watering of(
            Yard yard,
            List<MonthClimate> climate,
            TurfCoefficients turf,
            SoilWater soil,
            double rootDepthMm,
            double elevationM) {
        Optional<Site> site = yard.frame().origin().map(place -> new Site(place.latDeg(), elevationM));
        return new Watering(
                WateringNeed.of(climate, site, turf, EffectiveRain.USDA_SCS),
                new LawnSoil(soil, rootDepthMm, LawnSoil.USUAL_DEPLETION, steepestPct(yard), OptionalDouble.empty()));
    }

    /** The same of a cool-season lawn on loam at sea level, until somebody says otherwise. */
    public static Watering usual(Yard yard, List<MonthClimate> climate) {
        return of(
                yard,
                climate,
                TurfCoefficients.published().get(0),
                SoilWater.of("loam").orElseThrow(),
                LawnSoil.USUAL_ROOT_DEPTH_MM,
                0);
    }

    /** The steepest zone: where water runs off first. */
    private static double steepestPct(Yard yard) {
        return Zones.of(yard).stream()
                .map(Zone::slopePct)
                .flatMapToDouble(OptionalDouble::stream)
                .max()
                .orElse(0);
    }
}
