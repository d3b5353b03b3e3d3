package loamline.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.TypeConversionException;

/** Dates on the command line. */
final class Dates {
    private Dates() {}

    static LocalDate parse(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException e) {
            throw new TypeConversionException("\"" + text + "\" is no date. Write it as 2027-06-21.");
        }
    }
}
