package loamline.cli;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import loamline.files.GpxFile;
import loamline.files.PlanFiles;
import loamline.sampling.CorePlan;
import loamline.sheets.SheetOptions;
import loamline.sheets.WalkPlan;
import loamline.yard.Yard;
import loamline.yard.Zones;

/** Everything that {@code loamline cores} writes. */
final class CoresOutput {
    private CoresOutput() {}

    /** The files by name; without {@code cores.gpx} for a yard that has no place on the earth. */
    static Map<String, byte[]> files(Yard yard, CorePlan plan, SheetOptions sheets) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        PlanFiles.of(plan, yard.frame()).forEach((name, text) -> files.put(name, utf8(text)));
        GpxFile.of(plan, yard.frame()).ifPresent(text -> files.put("cores.gpx", utf8(text)));
        WalkPlan pages = new WalkPlan(yard, Zones.of(yard), plan, sheets);
        CompletableFuture<byte[]> png = CompletableFuture.supplyAsync(pages::mapPng);
        files.put("walk-plan.pdf", pages.pdf());
        files.put("walk-plan.png", png.join());
        return files;
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
