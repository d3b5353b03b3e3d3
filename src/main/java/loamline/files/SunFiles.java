package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loamline.account.Account;
import loamline.place.Frame;
import loamline.sun.Glare;
import loamline.sun.SunClass;
import loamline.sun.SunPosition;
import loamline.sun.SunStudy;
import loamline.sun.ZoneSun;
import loamline.yard.Extras;
import loamline.yard.Feature;
import loamline.yard.Turf;
import loamline.yard.Yard;
import org.jspecify.annotations.Nullable;

/** The sun on a yard as {@code sun.json}, {@code sun-classes.geojson} and its accounts. */
public final class SunFiles {
    private SunFiles() {}

    /**
     * The files by name, as text.
     *
     * @param classes written as the turf of a yard, a zone a class
     */
    public static Map<String, String> of(SunStudy sun, List<Glare> glare, List<SunClass> classes, Frame frame) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("dates", sun.request().dates().stream().map(Object::toString).toList());
        tree.put("stepMin", sun.request().step().toSeconds() / 60.0);
        tree.put("cellM", sun.request().cellM());
        tree.put("zones", sun.zones().stream().map(SunFiles::zone).toList());
        tree.put("sun", sun.positions().stream().map(SunFiles::position).toList());
        tree.put("glare", glare.stream().map(SunFiles::glare).toList());
        Map<String, String> files = new LinkedHashMap<>();
        files.put("sun.json", JsonText.of(tree));
        files.put("sun-classes.geojson", GeoJson.write(Yard.empty("", frame).withFeatures(turf(classes))));
        files.put("accounts.json", AccountsFile.text(accounts(sun.zones())));
        return files;
    }

    private static Map<String, @Nullable Object> zone(ZoneSun zone) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", zone.name());
        members.put("meanHours", zone.meanHours());
        members.put("p10", zone.p10());
        members.put("p90", zone.p90());
        members.put("morningHours", zone.morningHours());
        members.put("afternoonHours", zone.afternoonHours());
        members.put("clearDayMolM2", zone.clearDayMolM2());
        members.put("classShares", zone.classShares());
        return members;
    }

    private static Map<String, @Nullable Object> position(SunPosition sun) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("utc", sun.utc().toString());
        members.put("azimuthDeg", sun.azimuthDeg());
        members.put("elevationDeg", sun.elevationDeg());
        return members;
    }

    private static Map<String, @Nullable Object> glare(Glare glare) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("panel", glare.panel());
        members.put("utc", glare.sun().utc().toString());
        members.put(
                "ring",
                glare.ground().vertices().map(p -> List.of(p.x(), p.y())).toList());
        return members;
    }

    private static List<Feature> turf(List<SunClass> classes) {
        return classes.stream().map(SunFiles::turf).toList();
    }

    private static Feature turf(SunClass part) {
        OptionalDouble unknown = OptionalDouble.empty();
        String name = part.light().name();
        return new Turf(
                name,
                name,
                "",
                unknown,
                unknown,
                Optional.empty(),
                part.ground().outline(),
                Extras.NONE);
    }

    private static Map<String, Account> accounts(List<ZoneSun> zones) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            String zone = "/zones/" + i + "/";
            zones.get(i).accounts().forEach((name, account) -> accounts.put(zone + name, account));
        }
        return accounts;
    }
}
