package loamline.files;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.findings.AreaFinding;
import loamline.findings.BagBalance;
import loamline.findings.Change;
import loamline.findings.Comparison;
import loamline.findings.Evidence;
import loamline.findings.Findings;
import loamline.findings.LoggedCore;
import loamline.findings.Meaning;
import loamline.findings.RankedCause;
import loamline.findings.Surface;
import loamline.findings.Visit;
import loamline.findings.ZoneSummary;
import loamline.reference.ReadingClass;
import loamline.units.UnitSystem;
import org.jspecify.annotations.Nullable;

/** Findings as {@code findings.json} and its accounts. */
public final class FindingFiles {
    private FindingFiles() {}

    /**
     * The files by name, as text.
     *
     * @param units of the quantities in words; numbers are SI
     */
    public static Map<String, String> of(Findings findings, UnitSystem units) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("findings.json", json(findings, units));
        files.put("accounts.json", AccountsFile.text(findings.accounts()));
        return files;
    }

    private static String json(Findings findings, UnitSystem units) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("visit", visit(findings.log().visit()));
        tree.put(
                "earlier",
                findings.log().earlier().stream().map(e -> visit(e.visit())).toList());
        tree.put("cores", findings.cores().stream().map(FindingFiles::core).toList());
        tree.put("bags", findings.log().bags().stream().map(FindingFiles::bag).toList());
        tree.put(
                "zones",
                findings.zones().stream()
                        .map(zone -> zone(zone, Meaning.of(zone, findings.zones())))
                        .toList());
        tree.put("areas", findings.areas().stream().map(a -> area(a, units)).toList());
        tree.put(
                "surfaces",
                findings.surfaces().stream().map(FindingFiles::surface).toList());
        tree.put(
                "changes", findings.changes().stream().map(FindingFiles::change).toList());
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> visit(Visit visit) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("from", visit.from().map(LocalDate::toString).orElse(null));
        members.put("to", visit.to().map(LocalDate::toString).orElse(null));
        members.put("rows", visit.rows().size());
        return members;
    }

    private static Map<String, @Nullable Object> core(LoggedCore core) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("id", core.id());
        members.put("composite", core.core().composite());
        members.put("zone", core.core().zone());
        members.put("xM", core.core().at().x());
        members.put("yM", core.core().at().y());
        members.put("spareOf", core.core().spareOf().orElse(null));
        members.put("refusal", core.refusal().orElse(null));
        members.put("photos", core.photos());
        members.put("waterMeasured", core.waterMeasured());
        core.values().forEach((quantity, value) -> members.put(quantity.key(), value));
        return members;
    }

    private static Map<String, @Nullable Object> bag(BagBalance bag) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", bag.composite());
        members.put("planned", bag.planned());
        members.put("balanced", bag.isBalanced());
        members.put("inBag", bag.inBag());
        members.put("replaced", bag.replaced());
        members.put("takeNext", bag.next());
        members.put("missing", bag.missing());
        members.put("notLogged", bag.notLogged());
        members.put("surplus", bag.surplus());
        return members;
    }

    private static Map<String, @Nullable Object> zone(ZoneSummary zone, Optional<ReadingClass> meaning) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("zone", zone.zone());
        members.put("reading", zone.quantity().key());
        members.put("n", zone.n());
        members.put("mean", zone.mean());
        members.put("sd", orNull(zone.sd()));
        members.put("least", zone.least());
        members.put("median", zone.median());
        members.put("most", zone.most());
        members.put("means", meaning.map(ReadingClass::name).orElse(null));
        members.put(
                "action",
                meaning.map(ReadingClass::action).filter(a -> !a.isEmpty()).orElse(null));
        members.put("source", meaning.map(m -> m.source().id()).orElse(null));
        return members;
    }

    private static Map<String, @Nullable Object> area(AreaFinding area, UnitSystem units) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", area.name());
        members.put("drawn", area.spot().isPresent());
        members.put("cores", area.cores());
        members.put("likely", area.likely().map(cause -> cause.cause().id()).orElse(null));
        members.put("title", area.title());
        members.put("words", area.words(units));
        members.put(
                "comparisons",
                area.comparisons().stream().map(FindingFiles::comparison).toList());
        members.put("causes", area.causes().stream().map(c -> cause(c, units)).toList());
        return members;
    }

    private static Map<String, @Nullable Object> comparison(Comparison comparison) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("reading", comparison.quantity().key());
        members.put("areaN", comparison.areaN());
        members.put("restN", comparison.restN());
        members.put("areaMean", comparison.areaMean());
        members.put("restMean", comparison.restMean());
        members.put("cliffsDelta", comparison.effect());
        members.put("p", comparison.p());
        members.put("pHolm", comparison.holmP());
        return members;
    }

    private static Map<String, @Nullable Object> cause(RankedCause cause, UnitSystem units) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("cause", cause.cause().id());
        members.put("title", cause.cause().title());
        members.put("standing", cause.standing().word());
        members.put("points", cause.points());
        for (Evidence.Stand stand : List.of(Evidence.Stand.FOR, Evidence.Stand.AGAINST, Evidence.Stand.MISSING)) {
            members.put(
                    stand.word(),
                    cause.evidence(stand).stream()
                            .map(evidence -> evidence.words(units))
                            .filter(words -> !words.isEmpty())
                            .toList());
        }
        members.put("confirm", cause.cause().confirm());
        members.put("action", cause.cause().action());
        members.put("caution", cause.cause().caution());
        members.put("source", cause.cause().source().id());
        return members;
    }

    private static Map<String, @Nullable Object> surface(Surface surface) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("reading", surface.quantity().key());
        members.put("method", surface.method().word());
        members.put("n", surface.n());
        members.put("reachM", surface.reachM());
        members.put("rmse", surface.rmse());
        members.put("rmseOfMean", surface.meanRmse());
        surface.variogram().ifPresent(v -> {
            Map<String, @Nullable Object> curve = new LinkedHashMap<>();
            curve.put("nugget", v.nugget());
            curve.put("sill", v.sill());
            curve.put("rangeM", v.rangeM());
            members.put("variogram", curve);
        });
        return members;
    }

    private static Map<String, @Nullable Object> change(Change change) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("reading", change.quantity().key());
        members.put("n", change.n());
        members.put("before", change.before());
        members.put("now", change.now());
        return members;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
