package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.geometry.Outline;
import loamline.place.Frame;
import loamline.water.Coverage;
import loamline.water.Gap;
import loamline.water.HeadToHead;
import loamline.water.Uniformity;
import loamline.water.ValveWater;
import loamline.water.Water;
import org.jspecify.annotations.Nullable;

/** A yard's water as {@code water.json}, {@code gaps.geojson} and its accounts. What cannot be said is null. */
public final class WaterFiles {
    private WaterFiles() {}

    /** The files by name, as text. */
    public static Map<String, String> of(Water water, Frame frame) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("water.json", json(water));
        files.put("gaps.geojson", geojson(water.gaps(), new Places(frame)));
        files.put("accounts.json", AccountsFile.text(water.accounts()));
        return files;
    }

    private static String json(Water water) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("ideal", true);
        tree.put("valves", water.valves().stream().map(WaterFiles::valve).toList());
        tree.put("coverage", coverage(water.coverage()));
        tree.put("gaps", water.gaps().stream().map(WaterFiles::gap).toList());
        tree.put(
                "headToHead", water.headToHead().stream().map(WaterFiles::check).toList());
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> valve(ValveWater valve) {
        Optional<Uniformity> even = valve.uniformity();
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", valve.name());
        members.put("heads", valve.heads().size());
        members.put("headIds", valve.heads());
        members.put("flowLpm", valve.flowLpm());
        members.put("throwAreaM2", valve.throwAreaM2());
        members.put("turfAreaM2", valve.turfAreaM2());
        members.put("meanMmH", orNull(valve.meanMmH()));
        members.put("grossMmH", orNull(valve.grossMmH()));
        members.put("duLq", even.map(Uniformity::duLq).orElse(null));
        members.put("duLh", even.map(Uniformity::duLh).orElse(null));
        members.put("cu", even.map(Uniformity::cu).orElse(null));
        members.put("cv", even.map(Uniformity::cv).orElse(null));
        members.put("sc5", orNull(valve.sc5()));
        members.put("minMmH", orNull(valve.minMmH()));
        return members;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> coverage(Coverage coverage) {
        String[] keys = {"reachedBy0M2", "reachedBy1M2", "reachedBy2M2", "reachedBy3plusM2"};
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("turfM2", coverage.turfM2());
        for (int i = 0; i < keys.length; i++) {
            members.put(keys[i], coverage.reachedBy().get(i).areaM2());
        }
        members.put("offTurfShare", coverage.offTurfShare());
        members.put(
                "destinations",
                coverage.destinations().stream().map(WaterFiles::destination).toList());
        return members;
    }

    private static Map<String, @Nullable Object> destination(Coverage.Destination destination) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("ground", destination.ground());
        members.put("share", destination.share());
        members.put("litresAYear", destination.litresAYear());
        return members;
    }

    private static Map<String, @Nullable Object> gap(Gap gap) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("id", gap.id());
        members.put("areaM2", gap.areaM2());
        members.put("zone", gap.zone());
        members.put("centroid", List.of(gap.centroid().x(), gap.centroid().y()));
        return members;
    }

    private static Map<String, @Nullable Object> check(HeadToHead check) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("head", check.head());
        members.put("ok", check.ok());
        members.put("nearestM", orNull(check.nearestM()));
        members.put("reach", orNull(check.reach()));
        members.put("sides", check.sides().stream().map(WaterFiles::side).toList());
        return members;
    }

    private static Map<String, @Nullable Object> side(HeadToHead.Side side) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("startDeg", side.startDeg());
        members.put("sweepDeg", side.sweepDeg());
        members.put("nearest", side.nearest().orElse(null));
        members.put("nearestM", orNull(side.nearestM()));
        members.put("ok", side.ok());
        return members;
    }

    private static String geojson(List<Gap> gaps, Places places) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("type", "FeatureCollection");
        if (!places.onEarth()) {
            tree.put("loamlineFrame", GeoJson.LOCAL_METRES);
        }
        tree.put("features", gaps.stream().map(gap -> feature(gap, places)).toList());
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> feature(Gap gap, Places places) {
        Map<String, @Nullable Object> properties = gap(gap);
        properties.remove("centroid");
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("kind", "gap");
        all.putAll(properties);
        Outline outline = Rings.forFile(gap.ground().outline()).outline();
        Map<String, @Nullable Object> geometry = new LinkedHashMap<>();
        geometry.put("type", "Polygon");
        geometry.put("coordinates", Rings.nested(outline, places::position).get(0));
        Map<String, @Nullable Object> feature = new LinkedHashMap<>();
        feature.put("type", "Feature");
        feature.put("id", gap.id());
        feature.put("geometry", geometry);
        feature.put("properties", all);
        return feature;
    }
}
