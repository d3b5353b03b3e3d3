package loamline.reference;

import java.time.LocalDate;
import java.time.MonthDay;
import loamline.account.Source;

/**
 * When deciduous trees are in leaf in the north, and how much light their bare crowns let through. In the south the
 * season lies half a year later.
 *
 * @param leafFrom first day in leaf
 * @param leafUntil last day in leaf, later in the year
 * @param bareLight share of the sun that passes a bare crown, 0 to 1
 */
public record CrownSeason(MonthDay leafFrom, MonthDay leafUntil, double bareLight, Source source) {
    private static final int HALF_A_YEAR_MONTHS = 6;

    public CrownSeason {
        if (!leafFrom.isBefore(leafUntil) || !(bareLight >= 0 && bareLight <= 1)) {
            throw new IllegalArgumentException(
                    "no season from " + leafFrom + " until " + leafUntil + " with a bare crown's light " + bareLight);
        }
    }

    /** The season of the table that comes with the program. */
    public static CrownSeason usual() {
        NamedRow row = PublishedTable.rows("crown-season.csv").get(0);
        return new CrownSeason(
                MonthDay.parse("--" + row.text("leaf_from")),
                MonthDay.parse("--" + row.text("leaf_until")),
                row.number("bare_light"),
                row.source());
    }

    /** Whether deciduous trees are in leaf on a day at a latitude. */
    public boolean inLeaf(LocalDate date, double latitudeDeg) {
        MonthDay day = MonthDay.from(latitudeDeg < 0 ? date.plusMonths(HALF_A_YEAR_MONTHS) : date);
        return !day.isBefore(leafFrom) && !day.isAfter(leafUntil);
    }
}
