package loamline.desk.facts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Collectors;
import loamline.account.Account;
import loamline.account.Source;

/** An account in words: formula, what was put in, what it means, where it comes from. */
public record Why(String formula, String inputs, String note, String sources) {
    private static final MathContext SHOWN = new MathContext(6);

    static Why of(Account account) {
        String inputs = account.inputs().entrySet().stream()
                .map(input -> input.getKey() + " = " + shown(input.getValue()))
                .collect(Collectors.joining(", "));
        String sources = account.sources().stream().map(Source::citation).collect(Collectors.joining("; "));
        return new Why(account.formula(), inputs, account.note(), sources);
    }

    private static String shown(Object value) {
        return value instanceof Double number && Double.isFinite(number)
                ? new BigDecimal(number).round(SHOWN).stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }
}
