package loamline.water.need;

import java.time.Month;
import loamline.account.Account;

/**
 * How a valve runs in a month.
 *
 * @param etoMmDay reference evapotranspiration, mm a day
 * @param needMm what one watering is to bring, mm; 0 in a month that needs none
 * @param minutes run time of one watering, uniformity included
 * @param evenMinutes the same if the valve watered evenly: the least that makes sense
 * @param cycles parts into which a watering is cut, so that nothing runs off; 0 without watering
 * @param soakMin minutes to wait between two cycles; 0 if there is one at most
 * @param intervalDays from one watering to the next
 * @param waterings in the month
 * @param account how minutes, cycles and soak came about
 */
public record MonthRunTime(
        Month month,
        double etoMmDay,
        double needMm,
        double minutes,
        double evenMinutes,
        int cycles,
        double soakMin,
        int intervalDays,
        int waterings,
        Account account) {
    /** Minutes in the whole month. */
    public double monthMinutes() {
        return minutes * waterings;
    }
}
