package loamline.desk.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.units.Formatted;
import loamline.units.Formatting;
import loamline.units.Measure;
import loamline.units.UnitSystem;

/** Facts written one under the other, each with its account, if there is one by its key. */
public final class Rows {
    private final Map<String, Account> accounts;
    private final String at;
    private final UnitSystem units;
    private final List<Row> rows = new ArrayList<>();

    /** @param at what all keys begin with */
    public Rows(Map<String, Account> accounts, String at, UnitSystem units) {
        this.accounts = accounts;
        this.at = at;
        this.units = units;
    }

    /** Adds an amount; {@code none} if there is none. */
    public Rows amount(String name, Measure measure, OptionalDouble stored, String key) {
        return add(
                name,
                stored.isPresent()
                        ? Formatting.concise(measure, stored.getAsDouble(), units)
                        : new Formatted("none", ""),
                key);
    }

    /** Adds a share of one in per cent; {@code none} if there is none. */
    public Rows share(String name, Optional<Double> share, String key) {
        return add(
                name,
                share.map(value -> new Formatted(String.valueOf(Math.round(100 * value)), "%"))
                        .orElse(new Formatted("none", "")),
                key);
    }

    /** Adds something that is written already. */
    public Rows add(String name, Formatted shown, String key) {
        rows.add(Row.of(name, shown, Optional.ofNullable(accounts.get(at + key))));
        return this;
    }

    public List<Row> list() {
        return List.copyOf(rows);
    }
}
