/**
 * How much water turf needs, month by month, and how long a valve must run to bring it.
 *
 * <p>From climate to {@link loamline.water.need.ReferenceEt reference evapotranspiration}, by grass and rain to the
 * {@link loamline.water.need.WateringNeed need}, by soil, uniformity and slope to {@link loamline.water.need.RunTimes
 * run times} and to {@link loamline.water.need.WaterUse water and money}.
 *
 * <p>Result semantics: a month that cannot be worked out is missing from the result, and a problem says what it lacks;
 * nothing is ever NaN or infinite. Months stand in the order of the year. Depths are in mm, 1 mm on 1 m² being 1 litre.
 */
@NullMarked
package loamline.water.need;

import org.jspecify.annotations.NullMarked;
