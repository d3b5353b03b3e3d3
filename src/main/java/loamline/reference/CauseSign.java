package loamline.reference;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import loamline.account.Source;

/**
 * Something to be seen that speaks for or against a cause.
 *
 * @param telling whether the cause may not be named without it
 * @param subject what is looked at, by its key, such as {@code thatchM}
 * @param terms words looked for, if the subject is what was written down
 * @param test how it is looked at
 * @param level to compare with, for the first three tests, in the unit of the subject
 * @param weightFor what it adds where it is seen clearly, as a logarithm of odds, 0 or more
 * @param weightAgainst what it takes off where the opposite is seen clearly, 0 or more
 * @param seen words for it; {@code {here}}, {@code {there}} and {@code {level}} stand for values
 * @param unseen words for the opposite
 * @param missing words for when nobody looked
 */
public record CauseSign(
        boolean telling,
        String subject,
        List<String> terms,
        Test test,
        OptionalDouble level,
        double weightFor,
        double weightAgainst,
        String seen,
        String unseen,
        String missing,
        String status,
        Source source) {
    /** How a subject is looked at. */
    public enum Test {
        /** More than a third of the area's cores lie above the level: a spot drawn by eye holds sound cores too. */
        ABOVE,
        /** More than a third of the area's cores lie below the level. */
        BELOW,
        /** No more than a third of the area's cores lie above the level. */
        NOT_ABOVE,
        /** The area lies above the rest of the lawn. */
        HIGHER,
        /** The area lies below the rest of the lawn. */
        LOWER,
        /** The area does not lie below the rest of the lawn. */
        NOT_LOWER;

        /** Whether it compares with the rest of the lawn rather than with a level. */
        public boolean isContrast() {
            return this == HIGHER || this == LOWER || this == NOT_LOWER;
        }
    }

    /** @throws IllegalArgumentException if there is no level to compare with */
    public CauseSign {
        terms = List.copyOf(terms);
        if (level.isEmpty() && !test.isContrast()) {
            throw new IllegalArgumentException(subject + " is compared with no level");
        }
    }

    static CauseSign of(NamedRow row) {
        return new CauseSign(
                row.text("telling").equals("yes"),
                row.text("subject"),
                row.list("terms"),
                Test.valueOf(row.text("test").toUpperCase(Locale.ROOT)),
                row.numberOrNone("level"),
                row.number("weight_for"),
                row.number("weight_against"),
                row.text("seen"),
                row.text("unseen"),
                row.text("missing"),
                row.text("status"),
                row.source());
    }
}
