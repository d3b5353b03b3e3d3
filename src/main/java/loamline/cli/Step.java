package loamline.cli;

import java.time.Duration;
import loamline.sun.SunPath;
import loamline.units.Measure;
import loamline.units.ParseResult;
import loamline.units.Parsing;
import loamline.units.UnitSystem;
import picocli.CommandLine.TypeConversionException;

/**
 * A time between two positions of the sun on the command line, such as {@code 10min}; a bare number is minutes.
 *
 * @param value from {@link SunPath#SHORTEST_STEP} to {@link SunPath#LONGEST_STEP}
 */
record Step(Duration value) {
    private static final int SECONDS_PER_MIN = 60;

    static Step parse(String text) {
        ParseResult result = Parsing.parse(Measure.TIME_MINUTES, text, UnitSystem.METRIC);
        double minutes = result.value()
                .orElseThrow(() -> new TypeConversionException(
                        result.refusal().orElseThrow().message()));
        if (!(minutes >= SunPath.SHORTEST_STEP.toMinutes() && minutes <= SunPath.LONGEST_STEP.toMinutes())) {
            throw new TypeConversionException("\"" + text + "\" is no step from " + SunPath.SHORTEST_STEP.toMinutes()
                    + " to " + SunPath.LONGEST_STEP.toMinutes() + " min.");
        }
        return new Step(Duration.ofSeconds(Math.round(minutes * SECONDS_PER_MIN)));
    }
}
