package loamline.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loamline.place.Frame;
import loamline.sampling.CorePlan;
import loamline.sampling.CorePlan.Composite;
import loamline.sampling.CorePlan.Merge;
import loamline.sampling.CorePlan.PlannedCore;
import loamline.sampling.CorePlan.Stratum;
import loamline.sampling.CorePlan.Walk;
import loamline.sampling.ExpectedError;
import org.jspecify.annotations.Nullable;

/** A core plan as {@code cores.json}, {@code cores.csv}, {@code cores.geojson} and its accounts. */
public final class PlanFiles {
    private final CorePlan plan;
    private final Places places;

    private PlanFiles(CorePlan plan, Frame frame) {
        this.plan = plan;
        this.places = new Places(frame);
    }

    /** The files by name, as text. */
    public static Map<String, String> of(CorePlan plan, Frame frame) {
        PlanFiles made = new PlanFiles(plan, frame);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("cores.json", made.json());
        files.put("cores.csv", made.csv());
        files.put("cores.geojson", made.geojson());
        files.put("accounts.json", AccountsFile.text(plan.accounts()));
        return files;
    }

    private String json() {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("seed", plan.seed());
        tree.put(
                "composites",
                plan.composites().stream().map(PlanFiles::composite).toList());
        tree.put("cores", plan.cores().stream().map(this::core).toList());
        tree.put("walks", plan.walks().stream().map(PlanFiles::walk).toList());
        tree.put("totalWalkM", plan.totalWalkM());
        tree.put("merges", plan.merges().stream().map(PlanFiles::merge).toList());
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> composite(Composite bag) {
        Map<String, @Nullable Object> probe = new LinkedHashMap<>();
        probe.put("depthM", bag.probe().depthM());
        probe.put("diameterM", bag.probe().diameterM());
        probe.put("volumeMl", bag.volumeMl());
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", bag.name());
        members.put("zones", bag.zones());
        members.put("cores", bag.cores());
        members.put("areaM2", bag.areaM2());
        members.put("eligibleAreaM2", bag.eligibleM2());
        members.put("stratumAreaCv", orNull(bag.stratumAreaCv()));
        members.put("mssdM2", orNull(bag.mssdM2()));
        members.put("probe", probe);
        members.put("strata", bag.strata().stream().map(PlanFiles::stratum).toList());
        members.put(
                "expectedErrors",
                ExpectedError.of(bag.cores()).stream().map(PlanFiles::error).toList());
        return members;
    }

    private static Map<String, @Nullable Object> stratum(Stratum stratum) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("number", stratum.number());
        members.put("zone", stratum.zone());
        members.put("areaM2", stratum.ground().areaM2());
        return members;
    }

    private static Map<String, @Nullable Object> error(ExpectedError error) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("element", error.element());
        members.put("cvPct", error.cvPct());
        members.put("halfWidthPct", error.halfWidthPct());
        return members;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static @Nullable Integer orNull(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    private Map<String, @Nullable Object> core(PlannedCore core) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("id", core.id());
        members.put("composite", core.composite());
        members.put("zone", core.zone());
        places.put(members, core.at());
        members.put("stratum", core.stratum());
        members.put("spareOf", core.spareOf().orElse(null));
        members.put("order", orNull(core.order()));
        return members;
    }

    private static Map<String, @Nullable Object> walk(Walk walk) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("composite", walk.composite());
        members.put("lengthM", walk.lengthM());
        members.put("lowerBoundM", walk.lowerBoundM());
        members.put("proven", walk.proven());
        members.put(
                "path",
                walk.path().points().stream().map(p -> List.of(p.x(), p.y())).toList());
        return members;
    }

    private static Map<String, @Nullable Object> merge(Merge merge) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("left", merge.left());
        members.put("right", merge.right());
        members.put("cost", merge.cost());
        members.put("why", merge.why());
        return members;
    }

    private String csv() {
        List<String> head = new ArrayList<>(List.of("id", "composite", "zone", "x_m", "y_m"));
        if (places.onEarth()) {
            head.addAll(List.of("lon", "lat"));
        }
        head.addAll(List.of("stratum", "spare_of", "order"));
        CsvText csv = new CsvText().row(head);
        plan.cores().forEach(core -> csv.row(new ArrayList<>(core(core).values())));
        return csv.toString();
    }

    private String geojson() {
        List<@Nullable Object> features = new ArrayList<>();
        plan.cores().forEach(core -> features.add(feature(core)));
        plan.walks().forEach(walk -> features.add(feature(walk)));
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("type", "FeatureCollection");
        if (!places.onEarth()) {
            tree.put("loamlineFrame", GeoJson.LOCAL_METRES);
        }
        tree.put("features", features);
        return JsonText.of(tree);
    }

    private Map<String, @Nullable Object> feature(PlannedCore core) {
        Map<String, @Nullable Object> properties = core(core);
        properties.keySet().removeAll(List.of("xM", "yM", "lon", "lat"));
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("kind", core.spareOf().isPresent() ? "spare" : "core");
        all.putAll(properties);
        return feature(core.id(), "Point", places.position(core.at()), all);
    }

    private Map<String, @Nullable Object> feature(Walk walk) {
        Map<String, @Nullable Object> properties = walk(walk);
        properties.remove("path");
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("kind", "walk");
        all.putAll(properties);
        List<List<Double>> line =
                walk.path().points().stream().map(places::position).toList();
        // RFC 7946 asks for two positions in a line; a walk of one stop repeats it
        List<List<Double>> two = line.size() == 1 ? List.of(line.get(0), line.get(0)) : line;
        return feature("walk " + walk.composite(), "LineString", two, all);
    }

    private static Map<String, @Nullable Object> feature(
            String id, String type, Object coordinates, Map<String, @Nullable Object> properties) {
        Map<String, @Nullable Object> geometry = new LinkedHashMap<>();
        geometry.put("type", type);
        geometry.put("coordinates", coordinates);
        Map<String, @Nullable Object> feature = new LinkedHashMap<>();
        feature.put("type", "Feature");
        feature.put("id", id);
        feature.put("geometry", geometry);
        feature.put("properties", properties);
        return feature;
    }
}
