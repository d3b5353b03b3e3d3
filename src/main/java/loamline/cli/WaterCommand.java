package loamline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import loamline.files.RasterFile;
import loamline.files.WaterFiles;
import loamline.raster.Grid;
import loamline.sheets.WaterMap;
import loamline.water.Water;
import loamline.water.WaterOptions;
import loamline.yard.Yard;
import loamline.yard.Zones;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code loamline water}. */
@Command(
        name = "water",
        description = "Compute where water falls, how even it is and where it misses: an ideal without wind."
                + " Only a cup test tells what a yard really gets.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class WaterCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PageOptions pages;

    @Option(
            names = "--cell",
            paramLabel = "LENGTH",
            description = "Side of a cell of the raster, such as 0.1m or 4in; default 0.1m.")
    private Metres cell = new Metres(WaterOptions.USUAL.cellM());

    @Option(
            names = "--obstacles",
            description = "Let buildings, walls and solid fences keep dry what lies behind them.")
    private boolean obstacles;

    @Option(
            names = "--drift",
            paramLabel = "LENGTH",
            description = "What if wind moved all water by so much; default 0.")
    private Metres drift = new Metres(0);

    @Option(
            names = "--drift-to",
            paramLabel = "DEGREES",
            description = "Azimuth the wind blows to, clockwise from north; default 90, to the east.")
    private double driftToDeg = 90;

    @Option(
            names = "--year",
            paramLabel = "DEPTH",
            description = "Water that turf gets in a year, for volumes, such as 26in or 0.66m; default 26in.")
    private Metres year = new Metres(WaterOptions.USUAL_YEAR_MM / MM_PER_M);

    private static final double MM_PER_M = 1000;

    @Override
    public Integer call() throws NotDone {
        WaterOptions options = options();
        Yard yard = input.read();
        Water water = Water.of(yard, options);
        input.report(water.problems());
        Grid rate = water.rateMmH()
                .filter(grid -> !water.valves().isEmpty())
                .orElseThrow(() -> new NotDone(
                        "WATER_NOT_COMPUTED",
                        "there is no turf or no usable head in this yard; nothing was written. Draw both."));
        WaterFiles.of(water, yard.frame()).forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add(
                "application" + RasterFile.endingFor(yard.frame()),
                RasterFile.of(rate.spec(), rate.values(), yard.frame()));
        output.add("water-map.png", new WaterMap(yard, Zones.of(yard), water, pages.sheets()).png());
        output.write();
        input.say(said(water));
        return input.exitCode();
    }

    private WaterOptions options() {
        if (!(cell.value() > 0) || !Double.isFinite(driftToDeg)) {
            throw new ParameterException(
                    spec.commandLine(), "--cell must be above 0 and --drift-to a number of degrees");
        }
        return new WaterOptions(cell.value(), obstacles, year.value() * MM_PER_M, drift.value(), driftToDeg);
    }

    private String said(Water water) {
        List<String> parts = List.of(
                counted(water.valves().size(), "valve"), counted(water.gaps().size(), "hole"));
        return String.join(" and ", parts) + " written to " + output.folder() + ". Ideal, no wind.";
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
