package loamline.water.need;

import java.time.Month;
import loamline.account.Account;

/**
 * What turf needs in a month beyond rain.
 *
 * @param eto reference evapotranspiration
 * @param turfMmDay what the turf gives off, mm a day
 * @param effectiveRainMm what the roots get of the month's rain, mm
 * @param needMm what is to be added in the whole month, mm, 0 or more
 * @param account how the need came about
 */
public record MonthNeed(ReferenceEt eto, double turfMmDay, double effectiveRainMm, double needMm, Account account) {
    public Month month() {
        return eto.month();
    }

    int days() {
        return MonthClimate.days(month());
    }
}
