package loamline.files;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.IntStream;
import loamline.account.Account;
import loamline.season.Mowing;
import loamline.season.Nutrient;
import loamline.season.Purchase;
import loamline.season.Season;
import loamline.season.Task;
import loamline.season.ZoneSeason;
import org.jspecify.annotations.Nullable;

/** A season as {@code season.json}, {@code tasks.csv}, {@code shopping.csv}, {@code season.ics} and accounts. */
public final class SeasonFiles {
    private static final double LITRES_PER_M3 = 1000;

    private SeasonFiles() {}

    /**
     * The files by name, as text.
     *
     * @param yard name of the yard, for the calendar
     * @param program name of the program, for the calendar
     */
    public static Map<String, String> of(String yard, Season season, String program) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("season.json", json(season));
        files.put("accounts.json", AccountsFile.text(accounts(season)));
        files.put("tasks.csv", tasks(season));
        files.put("shopping.csv", shopping(season));
        files.put("season.ics", CalendarText.of(program, events(yard, season)));
        return files;
    }

    private static String json(Season season) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("status", season.isOptimal() ? "optimal" : "infeasible");
        tree.put("blocking", season.blocking());
        tree.put("cost", season.isOptimal() ? season.cost() : null);
        tree.put(
                "zones",
                season.zones().stream()
                        .map(zone -> zone(zone, Mowing.of(zone, season.inputs())))
                        .toList());
        tree.put(
                "products",
                season.purchases().stream().map(SeasonFiles::purchase).toList());
        tree.put("tasks", season.tasks().stream().map(SeasonFiles::task).toList());
        tree.put("secondBest", season.second().map(SeasonFiles::second).orElse(null));
        tree.put("cautions", season.cautions());
        tree.put("nutrientUnit", "GM2");
        return JsonText.of(tree);
    }

    private static Map<String, @Nullable Object> second(Season.SecondBest second) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("cost", second.cost());
        members.put("bags", second.bags());
        return members;
    }

    private static Map<String, @Nullable Object> zone(ZoneSeason zone, Optional<Mowing> mowing) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", zone.name());
        members.put("areaM2", zone.ground().netM2());
        members.put("treatedM2", zone.ground().treatedM2());
        members.put("sample", zone.sample().map(s -> s.id()).orElse(null));
        members.put("need", amounts(n -> orEmpty(zone.need().get(n))));
        members.put("service", amounts(n -> OptionalDouble.of(zone.service().getOrDefault(n, 0.0))));
        members.put("compost", amounts(n -> OptionalDouble.of(zone.compostGM2(n))));
        members.put("remaining", amounts(zone::remaining));
        members.put("surplus", amounts(zone::surplus));
        members.put("questions", zone.questions());
        members.put("mowing", mowing.map(SeasonFiles::mowing).orElse(null));
        return members;
    }

    private static Map<String, @Nullable Object> mowing(Mowing mowing) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("setM", List.of(mowing.lowM(), mowing.highM()));
        members.put("cutAtM", List.of(Mowing.standingM(mowing.lowM()), Mowing.standingM(mowing.highM())));
        members.put("region", mowing.region());
        members.put("source", mowing.origin().source().id());
        return members;
    }

    private static OptionalDouble orEmpty(@Nullable Double amount) {
        return amount == null ? OptionalDouble.empty() : OptionalDouble.of(amount);
    }

    private static Map<String, @Nullable Object> amounts(Function<Nutrient, OptionalDouble> amount) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        for (Nutrient nutrient : Nutrient.values()) {
            OptionalDouble gM2 = amount.apply(nutrient);
            members.put(nutrient.key(), gM2.isPresent() ? gM2.getAsDouble() : null);
        }
        return members;
    }

    private static Map<String, @Nullable Object> purchase(Purchase purchase) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("name", purchase.name());
        members.put("bags", purchase.bags());
        members.put("kg", purchase.kg());
        members.put("usedKg", purchase.usedKg());
        members.put("leftoverKg", purchase.leftoverKg());
        members.put("volumeM3", purchase.volumeM3());
        members.put("cost", purchase.bags() == 0 ? null : purchase.cost());
        return members;
    }

    private static Map<String, @Nullable Object> task(Task task) {
        Map<String, @Nullable Object> members = new LinkedHashMap<>();
        members.put("date", task.date().toString());
        members.put("zone", task.zone());
        members.put("action", task.action().word());
        members.put("areaM2", task.areaM2());
        members.put("product", task.product().isEmpty() ? null : task.product());
        members.put("kgPerM2", task.kgM2());
        members.put("kg", task.kg());
        members.put("volumeM3", task.volumeM3());
        members.put("passes", task.passes());
        members.put("panG", task.panG().isPresent() ? task.panG().getAsDouble() : null);
        members.put("reason", task.reason());
        members.put("cautions", task.cautions());
        return members;
    }

    private static Map<String, Account> accounts(Season season) {
        Map<String, Account> accounts = new LinkedHashMap<>();
        for (int z = 0; z < season.zones().size(); z++) {
            String at = "/zones/" + z + "/need/";
            season.zones().get(z).accounts().forEach((nutrient, account) -> accounts.put(at + nutrient.key(), account));
        }
        accounts.putAll(season.accounts());
        return accounts;
    }

    private static String tasks(Season season) {
        CsvText csv = new CsvText()
                .row(List.of(
                        "date",
                        "zone",
                        "action",
                        "product",
                        "kg_per_m2",
                        "kg",
                        "volume_l",
                        "passes",
                        "pan_g",
                        "reason",
                        "cautions"));
        season.tasks().forEach(task -> csv.row(cells(task)));
        return csv.toString();
    }

    private static List<@Nullable Object> cells(Task task) {
        return Arrays.asList(
                task.date(),
                task.zone(),
                task.action().word(),
                task.product(),
                task.kgM2(),
                task.kg(),
                LITRES_PER_M3 * task.volumeM3(),
                task.passes(),
                task.panG().isPresent() ? task.panG().getAsDouble() : null,
                task.reason(),
                String.join(" ", task.cautions()));
    }

    private static String shopping(Season season) {
        CsvText csv = new CsvText().row(List.of("product", "bags", "kg", "used_kg", "leftover_kg", "volume_l", "cost"));
        season.purchases().forEach(purchase -> csv.row(cells(purchase)));
        return csv.toString();
    }

    private static List<@Nullable Object> cells(Purchase purchase) {
        return Arrays.asList(
                purchase.name(),
                purchase.bags(),
                purchase.kg(),
                purchase.usedKg(),
                purchase.leftoverKg(),
                LITRES_PER_M3 * purchase.volumeM3(),
                purchase.bags() == 0 ? null : purchase.cost());
    }

    private static List<CalendarText.Event> events(String yard, Season season) {
        return IntStream.range(0, season.tasks().size())
                .mapToObj(i -> event(id(yard, season, i), yard, season.tasks().get(i)))
                .toList();
    }

    /** The same for the same task of the same yard, and another in every other yard, so that calendars can be joined. */
    private static String id(String yard, Season season, int task) {
        String grounds =
                season.zones().stream().map(ZoneSeason::ground).toList().toString();
        String told = yard + grounds + season.tasks().get(task).date() + task;
        return UUID.nameUUIDFromBytes(told.getBytes(StandardCharsets.UTF_8)) + "@loamline";
    }

    private static CalendarText.Event event(String id, String yard, Task task) {
        String what = task.product().isEmpty() ? "" : ": " + task.product();
        String amount =
                task.kg() > 0 ? String.format(Locale.ROOT, "%.2f kg in %d passes. ", task.kg(), task.passes()) : "";
        return new CalendarText.Event(
                id,
                task.date(),
                task.action().title() + ", " + task.zone() + what,
                yard,
                amount + task.reason() + ". " + String.join(" ", task.cautions()));
    }
}
