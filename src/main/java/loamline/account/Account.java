package loamline.account;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How one number came about.
 *
 * @param formula in symbols, such as {@code a = A / n}
 * @param inputs the values put in, by symbol, in the order of the formula; unit in the symbol's name
 * @param sources where the formula and its constants come from
 * @param note one sentence: what it means or what would change it; may be empty
 */
public record Account(String formula, Map<String, Object> inputs, List<Source> sources, String note) {
    public Account {
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        sources = List.copyOf(sources);
    }

    /** The same account with one more input, a number or a word. */
    public Account with(String symbol, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(inputs);
        more.put(symbol, value);
        return new Account(formula, more, sources, note);
    }

    /** An account without inputs yet. */
    public static Account of(String formula, String note, Source... sources) {
        return new Account(formula, Map.of(), List.of(sources), note);
    }
}
