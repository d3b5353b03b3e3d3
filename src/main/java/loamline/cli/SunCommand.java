package loamline.cli;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import loamline.account.Problem;
import loamline.files.RasterFile;
import loamline.files.SunFiles;
import loamline.place.LonLat;
import loamline.sheets.SunMap;
import loamline.sun.Glare;
import loamline.sun.SunClass;
import loamline.sun.SunPath;
import loamline.sun.SunPosition;
import loamline.sun.SunRequest;
import loamline.sun.SunStudy;
import loamline.yard.Yard;
import loamline.yard.Zone;
import loamline.yard.Zones;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code loamline sun}. */
@Command(
        name = "sun",
        description = "Count the hours of direct sun on the turf, and where panels throw the sun's glare, on level"
                + " ground without clouds.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SunCommand implements Callable<Integer> {
    /** Glare is told hour by hour. */
    private static final Duration GLARE_STEP = Duration.ofHours(1);

    /** More dates than days of a year say nothing new. */
    private static final int MOST_DATES = 366;

    @Spec
    private CommandSpec spec;

    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Mixin
    private PageOptions pages;

    @Option(
            names = "--dates",
            paramLabel = "YYYY-MM-DD[,…]",
            required = true,
            split = ",",
            description = "The days to look at, such as 2027-06-21,2027-09-21; hours are their mean.")
    private List<LocalDate> dates = List.of();

    @Option(
            names = "--step",
            paramLabel = "TIME",
            description = "Time between two positions of the sun, 1 to 60 min; default 10min.")
    private Step step = new Step(SunRequest.USUAL_STEP);

    @Option(
            names = "--cell",
            paramLabel = "LENGTH",
            description = "Side of a cell of the raster, such as 0.25m or 10in; default 0.25m.")
    private Metres cell = new Metres(SunRequest.USUAL_CELL_M);

    @Override
    public Integer call() throws NotDone {
        SunRequest request = request();
        Yard yard = input.read();
        SunStudy.Answer answer = SunStudy.of(yard, request);
        if (answer.study().isEmpty()) {
            Problem why = answer.problems().get(0);
            throw new NotDone(why.code(), why.message() + "; nothing was written.");
        }
        input.report(answer.problems());
        SunStudy sun = answer.study().get();
        List<Zone> zones = Zones.of(yard);
        SunFiles.of(sun, glare(yard, request), SunClass.propose(sun, zones), yard.frame())
                .forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.add(
                "sun-hours" + RasterFile.endingFor(yard.frame()),
                RasterFile.of(sun.hours().spec(), sun.hours().values(), yard.frame()));
        output.add("sun-map.png", new SunMap(yard, zones, sun, pages.sheets()).png());
        output.write();
        input.say("Hours of sun on " + sun.zones().size() + (sun.zones().size() == 1 ? " zone" : " zones")
                + " written to " + output.folder() + ".");
        return input.exitCode();
    }

    private SunRequest request() {
        if (!(cell.value() > 0)) {
            throw new ParameterException(spec.commandLine(), "--cell must be above 0");
        }
        if (dates.size() > MOST_DATES) {
            throw new ParameterException(spec.commandLine(), "--dates takes at most " + MOST_DATES + " days");
        }
        return new SunRequest(dates, step.value(), cell.value());
    }

    private static List<Glare> glare(Yard yard, SunRequest request) {
        LonLat place = yard.frame().origin().orElseThrow();
        List<SunPosition> hourly = request.dates().stream()
                .flatMap(date -> SunPath.day(place, date, GLARE_STEP).stream())
                .toList();
        return Glare.of(yard, hourly);
    }
}
