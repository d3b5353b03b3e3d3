package loamline.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loamline.account.Account;
import loamline.yard.Kind;
import loamline.yard.Zone;
import org.jspecify.annotations.Nullable;

/** Zones as {@code zones.json}, {@code zones.csv} and their accounts. */
public final class ZoneFiles {
    private static final List<Kind> COVERS =
            List.of(Kind.BUILDING, Kind.PAVING, Kind.BED, Kind.GRAVEL, Kind.WATER, Kind.DECK);

    private ZoneFiles() {}

    /** The files by name, as text. */
    public static Map<String, String> of(List<Zone> zones) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("zones.json", json(zones));
        files.put("zones.csv", csv(zones));
        files.put("accounts.json", AccountsFile.text(accounts(zones)));
        return files;
    }

    private static String json(List<Zone> zones) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("zones", zones.stream().map(ZoneFiles::members).toList());
        tree.put("totalNetAreaM2", totalM2(zones));
        return JsonText.of(tree);
    }

    private static double totalM2(List<Zone> zones) {
        return zones.stream().mapToDouble(Zone::netAreaM2).sum();
    }

    private static Map<String, @Nullable Object> members(Zone zone) {
        Map<String, @Nullable Object> minus = new LinkedHashMap<>();
        zone.minusM2().forEach((kind, areaM2) -> minus.put(kind.word(), areaM2));
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", zone.name());
        members.put("netAreaM2", zone.netAreaM2());
        members.put("grossAreaM2", zone.grossM2());
        members.put("areaSeM2", zone.areaSeM2());
        members.put("perimeterM", zone.net().perimeterM());
        members.put("minus", minus);
        zone.bag().ifPresent(bag -> members.put("bag", bag));
        zone.trouble().ifPresent(trouble -> members.put("trouble", trouble));
        zone.slopePct().ifPresent(slopePct -> members.put("slopePct", slopePct));
        if (!zone.grass().isEmpty()) {
            members.put("grass", zone.grass());
        }
        return members;
    }

    private static String csv(List<Zone> zones) {
        CsvText csv = new CsvText();
        csv.row(Stream.concat(
                        Stream.of("name", "net_area_m2", "gross_area_m2", "area_se_m2", "perimeter_m"),
                        COVERS.stream().map(kind -> "minus_" + kind.word() + "_m2"))
                .toList());
        for (Zone zone : zones) {
            csv.row(Stream.concat(
                            Stream.of(
                                    zone.name(),
                                    zone.netAreaM2(),
                                    zone.grossM2(),
                                    zone.areaSeM2(),
                                    zone.net().perimeterM()),
                            COVERS.stream().map(kind -> zone.minusM2().getOrDefault(kind, 0.0)))
                    .toList());
        }
        return csv.toString();
    }

    private static Map<String, Account> accounts(List<Zone> zones) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        Account total = Account.of("total = Σ netAreaM2", "All turf of the yard, each square metre once.");
        for (int i = 0; i < zones.size(); i++) {
            String at = "/zones/" + i + "/";
            zones.get(i).accounts().forEach((key, account) -> accounts.put(at + key, account));
            total = total.with(zones.get(i).name(), zones.get(i).netAreaM2());
        }
        accounts.put("/totalNetAreaM2", total);
        return accounts;
    }
}
