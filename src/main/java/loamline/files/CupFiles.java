package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.water.Uniformity;
import loamline.water.cups.CupTest;
import loamline.water.cups.HeadFinding;
import loamline.water.need.MonthRunTime;
import org.jspecify.annotations.Nullable;

/** A cup test as {@code cups.json} and its accounts. What has no number is null there, and words say why. */
public final class CupFiles {
    private CupFiles() {}

    /** The files by name, as text. */
    public static Map<String, String> of(CupTest test) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("cups.json", json(test));
        files.put("accounts.json", AccountsFile.text(test.accounts()));
        return files;
    }

    private static String json(CupTest test) {
        Optional<Uniformity> even = test.uniformity();
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("valve", test.valve());
        tree.put("n", test.cups().size());
        tree.put("meanMl", orNull(test.meanMl()));
        tree.put("meanMmH", orNull(test.meanMmH()));
        tree.put("duLq", even.map(Uniformity::duLq).orElse(null));
        tree.put("duLh", even.map(Uniformity::duLh).orElse(null));
        tree.put("cu", even.map(Uniformity::cu).orElse(null));
        tree.put("cv", even.map(Uniformity::cv).orElse(null));
        tree.put("minRatio", even.map(Uniformity::minRatio).orElse(null));
        tree.put("sc", even.map(u -> orNull(u.schedulingCoefficient())).orElse(null));
        tree.put("scWords", test.schedulingWords());
        tree.put("rule", Uniformity.RULE);
        tree.put("scale", test.findings().scale());
        tree.put("noiseShare", test.findings().noiseShare());
        tree.put(
                "suspects",
                test.findings().heads().stream().map(CupFiles::suspect).toList());
        tree.put("runTimes", test.runTimes().stream().map(CupFiles::runTime).toList());
        return JsonText.of(tree);
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> suspect(HeadFinding head) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("head", head.head());
        members.put("factor", head.factor());
        members.put("ci95", List.of(head.low(), head.high()));
        members.put("verdict", head.verdict().word());
        members.put("sure", head.sure());
        members.put("turnedDeg", orNull(head.turnedDeg()));
        members.put("reachedCups", head.reachedCups());
        members.put("cups", head.cups());
        members.put("words", head.words());
        return members;
    }

    private static Map<String, @Nullable Object> runTime(MonthRunTime month) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("month", month.month().getValue());
        members.put("etoMmDay", month.etoMmDay());
        members.put("needMm", month.needMm());
        members.put("minutes", month.minutes());
        members.put("cycles", month.cycles());
        members.put("soakMin", month.soakMin());
        members.put("intervalDays", month.intervalDays());
        members.put("waterings", month.waterings());
        return members;
    }
}
