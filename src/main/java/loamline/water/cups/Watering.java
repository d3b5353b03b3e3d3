package loamline.water.cups;

import loamline.water.need.LawnSoil;
import loamline.water.need.WateringNeed;

/** What run times rest on besides the cups: what the turf needs, and the soil it stands on. */
public record Watering(WateringNeed need, LawnSoil soil) {}
