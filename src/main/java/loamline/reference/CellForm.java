package loamline.reference;

import java.util.Optional;

/** What a cell of a table has to look like. */
enum CellForm {
    TEXT("filled in", ".+"),
    NUMBER("a number of 0 or more", CellForm.NUMBERS),
    NUMBER_OR_NONE("a number of 0 or more, or blank", "|" + CellForm.NUMBERS),
    DAY("a day of the year such as 09-15", CellForm.DAYS),
    DAY_OR_NONE("a day of the year such as 09-15, or blank", "|" + CellForm.DAYS),
    YES_NO("yes or no", "yes|no"),
    GROUP("cool or warm", "cool|warm"),
    USE("any, low, medium or high", "any|low|medium|high"),
    CAP("N, QUICK_N, P2O5, K2O or SALT", "N|QUICK_N|P2O5|K2O|SALT");

    private static final String NUMBERS = "\\d{1,9}(\\.\\d{1,9})?";
    private static final String TO_29 = "-(0[1-9]|[12]\\d";
    private static final String DAYS =
            "02" + TO_29 + ")|(0[469]|11)" + TO_29 + "|30)|(0[13578]|1[02])" + TO_29 + "|3[01])";

    private final String words;
    private final String pattern;

    CellForm(String words, String pattern) {
        this.words = words;
        this.pattern = pattern;
    }

    /** What is wrong with a cell, with line and column; empty if nothing is. */
    Optional<String> wrong(NamedRow row, String column) {
        String text = row.text(column);
        return text.matches(pattern)
                ? Optional.empty()
                : Optional.of("line " + row.line() + ": " + column + " should be " + words + ", not “" + text + "”");
    }
}
