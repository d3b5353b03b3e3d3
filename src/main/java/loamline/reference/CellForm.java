package loamline.reference;

import java.util.Optional;
import java.util.function.Predicate;

/** What a cell of a table has to look like. */
enum CellForm {
    TEXT("filled in", text -> !text.isEmpty()),
    NUMBER("a number of 0 or more", CellForm::isNumber),
    NUMBER_OR_NONE("a number of 0 or more, or blank", text -> text.isEmpty() || isNumber(text)),
    DAY("a day of the year such as 09-15", CellForm::isDay),
    DAY_OR_NONE("a day of the year such as 09-15, or blank", text -> text.isEmpty() || isDay(text)),
    YES_NO("yes or no", text -> text.matches("yes|no")),
    GROUP("cool or warm", text -> text.matches("cool|warm")),
    USE("any, low, medium or high", text -> text.matches("any|low|medium|high")),
    CAP("N, QUICK_N, P2O5, K2O or SALT", text -> text.matches("N|QUICK_N|P2O5|K2O|SALT"));

    /** Days of each month in a leap year. */
    private static final int[] MONTH_DAYS = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final String words;
    private final Predicate<String> fits;

    CellForm(String words, Predicate<String> fits) {
        this.words = words;
        this.fits = fits;
    }

    /** What is wrong with a cell, with line and column; empty if nothing is. */
    Optional<String> wrong(NamedRow row, String column) {
        String text = row.text(column);
        return fits.test(text)
                ? Optional.empty()
                : Optional.of("line " + row.line() + ": " + column + " should be " + words + ", not “" + text + "”");
    }

    private static boolean isNumber(String text) {
        return text.matches("\\d{1,9}(\\.\\d{1,9})?");
    }

    private static boolean isDay(String text) {
        if (!text.matches("\\d\\d-\\d\\d")) {
            return false;
        }
        int month = Integer.parseInt(text.substring(0, 2));
        int day = Integer.parseInt(text.substring(3));
        return month >= 1 && month <= MONTH_DAYS.length && day >= 1 && day <= MONTH_DAYS[month - 1];
    }
}
