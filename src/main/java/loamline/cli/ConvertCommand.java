package loamline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import loamline.files.AtomicFiles;
import loamline.files.FileTrouble;
import loamline.files.GpxFile;
import loamline.files.KmlFile;
import loamline.files.YardFiles;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.yard.Yard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code loamline convert}. */
@Command(
        name = "convert",
        description = "Write a yard as *.loam.json, *.geojson, *.kml, or its cores and walk as *.gpx.",
        mixinStandardHelpOptions = true)
final class ConvertCommand implements Callable<Integer> {
    @Mixin
    private YardInput input;

    @Parameters(index = "1", paramLabel = "OUT", description = "The file to write; its ending says how.")
    private Path out;

    @Override
    public Integer call() throws NotDone {
        Yard yard = input.read();
        try {
            if (YardFiles.Format.of(out).isPresent()) {
                YardFiles.write(yard, out);
            } else {
                AtomicFiles.write(out, exported(yard));
            }
        } catch (IOException e) {
            throw new NotDone(
                    "OUTPUT_NOT_WRITTEN", out + " " + FileTrouble.of(e).message());
        }
        input.say(out + " written.");
        return input.exitCode();
    }

    private String exported(Yard yard) throws NotDone {
        String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
        Optional<String> text;
        if (name.endsWith(".gpx")) {
            text = GpxFile.of(plan(yard), yard.frame());
        } else if (name.endsWith(".kml")) {
            text = KmlFile.of(yard, plan(yard));
        } else {
            throw new NotDone(
                    "ENDING_UNKNOWN", out + " ends in none of .loam.json, .geojson, .gpx and .kml; name one of them.");
        }
        return text.orElseThrow(() -> new NotDone(
                "NO_PLACE",
                "this yard is drawn in plain metres, and " + name + " needs a place on the earth. Tie the yard to"
                        + " longitude and latitude first, or write .geojson."));
    }

    private CorePlan plan(Yard yard) {
        CorePlan plan = CorePlanner.standing(yard);
        input.report(plan.problems());
        return plan;
    }
}
