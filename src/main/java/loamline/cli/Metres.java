package loamline.cli;

import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import picocli.CommandLine.TypeConversionException;

/**
 * A length on the command line, such as {@code 3ft} or {@code 0.9m}; a bare number is metres, as in files.
 *
 * @param value m, 0 or more
 */
record Metres(double value) {
    static Metres parse(String text) {
        ParseResult result = Parsing.parse(Measure.LENGTH, text, UnitSystem.METRIC);
        double metres = result.value()
                .orElseThrow(() -> new TypeConversionException(
                        result.refusal().orElseThrow().message()));
        if (metres < 0) {
            throw new TypeConversionException("\"" + text + "\" is below 0. Write a length of 0 or more.");
        }
        return new Metres(metres);
    }
}
