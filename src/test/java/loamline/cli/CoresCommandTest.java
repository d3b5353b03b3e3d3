package loamline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import loamline.files.PlanFiles;
import loamline.files.YardFiles;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlanner;
import loamline.sampling.HandChanges;
import loamline.yard.Extras;
import loamline.yard.PlanOptions;
import loamline.yard.Probe;
import loamline.yard.Yard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line and the window work on the same file and say the same. */
class CoresCommandTest {
    private static final Yard YARD =
            YardFiles.read(Path.of("maps/plover-court.geojson")).yard().orElseThrow();
    private static final PlanOptions NINE = new PlanOptions(
            OptionalInt.of(1),
            9,
            1,
            1,
            0.5,
            PlanOptions.Place.RANDOM,
            0,
            7,
            PlanOptions.Rounds.ALL,
            new Probe(0.02, 0.15),
            Extras.NONE);

    @TempDir
    private Path folder;

    private String coresJson(Yard yard, String... flags) throws IOException {
        Path file = folder.resolve("yard.loam.json");
        YardFiles.write(yard, file);
        Path out = folder.resolve("out" + flags.length);
        List<String> words = new ArrayList<>(List.of("cores", file.toString(), "--out", out.toString()));
        words.addAll(List.of(flags));
        StringWriter err = new StringWriter();
        int code = LoamlineCommand.run(
                new PrintWriter(new StringWriter()), new PrintWriter(err, true), words.toArray(String[]::new));
        assertThat(code).as(err.toString()).isZero();
        return Files.readString(out.resolve("cores.json"), StandardCharsets.UTF_8);
    }

    private static String json(CorePlan plan, Yard yard) {
        return PlanFiles.of(plan, yard.frame()).get("cores.json");
    }

    @Test
    void whatTheFileSaysOfItsPlanningStandsInThePlaceOfTheDefaults() throws IOException {
        Yard yard = YARD.withPlanning(NINE);
        assertThat(coresJson(yard)).isEqualTo(json(CorePlanner.standing(yard), yard));
        assertThat(CorePlanner.standing(yard).mainCores()).hasSize(9);
    }

    @Test
    void flagsWinOverTheFile() throws IOException {
        Yard yard = YARD.withPlanning(NINE);
        PlanOptions flagged = new PlanOptions(
                OptionalInt.of(2),
                10,
                0.5,
                NINE.trunkBufferM(),
                NINE.headBufferM(),
                PlanOptions.Place.CENTRE,
                NINE.sparesPerStratum(),
                3,
                PlanOptions.Rounds.ONE,
                new Probe(NINE.probe().diameterM(), 0.1),
                Extras.NONE);
        String[] flags = {
            "--kits",
            "2",
            "--cores",
            "10",
            "--edge-buffer",
            "0.5m",
            "--place",
            "centre",
            "--seed",
            "3",
            "--bags",
            "one",
            "--probe-depth",
            "0.1m"
        };
        assertThat(coresJson(yard, flags)).isEqualTo(json(CorePlanner.plan(yard, flagged), yard));
    }

    @Test
    void coresSetByHandAreWalkedAsTheWindowWalksThem() throws IOException {
        CorePlan plan = CorePlanner.standing(YARD);
        Yard written = HandChanges.written(YARD, plan);
        Yard set = HandChanges.locked(
                HandChanges.moved(
                        HandChanges.swapped(written, "A3"),
                        "A5",
                        plan.cores().get(4).at().plus(0.4, 0.2)),
                "A5",
                true);
        CorePlan shown = CorePlanner.standing(set);
        assertThat(coresJson(set, "--keep")).isEqualTo(json(shown, set));
        assertThat(shown.cores()).hasSameSizeAs(plan.cores());
        assertThat(shown.composites().get(0).strata()).isNotEmpty();
    }
}
