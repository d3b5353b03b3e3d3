package loamline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loamline.account.Problem;
import loamline.account.Where;
import loamline.files.ClimateFile;
import loamline.files.Read;
import loamline.reference.SoilWater;
import loamline.reference.TurfCoefficients;
import loamline.water.cups.Watering;
import loamline.water.need.LawnSoil;
import loamline.water.need.MonthClimate;
import loamline.yard.Attachment;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What run times rest on besides the cups. */
final class WateringOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--climate",
            paramLabel = "CLIMATE.csv",
            description = "The usual weather, a row a month; without it there are no run times.")
    private @Nullable Path climate;

    @Option(names = "--elevation", paramLabel = "LENGTH", description = "Above sea level, such as 650ft; default 0.")
    private Metres elevation = new Metres(0);

    @Option(names = "--grass", paramLabel = "GROUP", description = "Grass by its season; default \"cool season\".")
    private String grass = "cool season";

    @Option(names = "--texture", paramLabel = "SOIL", description = "Texture of the soil; default loam.")
    private String texture = "loam";

    @Option(names = "--root-depth", paramLabel = "LENGTH", description = "How deep roots go; default 150mm.")
    private Metres rootDepth = new Metres(LawnSoil.USUAL_ROOT_DEPTH_MM / 1000);

    /** What was said; empty, with the user told, without a climate that can be used. */
    Optional<Watering> of(Yard yard, YardInput input) {
        TurfCoefficients turf = TurfCoefficients.of(grass)
                .orElseThrow(() -> unknown(
                        "--grass",
                        TurfCoefficients.published().stream()
                                .map(TurfCoefficients::grass)
                                .collect(Collectors.joining(", "))));
        SoilWater soil = SoilWater.of(texture)
                .orElseThrow(() -> unknown(
                        "--texture",
                        SoilWater.published().stream().map(SoilWater::texture).collect(Collectors.joining(", "))));
        if (!(rootDepth.value() > 0)) {
            throw new ParameterException(spec.commandLine(), "--root-depth must be above 0");
        }
        return months(yard, input)
                .map(months -> Watering.of(yard, months, turf, soil, 1000 * rootDepth.value(), elevation.value()));
    }

    /** The climate that was given, else the last that the yard carries. */
    private Optional<List<MonthClimate>> months(Yard yard, YardInput input) {
        if (climate != null) {
            return months(input, climate, ClimateFile.read(climate));
        }
        Optional<Attachment> carried =
                yard.attached(Attachment.Sort.CLIMATE).stream().reduce((first, last) -> last);
        if (carried.isEmpty()) {
            input.report(List.of(Problem.info(
                    "NO_CLIMATE",
                    Where.WHOLE,
                    "no --climate was given and the yard carries none: there are no run times by month")));
        }
        return carried.flatMap(table -> months(input, Path.of(table.name()), ClimateFile.parse(table.text())));
    }

    private static Optional<List<MonthClimate>> months(YardInput input, Path file, Read<List<MonthClimate>> read) {
        input.report(file, read.problems());
        return read.value();
    }

    private ParameterException unknown(String option, String known) {
        return new ParameterException(spec.commandLine(), option + " must be one of: " + known);
    }
}
