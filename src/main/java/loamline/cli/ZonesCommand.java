package loamline.cli;

import java.util.List;
import java.util.concurrent.Callable;
import loamline.files.ZoneFiles;
import loamline.yard.Zone;
import loamline.yard.Zones;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code loamline zones}. */
@Command(name = "zones", description = "Measure the net turf area of every zone.", mixinStandardHelpOptions = true)
final class ZonesCommand implements Callable<Integer> {
    @Mixin
    private YardInput input;

    @Mixin
    private OutputFolder output;

    @Override
    public Integer call() throws NotDone {
        List<Zone> zones = Zones.of(input.read());
        ZoneFiles.of(zones).forEach((name, text) -> output.add(name, CoresOutput.utf8(text)));
        output.write();
        input.say(zones.size() + (zones.size() == 1 ? " zone" : " zones") + " written to " + output.folder() + ".");
        return input.exitCode();
    }
}
