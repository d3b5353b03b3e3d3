package loamline.desk.facts;

import java.util.Optional;
import loamline.account.Account;
import loamline.units.Formatted;

/**
 * A fact: its name, its number or word, its unit, and how it came about if it was computed.
 *
 * @param unit may be empty
 */
public record Row(String name, String value, String unit, Optional<Why> why) {
    public static Row of(String name, Formatted formatted, Account why) {
        return new Row(name, formatted.number(), formatted.unit(), Optional.of(Why.of(why)));
    }

    public static Row of(String name, Formatted formatted, Optional<Account> why) {
        return new Row(name, formatted.number(), formatted.unit(), why.map(Why::of));
    }

    public static Row plain(String name, String value, String unit) {
        return new Row(name, value, unit, Optional.empty());
    }
}
