package loamline.cli;

import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import picocli.CommandLine.TypeConversionException;

/**
 * A weight on an area on the command line, such as {@code 3lb/1000ft2} or {@code 15g/m2}.
 *
 * @param gM2 g/m², 0 or more
 */
record Dose(double gM2) {
    static Dose parse(String text) {
        ParseResult result = Parsing.parse(Measure.AREAL_RATE, text, UnitSystem.METRIC);
        double gM2 = result.value()
                .orElseThrow(() -> new TypeConversionException(
                        result.refusal().orElseThrow().message()));
        if (gM2 < 0) {
            throw new TypeConversionException("\"" + text + "\" is below 0. Write a dose of 0 or more.");
        }
        return new Dose(gM2);
    }
}
